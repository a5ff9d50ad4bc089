/** So much of it, or so long past its day: what is asked, and that it may be so. */
import { useState } from 'react'
import { type BottleId, type Microlitres, slipReadings } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Field } from '../../../parts/Field.tsx'
import { millilitres } from '../../../words/numbers.ts'
import type { Reason } from '../../../words/reasons.ts'
import { because, Why } from '../../Why.tsx'
import type { Confirmed } from '../useDosing.ts'

export type Ways = {
  readonly onSure: (more: Confirmed) => void
  /** Where it was typed: she meant another amount. */
  readonly onAmount?: (amount: Microlitres) => void
  readonly onBottle: (bottle: BottleId) => void
  /** It held more than the book knew, and is empty now. */
  readonly onHeldMore: () => void
  readonly onLeave: () => void
}

type FarAboveProps = {
  readonly asked: Microlitres
  readonly top: number
  readonly told: boolean
  readonly ways: Ways
}

/** A slip of the decimal point is one touch away; what has happened can be noted, so much of it with a word of why. */
export const FarAbove = ({ asked, top, told, ways }: FarAboveProps) => {
  const [why, setWhy] = useState('')
  const [missing, setMissing] = useState(false)
  const sure = () => {
    if (told) ways.onSure({ sure: true })
    else if (why.trim() === '') setMissing(true)
    else ways.onSure({ sure: true, why: why.trim() })
  }
  const { onAmount } = ways
  return (
    <>
      {onAmount && (
        <Actions>
          {slipReadings(asked, top).map((amount) => (
            <Button key={amount} onAct={() => onAmount(amount)}>
              I meant {millilitres(amount)}
            </Button>
          ))}
        </Actions>
      )}
      {!told && (
        <Field
          label="How did it come about?"
          value={why}
          onChange={setWhy}
          error={missing && why.trim() === '' ? 'A word or two, please.' : undefined}
        />
      )}
      <Actions>
        <Button onAct={sure}>It is so: note it</Button>
      </Actions>
    </>
  )
}

type SureProps = {
  readonly label?: string
  readonly reasons: readonly Reason[]
  readonly told: boolean
  readonly ways: Ways
}

/** One touch keeps it; why is asked, unless that is told already, and may be skipped. */
export const Sure = ({ label, reasons, told, ways }: SureProps) => {
  const [why, setWhy] = useState('')
  return (
    <>
      {!told && <Why {...(label ? { label } : {})} reasons={reasons} value={why} onChange={setWhy} />}
      <Actions>
        <Button onAct={() => ways.onSure({ sure: true, ...because(why) })}>It is so: note it</Button>
      </Actions>
    </>
  )
}
