/** A time on the clock of the wall, without a day. */
import { type Asked, Labelled } from './Labelled.tsx'

type ClockFieldProps = Asked & {
  /** `HH:mm`, or empty. */
  readonly value: string
  readonly onChange: (clock: string) => void
  readonly echo?: string | undefined
}

export const ClockField = ({ value, onChange, ...asked }: ClockFieldProps) => (
  <Labelled {...asked}>
    {(wires) => (
      <div className="field-picker">
        <input
          {...wires}
          className="field-input"
          type="time"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
        <svg className="field-picker-mark" viewBox="0 0 20 20" aria-hidden="true">
          <circle cx="10" cy="10" r="7.5" />
          <path d="M10 5.5V10l3 2" />
        </svg>
      </div>
    )}
  </Labelled>
)
