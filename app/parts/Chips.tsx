/** A reason, if she cares to give one: a second touch takes it back, and none at all is fine. */
import '../styles/choices.css'
import type { Option } from './Radios.tsx'
import { Tick } from './Tick.tsx'

type ChipsProps<T extends string> = {
  readonly label: string
  readonly options: readonly Option<T>[]
  readonly value: T | null
  readonly onChange: (value: T | null) => void
}

export const Chips = <T extends string>({ label, options, value, onChange }: ChipsProps<T>) => (
  <fieldset className="chips">
    <legend className="choice-legend">{label}</legend>
    <div className="chips-row">
      {options.map((option) => {
        const chosen = option.value === value
        return (
          <button
            type="button"
            className="chip"
            key={option.value}
            aria-pressed={chosen}
            onClick={() => onChange(chosen ? null : option.value)}
          >
            {chosen && <Tick />}
            {option.label}
          </button>
        )
      })}
    </div>
  </fieldset>
)
