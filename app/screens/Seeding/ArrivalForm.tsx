/** What came, when, and what it looked like: a few touches, with the parcel still on the table. */
import { Actions, Button } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Picks } from '../../parts/Picks.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { dayEcho } from '../../words/dates.ts'
import { animalOptions, lookedOptions } from '../../words/seeding.ts'
import { animalWords } from '../../words/seedingEntries.ts'
import { Unfinished } from '../Unfinished.tsx'
import { type ArrivalFields, arrivalFields, arrivalIn } from './arrivalFields.ts'
import { HoldsField } from './BottleFields.tsx'
import type { OfTank } from './ofTank.ts'
import { useSeeding } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

export const ArrivalForm = ({ tank, reading }: OfTank) => {
  const { now, zone, today } = reading
  const act = useSeeding(reading)
  const { fields, change: type, clear, restoredFrom } = useDraft('seeding/arrival', arrivalFields(now, tank))
  const change = (changed: Partial<ArrivalFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    if (await act.send(arrivalIn(fields, tank))) await clear()
  }
  const { animals } = fields
  return (
    <Form onSend={save}>
      <Unfinished since={restoredFrom} zone={zone} today={today} onFresh={() => void clear()} />
      <Picks
        label="What is in them?"
        options={animalOptions}
        values={animals}
        onChange={(chosen) => change({ animals: chosen })}
        error={act.wrong('animals')}
      />
      {animals.map((kind) => (
        <CountField
          key={kind}
          label={animals.length > 1 ? `How many bottles of ${animalWords[kind]}?` : 'How many bottles?'}
          min={1}
          max={100}
          value={fields[kind]}
          onChange={(count) => change({ [kind]: count })}
          error={act.wrong(kind)}
        />
      ))}
      <HoldsField fields={fields} change={change} act={act} />
      <Choice
        label="Against the light, how do they look?"
        options={lookedOptions}
        value={fields.looked === 'notSaid' ? null : fields.looked}
        onChange={(looked) => change({ looked })}
      />
      <NumberField
        label="Within how many hours may damage be claimed?"
        hint="As the seller says; may be left empty."
        unit="hours"
        value={fields.claimHours}
        onChange={(claimHours) => change({ claimHours })}
        error={act.wrong('claimHours')}
      />
      <MoreExact
        label="When they came, and a word or two"
        open={act.wrong('clock') !== undefined || act.wrong('day') !== undefined}
      >
        <DayField
          label="On which day?"
          value={fields.day}
          latest={today}
          onChange={(day) => change({ day })}
          echo={dayEcho(fields.day)}
          error={act.wrong('day')}
        />
        <ClockField
          label="At what time?"
          value={fields.clock}
          onChange={(clock) => change({ clock })}
          error={act.wrong('clock')}
        />
        <Field label="A word or two" value={fields.words} onChange={(words) => change({ words })} />
      </MoreExact>
      <WholeForm act={act} />
      <Actions>
        <Button submit waiting={act.busy}>
          They are here
        </Button>
      </Actions>
    </Form>
  )
}
