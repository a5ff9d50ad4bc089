/** A question with one answer out of a few, told apart by a line each. */
import '../styles/choices.css'
import { useId } from 'react'
import { type Asked, FieldError } from './Labelled.tsx'
import { type Option, Radios } from './Radios.tsx'

type ChoiceProps<T extends string> = Asked & {
  readonly options: readonly Option<T>[]
  readonly value: T | null
  readonly onChange: (value: T) => void
}

// A radio group rather than a fieldset: only the former may be called invalid.
export const Choice = <T extends string>({ label, hint, error, options, value, onChange }: ChoiceProps<T>) => {
  const id = useId()
  const said = [hint && `${id}-hint`, error && `${id}-error`].filter(Boolean).join(' ')
  return (
    <div
      className="choice"
      role="radiogroup"
      aria-labelledby={`${id}-label`}
      aria-describedby={said || undefined}
      aria-invalid={error ? true : undefined}
    >
      <p className="choice-legend" id={`${id}-label`}>
        {label}
      </p>
      {hint && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <Radios options={options} value={value} onChange={onChange} />
      {error && <FieldError id={`${id}-error`}>{error}</FieldError>}
    </div>
  )
}
