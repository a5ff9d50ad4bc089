/** A number as a person types it, with its unit after it. */
import { type Asked, Labelled } from './Labelled.tsx'
import { NumberInput } from './NumberInput.tsx'

type NumberFieldProps = Asked & {
  readonly value: string
  readonly onChange: (typed: string) => void
  readonly unit?: string | undefined
}

export const NumberField = ({ value, onChange, unit, label, ...asked }: NumberFieldProps) => (
  <Labelled label={label} {...asked}>
    {(wires) => (
      <div className="field-measure">
        <NumberInput wires={wires} value={value} onChange={onChange} />
        {unit && <span className="field-unit">{unit}</span>}
      </div>
    )}
  </Labelled>
)
