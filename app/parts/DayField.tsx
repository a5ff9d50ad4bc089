/** A day. Fields of digits are read in two orders in two countries, so the day is said again in words. */
import { type Asked, Labelled } from './Labelled.tsx'

type DayFieldProps = Asked & {
  /** `yyyy-MM-dd`, or empty. */
  readonly value: string
  readonly onChange: (day: string) => void
  readonly echo?: string | undefined
  readonly earliest?: string | undefined
  readonly latest?: string | undefined
}

export const DayField = ({ value, onChange, earliest, latest, ...asked }: DayFieldProps) => (
  <Labelled {...asked}>
    {(wires) => (
      <div className="field-picker">
        <input
          {...wires}
          className="field-input"
          type="date"
          value={value}
          min={earliest}
          max={latest}
          onChange={(event) => onChange(event.target.value)}
        />
        <svg className="field-picker-mark" viewBox="0 0 20 20" aria-hidden="true">
          <path d="M2.5 4.5h15v13h-15zM2.5 8.5h15M6.5 2.5v3.5M13.5 2.5v3.5M6 12h2M12 12h2" />
        </svg>
      </div>
    )}
  </Labelled>
)
