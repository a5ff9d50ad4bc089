/** Far too much went in: what is known of it, and for how long nothing more is fed. */
import { addDays, type Day, later } from '../basis/days.ts'
import type { FoodState } from '../food/state.ts'
import { foodAt } from '../food/state.ts'
import type { TankState } from '../tank/state.ts'
import { tankAt } from '../tank/state.ts'
import { absurdRatio, bandOf } from './band.ts'
import type { PlanMade } from './facts.ts'
import type { DoseMarks } from './give.ts'
import { type DosingState, givenOf, marksOf } from './state.ts'

type State = TankState & FoodState & DosingState

/** Nights without food after far too much of it: a week at least. Our own judgement; what the water says goes before it. */
const leastNights = 7

/** The first night a plan may be due again: two rounds later, a week at the least. */
export const restUntil = ({ everyNights }: Pick<PlanMade, 'everyNights'>, night: Day): Day =>
  later(addDays(night, 2 * everyNights), addDays(night, leastNights))

/** So far above the label's range that this is no rich evening. */
export const isFarTooMuch = ({ above }: DoseMarks): boolean => above !== undefined && above > absurdRatio

export type Gone = { readonly night: Day; readonly amount: number }

/** What is noted for a night or the one before it, where it is far above the range. */
export const farTooMuchLately = (state: State, plan: PlanMade, night: Day): Gone | undefined => {
  for (const each of [night, addDays(night, -1)]) {
    const given = givenOf(marksOf(state, plan.plan, each))
    const amount = given.reduce((sum, mark) => sum + mark.amount, 0)
    const at = given.at(-1)?.at
    const tank = at === undefined ? undefined : tankAt(state, plan.tank, at)
    const food = at === undefined ? undefined : foodAt(state, plan.food, at)
    const top = tank && food && bandOf(tank, food)?.high
    if (top !== undefined && amount > top * absurdRatio) return { night: each, amount }
  }
  return undefined
}
