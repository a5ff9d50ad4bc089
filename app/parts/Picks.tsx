/** One or several out of a few: a touch takes one in, another leaves it out. */
import '../styles/choices.css'
import { useId } from 'react'
import { type Asked, FieldError } from './Labelled.tsx'
import type { Option } from './Radios.tsx'
import { Tick } from './Tick.tsx'

type PicksProps<T extends string> = Asked & {
  readonly options: readonly Option<T>[]
  readonly values: readonly T[]
  readonly onChange: (values: readonly T[]) => void
}

export const Picks = <T extends string>({ label, hint, error, options, values, onChange }: PicksProps<T>) => {
  const id = useId()
  const said = [hint && `${id}-hint`, error && `${id}-error`].filter(Boolean).join(' ')
  const touch = (value: T) =>
    // In the order they are offered, whatever the order of the touches.
    onChange(
      options.flatMap((option) => (values.includes(option.value) !== (option.value === value) ? [option.value] : [])),
    )
  return (
    <fieldset className="chips" aria-describedby={said || undefined}>
      <legend className="choice-legend">{label}</legend>
      {hint && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div className="chips-row">
        {options.map(({ value, label: name }) => (
          <button
            type="button"
            className="chip"
            key={value}
            aria-pressed={values.includes(value)}
            onClick={() => touch(value)}
          >
            {values.includes(value) && <Tick />}
            {name}
          </button>
        ))}
      </div>
      {error && <FieldError id={`${id}-error`}>{error}</FieldError>}
    </fieldset>
  )
}
