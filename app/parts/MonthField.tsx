/** A month out of the last few years. A list, since not every browser can pick a month. */
import { type Asked, Labelled } from './Labelled.tsx'

type MonthFieldProps = Asked & {
  /** The month's first day, or empty. */
  readonly value: string
  readonly onChange: (month: string) => void
  readonly months: readonly { readonly value: string; readonly label: string }[]
  readonly echo?: string | undefined
  /** What stands there while none is chosen; absent where there is always one. */
  readonly none?: string
}

export const MonthField = ({ value, onChange, months, none, ...asked }: MonthFieldProps) => (
  <Labelled {...asked}>
    {(wires) => (
      <select
        {...wires}
        className="field-input month-choice"
        value={value}
        onChange={(event) => onChange(event.target.value)}
      >
        {none !== undefined && <option value="">{none}</option>}
        {months.map((month) => (
          <option key={month.value} value={month.value}>
            {month.label}
          </option>
        ))}
      </select>
    )}
  </Labelled>
)
