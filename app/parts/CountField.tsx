/** A whole number for wet hands: two big keys, and the number itself for whoever would rather type. */
import { type Asked, Labelled } from './Labelled.tsx'

type CountFieldProps = Asked & {
  readonly value: number | null
  readonly onChange: (count: number | null) => void
  /** What the keys say: "one fewer", "one more". */
  readonly fewer: string
  readonly more: string
  readonly min?: number
  readonly max?: number
}

export const CountField = ({ value, onChange, fewer, more, min = 0, max = 9999, ...asked }: CountFieldProps) => {
  const step = (by: number) => onChange(Math.min(max, Math.max(min, (value ?? min) + by)))
  return (
    <Labelled {...asked}>
      {(wires) => (
        <div className="count">
          <CountKey says={fewer} spent={value !== null && value <= min} drawing="M2 10h16" onPress={() => step(-1)} />
          <input
            {...wires}
            className="field-input"
            inputMode="numeric"
            autoComplete="off"
            value={value ?? ''}
            onKeyDown={(event) => {
              if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return
              event.preventDefault()
              step(event.key === 'ArrowUp' ? 1 : -1)
            }}
            onChange={(event) => {
              const digits = event.target.value.replace(/\D/g, '')
              onChange(digits === '' ? null : Math.min(max, Number(digits)))
            }}
          />
          <CountKey
            says={more}
            spent={value !== null && value >= max}
            drawing="M2 10h16M10 2v16"
            onPress={() => step(1)}
          />
          {/* The keys change a number somewhere else on the screen: say it. */}
          <output className="for-ears">{value ?? ''}</output>
        </div>
      )}
    </Labelled>
  )
}

type CountKeyProps = {
  readonly says: string
  readonly spent: boolean
  readonly drawing: string
  readonly onPress: () => void
}

const CountKey = ({ says, spent, drawing, onPress }: CountKeyProps) => (
  <button type="button" className="count-key" aria-label={says} aria-disabled={spent} onClick={onPress}>
    <svg viewBox="0 0 20 20" aria-hidden="true">
      <path d={drawing} />
    </svg>
  </button>
)
