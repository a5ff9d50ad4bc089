/** About when: a month is as exact as anyone remembers. */
import './food.css'
import type { Day } from '../../../core/index.ts'
import { type Asked, Labelled } from '../../parts/Labelled.tsx'
import { monthWords } from '../../words/freezing.ts'

type MonthFieldProps = Asked & {
  /** The first days of the months to choose from. */
  readonly months: readonly Day[]
  readonly value: string
  readonly onChange: (month: string) => void
}

export const MonthField = ({ months, value, onChange, ...asked }: MonthFieldProps) => (
  <Labelled {...asked}>
    {(wires) => (
      <select
        {...wires}
        className="field-input month-choice"
        value={value}
        onChange={(event) => onChange(event.target.value)}
      >
        <option value="">Choose a month</option>
        {months.map((month) => (
          <option key={month} value={month}>
            about {monthWords(month)}
          </option>
        ))}
      </select>
    )}
  </Labelled>
)
