/** Poured already: written down as it happened, whatever anybody would have advised. */
import { useLocation } from 'wouter'
import { type Animals, equipmentAt, recordPour, type WaterPlace, wallDay } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { Page } from '../../parts/Page.tsx'
import { Picks } from '../../parts/Picks.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { clock, dayEcho } from '../../words/dates.ts'
import { animalOptions } from '../../words/seeding.ts'
import { Unfinished } from '../Unfinished.tsx'
import { because } from '../Why.tsx'
import { BottlesInto } from './BottleFields.tsx'
import type { OfTank } from './ofTank.ts'
import { type Gathered, noPours, type PlaceFields, poursIn, whenIn } from './reading.ts'
import { placed, type SeedingAsk, useSeeding, wrong } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

type Fields = PlaceFields & {
  readonly day: string
  readonly clock: string
  readonly animals: readonly Animals[]
  readonly why: string
}
const anywhere: readonly WaterPlace[] = ['display', 'refugium', 'sump']

export const Poured = ({ tank, reading }: OfTank) => {
  const { world, now, zone, today } = reading
  const act = useSeeding(reading)
  const [, go] = useLocation()
  const {
    fields,
    change: type,
    clear,
    restoredFrom,
  } = useDraft<Fields>(`seeding/poured/${tank.tank}`, {
    ...noPours,
    day: wallDay(now, zone),
    clock: clock(now, zone),
    animals: ['copepods'],
    why: '',
  })
  const change = (changed: Partial<Fields>) => {
    act.reset()
    type(changed)
  }
  const places = equipmentAt(world, tank.tank, now)?.places.map(({ place }) => place) ?? anywhere
  const ask: SeedingAsk = (fresh, { now: at }) => {
    const found: Gathered = []
    const pours = poursIn(found, fields, places)
    const poured = whenIn(found, fields, tank)
    if (fields.animals.length === 0) found.push({ at: 'animals', refusal: { why: 'animalsMissing' } })
    if (pours.length === 0) found.push({ at: 'pours', refusal: { why: 'nothingToPour' } })
    if (found.length > 0 || poured === undefined) return wrong(found)
    return placed(
      recordPour(fresh, { tank: tank.tank, poured, animals: fields.animals, pours, ...because(fields.why) }, at),
      ({ why }) => (why === 'notYet' ? 'clock' : why === 'nothingToPour' ? 'pours' : ''),
    )
  }
  const save = async () => {
    if (!(await act.send(ask))) return
    await clear()
    go('/diary')
  }
  return (
    <Page title="Already poured" when={tank.name} answer="Write it down as it was: nothing of it is refused.">
      <Form onSend={save}>
        <Unfinished since={restoredFrom} zone={zone} today={today} onFresh={() => void clear()} />
        <BottlesInto places={places} fields={fields} change={change} act={act} hint="Half a bottle is 0.5." />
        <Picks
          label="What was in them?"
          options={animalOptions}
          values={fields.animals}
          onChange={(animals) => change({ animals })}
          error={act.wrong('animals')}
        />
        <DayField
          label="On which day?"
          value={fields.day}
          latest={today}
          onChange={(day) => change({ day })}
          echo={dayEcho(fields.day)}
          error={act.wrong('day')}
        />
        <ClockField
          label="At about what time?"
          value={fields.clock}
          onChange={(typed) => change({ clock: typed })}
          error={act.wrong('clock')}
        />
        <Field
          label="Anything about it"
          hint="May be left empty."
          value={fields.why}
          onChange={(why) => change({ why })}
        />
        <WholeForm act={act} />
        <Actions>
          <Button submit waiting={act.busy}>
            Write it down
          </Button>
        </Actions>
      </Form>
    </Page>
  )
}
