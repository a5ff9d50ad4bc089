/** One out of many in a list that opens: a month of the last few years, a photo of a dozen. */
import { type Asked, Labelled } from './Labelled.tsx'

type ListFieldProps = Asked & {
  readonly value: string
  readonly onChange: (value: string) => void
  readonly options: readonly { readonly value: string; readonly label: string }[]
  readonly echo?: string | undefined
  /** What stands there while none is chosen; absent where there is always one. */
  readonly none?: string
}

export const ListField = ({ value, onChange, options, none, ...asked }: ListFieldProps) => (
  <Labelled {...asked}>
    {(wires) => (
      <select
        {...wires}
        className="field-input list-choice"
        value={value}
        onChange={(event) => onChange(event.target.value)}
      >
        {none !== undefined && <option value="">{none}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    )}
  </Labelled>
)
