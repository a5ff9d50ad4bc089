/** How the things behind a door were found: one answer for all, or one each; what it comes to is said before it is saved. */
import { useState } from 'react'
import { type Day, type Entry, type Fact, isDay, ok, type PlaceDescribed, strikeOut } from '../../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../../parts/Actions.tsx'
import { Choice } from '../../../parts/Choice.tsx'
import { DayField } from '../../../parts/DayField.tsx'
import { Form } from '../../../parts/Form.tsx'
import { Line, Lines } from '../../../parts/Lines.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { NumberField } from '../../../parts/NumberField.tsx'
import { Page } from '../../../parts/Page.tsx'
import { Quiet } from '../../../parts/Quiet.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { dayEcho } from '../../../words/dates.ts'
import { entryText } from '../../../words/entries.ts'
import { fieldText } from '../../../words/foodRefusals.ts'
import { hoursHabit, type Option } from '../../../words/trouble.ts'
import { Unfinished } from '../../Unfinished.tsx'
import { useReading } from '../../useReading.ts'
import { NotNow } from '../NotNow.tsx'
import { Refused } from '../Refused.tsx'
import { type FormAsk, trouble, useAct } from '../useAct.ts'
import { type DoorFields, type DoorRead, doorFields, readDoor, type Said, saidOf } from './doorFields.ts'

export type ComesTo = {
  /** By the thing's id. */
  readonly each: ReadonlyMap<string, string>
  /** For the household: until when there is food. */
  readonly all: readonly string[]
}

type DoorReportProps<Found extends string> = {
  readonly place: PlaceDescribed
  readonly answer: string
  readonly cautions: readonly string[]
  readonly things: readonly { readonly id: string; readonly name: string }[]
  readonly options: readonly Option<Found>[]
  readonly comesTo: (said: readonly Said<Found>[], on: Day) => ComesTo
  readonly ask: (read: DoorRead<Found>) => FormAsk
}

export const DoorReport = <Found extends string>(props: DoorReportProps<Found>) => {
  const { place, answer } = props
  const [written, setWritten] = useState<readonly Entry<Fact>[]>()
  return (
    <Page title={place.name} answer={written ? 'It is in the diary. Nothing was thrown away for you.' : answer}>
      {written ? (
        <Noted written={written} onAgain={() => setWritten(undefined)} />
      ) : (
        <ReportForm
          {...props}
          onNoted={(entries) => {
            setWritten(entries)
            document.documentElement.scrollTop = 0
          }}
        />
      )}
    </Page>
  )
}

type ReportFormProps<Found extends string> = DoorReportProps<Found> & {
  readonly onNoted: (written: readonly Entry<Fact>[]) => void
}

const ReportForm = <Found extends string>({
  place,
  cautions,
  things,
  options,
  comesTo,
  ask,
  onNoted,
}: ReportFormProps<Found>) => {
  const reading = useReading()
  const { today } = reading
  const act = useAct()
  const [tried, setTried] = useState(false)
  const {
    fields,
    change: type,
    clear,
    restoredFrom,
  } = useDraft<DoorFields<Found>>(`thaw/${place.place}`, doorFields<Found>(today))
  const change = (changed: Partial<DoorFields<Found>>) => {
    act.reset()
    type(changed)
  }
  const ids = things.map(({ id }) => id)
  const said = saidOf(fields, ids)
  const on = isDay(fields.on) ? fields.on : today
  const { each, all } = comesTo(said, on)
  const save = async () => {
    setTried(true)
    const written = await act.send((world, context) => {
      const read = readDoor(fields, ids)
      return read.ok ? ask(read.value)(world, context) : read
    })
    if (!written) return
    await clear()
    onNoted(written)
  }
  const missing = (found: Found | '' | undefined) =>
    tried && !found ? fieldText({ why: 'howFound' }, reading) : undefined
  const alike = fields.how === 'alike' || things.length === 1
  return (
    <Form onSend={save}>
      <Unfinished {...reading} since={restoredFrom} onFresh={() => void clear()} />
      <Quiet>{hoursHabit}</Quiet>
      {things.length > 1 && (
        <Choice
          label="Is it alike for all of them?"
          options={[
            { value: 'alike', label: 'One answer for all behind this door' },
            { value: 'each', label: 'One by one' },
          ]}
          value={fields.how}
          onChange={(how) => change({ how })}
        />
      )}
      {alike ? (
        <>
          <Choice
            label={things.length === 1 ? `How was ${things[0]?.name ?? 'it'}?` : 'How were they?'}
            options={options}
            value={fields.alike || null}
            onChange={(found) => change({ alike: found })}
            error={missing(fields.alike)}
          />
          {each.size > 0 && (
            <Lines>
              {things.map(({ id, name }) => (
                <Line key={id} lead={things.length > 1 ? name : undefined}>
                  {each.get(id)}
                </Line>
              ))}
            </Lines>
          )}
        </>
      ) : (
        things.map(({ id, name }) => (
          <div key={id} className="food-act">
            <Choice
              label={name}
              options={options}
              value={fields.each[id] ?? null}
              onChange={(found) => change({ each: { ...fields.each, [id]: found } })}
              error={missing(fields.each[id])}
            />
            {each.has(id) && <p>{each.get(id)}</p>}
          </div>
        ))
      )}
      {all.map((says) => (
        <p key={says}>
          <strong>{says}</strong>
        </p>
      ))}
      {cautions.map((says) => (
        <Notice key={says} kind="caution">
          {says}
        </Notice>
      ))}
      <MoreExact
        label="How long it was off, and when it was found"
        open={act.wrong('hours') !== undefined || act.wrong('on') !== undefined}
      >
        <NumberField
          label="How long, as far as you know?"
          hint="Leave it empty if you don’t."
          unit="hours"
          value={fields.hours}
          onChange={(hours) => change({ hours })}
          error={act.wrong('hours')}
        />
        <DayField
          label="Found on"
          latest={today}
          value={fields.on}
          echo={dayEcho(fields.on)}
          onChange={(found) => change({ on: found })}
          error={act.wrong('on')}
        />
      </MoreExact>
      <Refused act={act} />
      <Actions>
        <Button submit waiting={act.busy}>
          Note it so
        </Button>
        <NotNow clear={clear} />
      </Actions>
    </Form>
  )
}

const Noted = ({ written, onAgain }: { readonly written: readonly Entry<Fact>[]; readonly onAgain: () => void }) => {
  const reading = useReading()
  const { world, now } = reading
  const act = useAct()
  const undo = async () => {
    const done = await act.send((latest, context) => {
      const facts: Fact[] = []
      for (const { id } of written) {
        const struck = strikeOut(latest, { target: id, why: 'mistake' }, context.now)
        if (!struck.ok) return trouble('', struck.refusal)
        facts.push(...struck.value)
      }
      return ok(facts)
    })
    if (done) onAgain()
  }
  return (
    <>
      <Notice>
        <p>
          <output>{written.map(({ fact }) => entryText(fact, world, now, reading)).join(' ')}</output>
        </p>
        <p>What is set aside or has thawed stands under the doors on the Food page, with what can be done about it.</p>
      </Notice>
      <Refused act={act} />
      <Actions>
        <ButtonLink href="#/food">See what there is</ButtonLink>
        <Button kind="quiet" waiting={act.busy} onAct={() => void undo()}>
          Undo
        </Button>
      </Actions>
    </>
  )
}
