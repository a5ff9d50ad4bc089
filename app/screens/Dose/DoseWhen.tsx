/** Just now, or at another time by the clock at the tank. */
import { Choice } from '../../parts/Choice.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { dayEcho } from '../../words/dates.ts'
import { thatNightWords } from '../../words/dose.ts'
import type { DosePartProps } from './DoseSource.tsx'
import { momentOf } from './doseFields.ts'

export const DoseWhen = ({ fields, change, reading, wrong }: DosePartProps) => {
  const { world, now, today } = reading
  const when = momentOf(fields, world, now)
  return (
    <>
      <Choice
        label="When?"
        options={[
          { value: 'now', label: 'Just now' },
          { value: 'then', label: 'At another time' },
        ]}
        value={fields.when}
        onChange={(chosen) => change({ when: chosen })}
      />
      {fields.when === 'then' && (
        <>
          <DayField
            label="On which day?"
            latest={today}
            value={fields.day}
            onChange={(day) => change({ day })}
            echo={dayEcho(fields.day)}
            error={wrong('day')}
          />
          <ClockField
            label="At what time? About is good enough."
            value={fields.clock}
            onChange={(clock) => change({ clock })}
            echo={when.ok ? thatNightWords(when.value.night, today) : undefined}
            error={wrong('clock')}
          />
        </>
      )}
    </>
  )
}
