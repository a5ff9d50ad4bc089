/** A line, or a few, of a person's own words. */
import { type Asked, Labelled } from './Labelled.tsx'

type FieldProps = Asked & {
  readonly value: string
  readonly onChange: (text: string) => void
  /** More than one makes room for several lines. */
  readonly lines?: number
  /** Letters. */
  readonly longest?: number
}

/** Far beyond a name or a reason, and short enough for every list it will stand in. */
const usualLongest = 1_000

export const Field = ({ value, onChange, lines = 1, longest = usualLongest, ...asked }: FieldProps) => (
  <Labelled {...asked}>
    {(wires) =>
      lines > 1 ? (
        <textarea
          {...wires}
          className="field-input"
          maxLength={longest}
          rows={lines}
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      ) : (
        <input
          {...wires}
          className="field-input"
          maxLength={longest}
          autoComplete="off"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )
    }
  </Labelled>
)
