/** A field the browser has a picker for, with a mark of ours on it: its own cannot be seen by red light. */
import { type Asked, Labelled } from './Labelled.tsx'

export type Picked = Asked & {
  readonly value: string
  readonly onChange: (value: string) => void
  /** Said beneath it, in words. */
  readonly echo?: string | undefined
}

type PickerProps = Picked & {
  readonly type: 'date' | 'time'
  readonly min?: string | undefined
  readonly max?: string | undefined
  /** The mark, as a path in a square of 20. */
  readonly drawing: string
}

export const Picker = ({ value, onChange, type, min, max, drawing, ...asked }: PickerProps) => (
  <Labelled {...asked}>
    {(wires) => (
      <div className="field-picker">
        <input
          {...wires}
          className="field-input"
          type={type}
          value={value}
          min={min}
          max={max}
          onChange={(event) => onChange(event.target.value)}
        />
        <svg className="field-picker-mark" viewBox="0 0 20 20" aria-hidden="true">
          <path d={drawing} />
        </svg>
      </div>
    )}
  </Labelled>
)
