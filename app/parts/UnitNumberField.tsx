/** A number and the unit it was read in. The unit is asked, not guessed, so at first none may be chosen. */
import { useId } from 'react'
import { FieldError, Labelled } from './Labelled.tsx'
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
  const { label, hint, error, unitError } = props
  const unitId = useId()
  return (
    <Labelled label={label} hint={hint} error={error}>
      {(wires) => (
        <>
          <div className="field-measure field-with-units">
            <NumberInput wires={wires} value={props.value} onChange={props.onChange} />
            <div
              role="radiogroup"
              aria-label={props.unitLabel}
              aria-invalid={unitError ? true : undefined}
              aria-describedby={unitError ? unitId : undefined}
            >
              <Radios across options={props.units} value={props.unit} onChange={props.onUnit} />
            </div>
          </div>
          {unitError && <FieldError id={unitId}>{unitError}</FieldError>}
        </>
      )}
    </Labelled>
  )
}
