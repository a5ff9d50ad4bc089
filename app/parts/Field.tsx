/** A line, or a few, of a person's own words. */
import { type Asked, Labelled } from './Labelled.tsx'

type FieldProps = Asked & {
  readonly value: string
  readonly onChange: (text: string) => void
  /** More than one makes room for several lines. */
  readonly lines?: number
}

export const Field = ({ value, onChange, lines = 1, ...asked }: FieldProps) => (
  <Labelled {...asked}>
    {(wires) =>
      lines > 1 ? (
        <textarea
          {...wires}
          className="field-input"
          rows={lines}
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      ) : (
        <input
          {...wires}
          className="field-input"
          autoComplete="off"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )
    }
  </Labelled>
)
