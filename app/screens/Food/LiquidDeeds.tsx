/** A bottle's liquid, measured by eye or spilt. */
import { liquidGone, liquidLeft, type Microlitres, measureLiquid, readMillilitres } from '../../../core/index.ts'
import { millilitres } from '../../words/numbers.ts'
import type { Reason } from '../../words/reasons.ts'
import { AmountDeed } from './AmountDeed.tsx'
import type { BottleDeedProps } from './BottleActs.tsx'
import { placed } from './useAct.ts'

const measuring: readonly Reason[] = ['notNoted', 'spilt', 'miscounted']
const spilling: readonly Reason[] = ['spilt', 'dropped']

export const MeasureLiquid = ({ bottle, onDone }: BottleDeedProps) => (
  <AmountDeed
    form={`measure/${bottle.id}`}
    label={bottle.finished ? 'There is some left after all' : 'Measure what is left'}
    question="How much is left?"
    hint={`The book says ${millilitres(liquidLeft(bottle))}.`}
    act="That is what is left"
    reasons={measuring}
    onDone={onDone}
    says={(amount) => `${millilitres(amount)} left, measured.`}
    doubt="moreThanFull"
    ask={(typed, why, sure) =>
      (world, { now }) => {
        const left = placed(readMillilitres(typed), 'amount')
        if (!left.ok) return left
        const measured = measureLiquid(world, { bottle: bottle.id, left: left.value, sure, ...why }, now)
        return placed(measured, { notPositive: 'amount' })
      }}
  />
)

export const SpiltLiquid = ({ bottle, onDone }: BottleDeedProps) => (
  <AmountDeed
    form={`spilt/${bottle.id}`}
    label="Spilt some"
    question="About how much?"
    act="Take it off"
    reasons={spilling}
    onDone={onDone}
    says={(amount: Microlitres) => `${millilitres(amount)} taken off.`}
    ask={(typed, why) =>
      (world, { now }) => {
        const amount = placed(readMillilitres(typed), 'amount')
        if (!amount.ok) return amount
        const gone = { bottle: bottle.id, amount: amount.value, fate: 'lost' as const, ...why }
        return placed(liquidGone(world, gone, now), 'amount')
      }}
  />
)
