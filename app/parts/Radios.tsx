/** One of several, each a row large enough to touch. */
import '../styles/choices.css'
import { useId } from 'react'

export type Option<T extends string> = {
  readonly value: T
  readonly label: string
  readonly hint?: string | undefined
}

type RadiosProps<T extends string> = {
  readonly options: readonly Option<T>[]
  readonly value: T | null
  readonly onChange: (value: T) => void
  readonly across?: boolean
}

export const Radios = <T extends string>({ options, value, onChange, across }: RadiosProps<T>) => {
  const name = useId()
  return (
    <div className="choice-rows" data-across={across ? '' : undefined}>
      {options.map((option) => {
        const id = `${name}-${option.value}`
        return (
          <label className="choice-row" key={option.value} htmlFor={id}>
            <input
              className="choice-mark"
              type="radio"
              id={id}
              name={name}
              aria-labelledby={`${id}-name`}
              aria-describedby={option.hint ? `${id}-hint` : undefined}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span className="choice-name" id={`${id}-name`}>
              {option.label}
            </span>
            {option.hint && (
              <span className="choice-hint" id={`${id}-hint`}>
                {option.hint}
              </span>
            )}
          </label>
        )
      })}
    </div>
  )
}
