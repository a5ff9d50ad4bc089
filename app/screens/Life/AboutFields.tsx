/** Where it was, a remark, and when, if it was not now. */
import { isDay, type TankDescribed, wallDay } from '../../../core/index.ts'
import { ClockField } from '../../parts/ClockField.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Field } from '../../parts/Field.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { dayEcho } from '../../words/dates.ts'
import { useReading } from '../useReading.ts'
import type { AboutFields as Fields } from './lifeFields.ts'
import type { LifeForm } from './useLifeForm.ts'

type AboutFieldsProps = {
  readonly tank: TankDescribed
  readonly fields: Fields
  readonly onChange: (changed: Partial<Fields>) => void
  readonly form: LifeForm
  readonly whereLabel: string
  readonly whereHint: string
}

export const AboutFields = ({ tank, fields, onChange, form, whereLabel, whereHint }: AboutFieldsProps) => {
  const { now } = useReading()
  const today = wallDay(now, tank.zone)
  const day = isDay(fields.day) ? fields.day : today
  return (
    <>
      <Field
        label={whereLabel}
        hint={whereHint}
        value={fields.where}
        onChange={(where) => onChange({ where })}
        error={form.wrong('where')}
      />
      <Field
        label="A remark, if you like"
        lines={2}
        value={fields.words}
        onChange={(words) => onChange({ words })}
        error={form.wrong('words')}
      />
      <MoreExact label="It was not just now" open={form.wrong('clock') !== undefined}>
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
          error={form.wrong('clock')}
        />
      </MoreExact>
    </>
  )
}
