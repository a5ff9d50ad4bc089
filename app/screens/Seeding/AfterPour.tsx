/** After the pour: what a torch shows, and a letter to herself that opens on a day to come. */
import { useState } from 'react'
import { addDays, isDay, type RunNow, usualLetterDays, writeLetter, writeNote } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { dayEcho, dayInFull } from '../../words/dates.ts'
import { PhotosOf } from '../Photos/PhotosOf.tsx'
import type { OfTank } from './ofTank.ts'
import { placed, useSeeding } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

type AfterPourProps = OfTank & { readonly run: RunNow }

export const AfterPour = (props: AfterPourProps) => (
  <>
    <MoreExact label="A look with the torch">
      <TorchPeek {...props} />
      <PhotosOf of={{ run: props.run.run.id }} about="after the pour" open reading={props.reading} />
    </MoreExact>
    <MoreExact label="A letter to yourself">
      <Letter {...props} />
    </MoreExact>
  </>
)

const TorchPeek = ({ run, tank, reading }: AfterPourProps) => {
  const act = useSeeding(reading)
  const [said, setSaid] = useState('')
  const { fields, change, clear } = useDraft(`seeding/peek/${run.run.id}`, { text: '' })
  const save = async () => {
    const done = await act.send((_world, { now }) =>
      placed(writeNote({ text: fields.text, at: now, tank: tank.tank }, now), () => 'text'),
    )
    if (!done) return
    await clear()
    setSaid('It stands in the diary.')
  }
  return (
    <Form onSend={save}>
      <Field
        label="What do you see?"
        lines={2}
        longest={10_000}
        value={fields.text}
        onChange={(text) => {
          act.reset()
          setSaid('')
          change({ text })
        }}
        error={act.wrong('text')}
      />
      <WholeForm act={act} />
      <Actions>
        <Button kind="quiet" submit waiting={act.busy}>
          Write it down
        </Button>
        <output>{said}</output>
      </Actions>
    </Form>
  )
}

const Letter = ({ run, tank, reading }: AfterPourProps) => {
  const act = useSeeding(reading)
  const [said, setSaid] = useState('')
  const {
    fields,
    change: type,
    clear,
  } = useDraft(`seeding/letter/${run.run.id}`, {
    text: '',
    opens: addDays(run.plan.night, usualLetterDays) as string,
  })
  const change = (changed: Partial<typeof fields>) => {
    act.reset()
    setSaid('')
    type(changed)
  }
  const save = async () => {
    const opens = isDay(fields.opens) ? fields.opens : undefined
    const done = await act.send((world, { now }) =>
      placed(writeLetter(world, { tank: tank.tank, text: fields.text, opens }, now), ({ why }) =>
        why === 'opensTooSoon' || why === 'dayMissing' ? 'opens' : why === 'noSuchTank' ? '' : 'text',
      ),
    )
    if (!done) return
    await clear()
    if (opens) setSaid(`It opens on ${dayInFull(opens)}, on the page of live bottles.`)
  }
  return (
    <Form onSend={save}>
      <Field
        label="What do you hope to find?"
        lines={4}
        longest={10_000}
        value={fields.text}
        onChange={(text) => change({ text })}
        error={act.wrong('text')}
      />
      <DayField
        label="When may it be opened?"
        earliest={addDays(reading.today, 1)}
        value={fields.opens}
        onChange={(opens) => change({ opens })}
        echo={dayEcho(fields.opens)}
        error={act.wrong('opens')}
      />
      <WholeForm act={act} />
      <Actions>
        <Button kind="quiet" submit waiting={act.busy}>
          Put it away
        </Button>
        <output>{said}</output>
      </Actions>
    </Form>
  )
}
