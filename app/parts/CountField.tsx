/**
 * A whole number for wet hands: two big keys, and the number itself for whoever would rather type. What is typed stays as
 * it was typed: "10,5" put right in silence would be a count of 105 that nobody made.
 */
import { useState } from 'react'
import { type Asked, Labelled } from './Labelled.tsx'

type CountFieldProps = Asked & {
  readonly value: number | null
  /** Null while what stands there is no whole number from `min` to `max`. */
  readonly onChange: (count: number | null) => void
  /** What the keys say; for ears with the label after it, since several may stand on one page. */
  readonly fewer?: string
  readonly more?: string
  readonly min?: number
  readonly max?: number
  /** What is said of anything else than a whole number, and of one beyond either end. */
  readonly odd?: string
  readonly tooFew?: (min: number) => string
  readonly tooMany?: (max: number) => string
}

const whole = (typed: string): number | undefined => (/^\d+$/.test(typed.trim()) ? Number(typed) : undefined)

export const CountField = ({
  value,
  onChange,
  fewer = 'One fewer',
  more = 'One more',
  min = 0,
  max = 9999,
  odd = 'A whole number, please.',
  tooFew = (least) => `At least ${least}.`,
  tooMany = (most) => `At most ${most}.`,
  error,
  ...asked
}: CountFieldProps) => {
  const [typed, setTyped] = useState<string>()
  const read = (text: string): number | null => {
    const count = whole(text)
    return count !== undefined && count >= min && count <= max ? count : null
  }
  // A value from elsewhere, another tab's or a key's, is newer than what was typed.
  const shown = typed !== undefined && read(typed) === value ? typed : String(value ?? '')
  const count = whole(shown)
  const wrong = () => {
    if (shown.trim() === '') return undefined
    if (count === undefined) return odd
    return count > max ? tooMany(max) : count < min ? tooFew(min) : undefined
  }
  const step = (by: number) => {
    setTyped(undefined)
    onChange(Math.min(max, Math.max(min, (count ?? min) + by)))
  }
  return (
    <Labelled {...asked} error={wrong() ?? error}>
      {(wires) => (
        <div className="count">
          <CountKey
            says={`${fewer}: ${asked.label}`}
            spent={count !== undefined && count <= min}
            drawing="M2 10h16"
            onPress={() => step(-1)}
          />
          <input
            {...wires}
            className="field-input"
            inputMode="numeric"
            autoComplete="off"
            value={shown}
            onKeyDown={(event) => {
              if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return
              event.preventDefault()
              step(event.key === 'ArrowUp' ? 1 : -1)
            }}
            onChange={(event) => {
              setTyped(event.target.value)
              onChange(read(event.target.value))
            }}
          />
          <CountKey
            says={`${more}: ${asked.label}`}
            spent={count !== undefined && count >= max}
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
  <button type="button" className="count-key" aria-disabled={spent} onClick={onPress}>
    <span className="for-ears">{says}</span>
    <svg viewBox="0 0 20 20" aria-hidden="true">
      <path d={drawing} />
    </svg>
  </button>
)
