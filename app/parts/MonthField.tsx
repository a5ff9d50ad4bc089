/** A month out of the last few years. A list, since not every browser can pick a month. */
import { type Asked, Labelled } from './Labelled.tsx'

type MonthFieldProps = Asked & {
  /** `yyyy-MM`, or empty. */
  readonly value: string
  readonly onChange: (month: string) => void
  readonly months: readonly { readonly value: string; readonly label: string }[]
  readonly echo?: string | undefined
}

export const MonthField = ({ value, onChange, months, ...asked }: MonthFieldProps) => (
  <Labelled {...asked}>
    {(wires) => (
      <select {...wires} className="field-input" value={value} onChange={(event) => onChange(event.target.value)}>
        {months.map((month) => (
          <option key={month.value} value={month.value}>
            {month.label}
          </option>
        ))}
      </select>
    )}
  </Labelled>
)
