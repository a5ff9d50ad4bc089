/** A dose that was asked about: the ways on stand beside the question, and nothing that was said is lost. */
import { useState } from 'react'
import {
  type BottleId,
  type DoseRefusal,
  type FoodId,
  type Microlitres,
  slipReadings,
  sniffDays,
  sourcesOf,
} from '../../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../../parts/Actions.tsx'
import { Chips } from '../../../parts/Chips.tsx'
import { Field } from '../../../parts/Field.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { doseRefusalText } from '../../../words/dose.ts'
import { bottleName } from '../../../words/names.ts'
import { millilitres } from '../../../words/numbers.ts'
import type { Reading as Words } from '../../../words/reading.ts'
import { type Reason, reasonOptions } from '../../../words/reasons.ts'
import type { Reader } from '../../../words/tonight.ts'
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
type RefusedProps = {
  readonly refusal: DoseRefusal
  readonly food: FoodId
  /** A word of why is there already. */
  readonly told?: boolean
  readonly reader: Reader
  readonly reading: Words
  readonly ways: Ways
}

export const Refused = ({ refusal, food, told = false, reader, reading, ways }: RefusedProps) => (
  <Notice kind="refusal">
    <p>{doseRefusalText(refusal, reader, reading)}</p>
    <Ways refusal={refusal} food={food} told={told} reader={reader} ways={ways} />
    <Actions>
      <Button kind="quiet" onAct={ways.onLeave}>
        Leave it
      </Button>
    </Actions>
  </Notice>
)

type WaysProps = Omit<RefusedProps, 'reading' | 'told'> & { readonly told: boolean }

const Ways = ({ refusal, food, told, reader, ways }: WaysProps) => {
  switch (refusal.why) {
    case 'alreadyGiven':
      return (
        <Actions>
          <Button kind="quiet" onAct={() => ways.onSure({ again: true })}>
            That was another one: note it too
          </Button>
        </Actions>
      )
    case 'aboveRange':
      return (
        <Actions>
          <Button kind="quiet" onAct={() => ways.onSure({ sure: true })}>
            It is so: note it
          </Button>
        </Actions>
      )
    case 'farAboveRange':
      return <FarAbove asked={refusal.asked} top={refusal.top} told={told} ways={ways} />
    case 'pastItsDay':
      return <Past long={refusal.days > sniffDays} told={told} ways={ways} />
    case 'moreThanBottleHolds': {
      const others = sourcesOf(reader.world, food, reader.now).flatMap((source) =>
        source.from === 'bottle' && source.bottle !== refusal.bottle && source.left >= refusal.asked
          ? [source.bottle]
          : [],
      )
      return (
        <Actions>
          {others.map((bottle) => (
            <Button key={bottle} kind="quiet" onAct={() => ways.onBottle(bottle)}>
              It came from {bottleName(reader.world, bottle, reader.now)}
            </Button>
          ))}
          {refusal.holds > 0 && (
            <Button kind="quiet" onAct={ways.onHeldMore}>
              The bottle held more: it is empty now
            </Button>
          )}
          <Button kind="quiet" onAct={() => ways.onSure({ aside: true })}>
            Note it; I’ll look later
          </Button>
        </Actions>
      )
    }
    case 'notYet':
      return <p>A dose to come belongs in the plan: it will be due by itself.</p>
    case 'noSuchPlan':
      return <ButtonLink href="#/water">Look at the plans</ButtonLink>
    case 'nothingGiven':
    case 'wholePortions':
    case 'justRecorded':
      return null
  }
}

type FarAboveProps = {
  readonly asked: Microlitres
  readonly top: number
  readonly told: boolean
  readonly ways: Ways
}

/** A slip of the decimal point is one touch away; what has happened can be noted, so much of it with a word of why. */
const FarAbove = ({ asked, top, told, ways }: FarAboveProps) => {
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
        <Button kind="quiet" onAct={sure}>
          It is so: note it
        </Button>
      </Actions>
    </>
  )
}

const looked = reasonOptions('sniffed', 'notNoted')

/** One touch within a fortnight; longer past, why is asked, and may be skipped. */
const Past = ({ long, told, ways }: { readonly long: boolean; readonly told: boolean; readonly ways: Ways }) => {
  const [reason, setReason] = useState<Reason | null>(null)
  return (
    <>
      {!told && (
        <Chips
          label={long ? 'How did it come about? It may be skipped.' : 'Why? It may be skipped.'}
          options={looked}
          value={reason}
          onChange={setReason}
        />
      )}
      <Actions>
        <Button kind="quiet" onAct={() => ways.onSure({ sure: true, ...(reason ? { why: reason } : {}) })}>
          It is so: note it
        </Button>
      </Actions>
    </>
  )
}
