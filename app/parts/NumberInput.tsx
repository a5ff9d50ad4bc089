/**
 * The typed number itself. Plain text with a numeric keypad, not `type="number"`: that one throws away what it cannot read
 * and, in half the world, refuses either the comma or the point.
 */
import type { Wires } from './Labelled.tsx'

type NumberInputProps = {
  readonly wires: Wires
  readonly value: string
  readonly onChange: (typed: string) => void
}

export const NumberInput = ({ wires, value, onChange }: NumberInputProps) => (
  <input
    {...wires}
    className="field-input"
    inputMode="decimal"
    autoComplete="off"
    value={value}
    onChange={(event) => onChange(event.target.value)}
  />
)
