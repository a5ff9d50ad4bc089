/** A number and the unit it was read in. The unit is asked, not guessed, so at first none may be chosen. */
import { useId } from 'react'
import { FieldError } from './Labelled.tsx'
import { NumberInput } from './NumberInput.tsx'
import { type Option, Radios } from './Radios.tsx'

type UnitNumberFieldProps<U extends string> = {
  readonly label: string
  readonly hint?: string | undefined
  readonly error?: string | undefined
  readonly value: string
  readonly onChange: (typed: string) => void
  readonly unitLabel: string
  readonly units: readonly Option<U>[]
  readonly unit: U | null
  readonly onUnit: (unit: U) => void
  readonly unitError?: string | undefined
}

export const UnitNumberField = <U extends string>(props: UnitNumberFieldProps<U>) => {
  const id = useId()
  const { label, hint, error, unitError } = props
  const said = [hint && `${id}-hint`, error && `${id}-error`].filter(Boolean).join(' ')
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {hint && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div className="field-measure field-with-units">
        <NumberInput
          wires={{ id, 'aria-describedby': said || undefined, 'aria-invalid': error ? true : undefined }}
          value={props.value}
          onChange={props.onChange}
        />
        <div
          role="radiogroup"
          aria-label={props.unitLabel}
          aria-invalid={unitError ? true : undefined}
          aria-describedby={unitError ? `${id}-unit` : undefined}
        >
          <Radios across options={props.units} value={props.unit} onChange={props.onUnit} />
        </div>
      </div>
      {error && <FieldError id={`${id}-error`}>{error}</FieldError>}
      {unitError && <FieldError id={`${id}-unit`}>{unitError}</FieldError>}
    </div>
  )
}
