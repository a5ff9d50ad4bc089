/** Her own words about a day. What is typed is kept until it is written down. */
import { isDay, type RewriteRefusal, tanksAt } from '../../../core/index.ts'
import { Chips } from '../../parts/Chips.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Field } from '../../parts/Field.tsx'
import { dayEcho } from '../../words/dates.ts'
import { tankName } from '../../words/names.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'
import type { NoteFields } from './noteFields.ts'

type NoteFormProps = {
  readonly fields: NoteFields
  readonly refusal: RewriteRefusal | undefined
  readonly reading: Reading
  readonly onChange: (fields: Partial<NoteFields>) => void
}

/** Longer than a note may be: what was pasted is refused in words rather than cut off unseen. */
const longestTyped = 100_000

export const NoteForm = ({ fields, refusal, reading, onChange }: NoteFormProps) => {
  const { world, now, today } = reading
  const wrong = refusal && refusalText(refusal, reading)
  const kept = tanksAt(world, now).map(({ tank, name }) => ({ value: tank as string, label: name }))
  // A note about a tank that is no longer kept stays about it.
  const tanks = [
    ...kept,
    ...[...world.tanks.keys()].flatMap((tank) =>
      tank === fields.tank && !kept.some(({ value }) => value === tank)
        ? [{ value: tank as string, label: tankName(world, tank, now) }]
        : [],
    ),
  ]
  const day = isDay(fields.day) ? fields.day : today
  return (
    <>
      <Field
        label="What happened, or what did you see?"
        lines={5}
        longest={longestTyped}
        value={fields.text}
        onChange={(text) => onChange({ text })}
        error={refusal?.why === 'noWords' || refusal?.why === 'tooLong' ? wrong : undefined}
      />
      <DayField
        label="On which day?"
        value={fields.day}
        latest={today}
        onChange={(typed) => onChange({ day: typed })}
        echo={dayEcho(day)}
      />
      <ClockField
        label="At what time?"
        hint={day === today ? 'Left empty, it is now.' : 'May be left empty.'}
        value={fields.clock}
        onChange={(clock) => onChange({ clock })}
        error={refusal?.why === 'notYet' ? wrong : undefined}
      />
      {tanks.length > 1 && (
        <Chips
          label="About one tank?"
          options={tanks}
          value={fields.tank === '' ? null : fields.tank}
          onChange={(tank) => onChange({ tank: tank ?? '' })}
        />
      )}
    </>
  )
}
