/** A pane by day, or a jar of water through a sieve: typed where it was counted, kept as a draft until it is sent. */
import { jarSample, type LookedAsked, type TankDescribed } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Page } from '../../parts/Page.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { densityWords } from '../../words/life.ts'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { AboutFields } from './AboutFields.tsx'
import { CountFields, SquareFields } from './CountFields.tsx'
import { type CountFields as Fields, newCount, readCount, sendCount } from './lifeFields.ts'
import type { OnKept } from './rooms.tsx'
import { useLifeForm } from './useLifeForm.ts'

type CountFormProps = {
  readonly tank: TankDescribed
  readonly how: Exclude<LookedAsked['how'], 'torch'>
  readonly onKept: OnKept
}

const words = {
  pane: {
    title: 'Pane by day',
    answer: 'Count what sits in one square of a pane.',
    how: 'A pane no fish can reach tells most: the sump’s or the refugium’s. The same pane each time.',
    where: 'Which pane?',
    count: (place: number) => `Square ${place + 1}`,
    more: 'One more square',
  },
  jar: {
    title: 'Jar through a sieve',
    answer: 'Pour tank water through a sieve, rinse, and count by the millilitre.',
    how: 'A sieve of 50 to 60 µm keeps the newly hatched, 100 to 120 µm copepods, 250 to 300 µm the grown and the sand-hoppers. Three millilitres or more.',
    where: 'Where was the jar filled?',
    count: (place: number) => `Look ${place + 1}`,
    more: 'One more look',
  },
} as const

export const CountForm = ({ tank, how, onKept }: CountFormProps) => {
  const reading = useReading()
  const form = useLifeForm()
  const { fields, change: type, clear, restoredFrom } = useDraft<Fields>(`count/${how}/${tank.tank}`, newCount)
  const change = (changed: Partial<Fields>) => {
    form.reset()
    type(changed)
  }
  const its = words[how]
  const send = async () => {
    const written = await form.send(sendCount(tank.tank, how, fields))
    if (!written) return
    await clear()
    onKept('The count is kept.', written)
  }
  const says = how === 'jar' ? jarSays(fields) : undefined
  return (
    <Page title={its.title} when={tank.name} answer={its.answer}>
      <Form onSend={send}>
        <Unfinished since={restoredFrom} zone={reading.zone} today={reading.today} onFresh={() => void clear()} />
        <p>{its.how}</p>
        {how === 'jar' && <JarFields fields={fields} onChange={change} form={form} />}
        <CountFields fields={fields} onChange={change} form={form} label={its.count} more={its.more} />
        {how === 'pane' && (
          <MoreExact
            label="Another square than 10 by 10 cm"
            open={form.wrong('width') !== undefined || form.wrong('height') !== undefined}
          >
            <SquareFields fields={fields} onChange={change} form={form} />
          </MoreExact>
        )}
        {says && <p role="status">{says}</p>}
        <AboutFields
          tank={tank}
          fields={fields}
          onChange={change}
          form={form}
          whereLabel={its.where}
          whereHint="Counts of one spot are compared. Write it the same way each time."
        />
        {form.wrong('') && <Notice kind="refusal">{form.wrong('')}</Notice>}
        <Actions>
          <Button submit waiting={form.busy}>
            Keep this count
          </Button>
        </Actions>
      </Form>
    </Page>
  )
}

/** What it comes to, while it is being typed. */
const jarSays = (fields: Fields): string | undefined => {
  const read = readCount('jar', fields)
  if (!read.ok || read.value.looked.how !== 'jar') return undefined
  const found = jarSample({ ...read.value.looked, counts: read.value.counts })
  return found.ok ? densityWords(found.value.perLitre, { per: 'litre', least: found.value.atLeast }) : undefined
}

type JarFieldsProps = {
  readonly fields: Fields
  readonly onChange: (changed: Partial<Fields>) => void
  readonly form: ReturnType<typeof useLifeForm>
}
const JarFields = ({ fields, onChange, form }: JarFieldsProps) => (
  <>
    <NumberField
      label="How much tank water went through the sieve?"
      unit="litres"
      value={fields.litres}
      onChange={(litres) => onChange({ litres })}
      error={form.wrong('litres')}
    />
    <NumberField
      label="What stayed was rinsed into"
      unit="mL"
      value={fields.rinsedInto}
      onChange={(rinsedInto) => onChange({ rinsedInto })}
      error={form.wrong('rinsedInto')}
    />
    <NumberField
      label="Looked at each time"
      unit="mL"
      value={fields.lookedAt}
      onChange={(lookedAt) => onChange({ lookedAt })}
      error={form.wrong('lookedAt')}
    />
    <NumberField
      label="The sieve, if you know it"
      unit="µm"
      value={fields.sieve}
      onChange={(sieve) => onChange({ sieve })}
      error={form.wrong('sieve')}
    />
    <NumberField
      label="The share of animals it keeps, if you know it"
      hint="Some slip through. Left empty, the count is a least one."
      unit="%"
      value={fields.kept}
      onChange={(kept) => onChange({ kept })}
      error={form.wrong('kept')}
    />
  </>
)
