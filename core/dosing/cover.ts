/** What a stock comes to in nights, at the pace of the plans that share it. */
import type { Microlitres } from '../basis/amounts.ts'
import { type Day, daysBetween } from '../basis/days.ts'
import type { FoodId } from '../basis/ids.ts'
import { stepsToReach, stepsWithin } from '../basis/numbers.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import type { TankState } from '../tank/state.ts'
import { nightsUntil } from './due.ts'
import type { PlanMade } from './facts.ts'
import { type DosingState, plansAt } from './state.ts'

type Planned = DosingState & TankState

const plansOf = (state: Planned, food: FoodId, now: Moment): readonly PlanMade[] =>
  plansAt(state, now).filter((plan) => plan.food === food)

/** A few nights more or less where several tanks share it: their rounds are averaged, not walked. */
const shared = (left: number, plans: readonly PlanMade[], perDose: (plan: PlanMade) => number): number =>
  stepsWithin(
    left,
    plans.reduce((sum, plan) => sum + perDose(plan) / plan.everyNights, 0),
  )

/** Whole portions that make one dose of a plan: as many as fit, at least one. */
export const portionsPerDose = (dose: Microlitres, each: Microlitres): number => Math.max(1, stepsWithin(dose, each))

/** A tank that takes less than half a portion leaves enough for another the same night; what it leaves is thrown away else. */
export const couldBeShared = (state: Planned, food: FoodId, each: Microlitres, now: Moment): boolean =>
  plansOf(state, food, now).some(({ amount }) => amount * 2 < each)

/** The smallest dose planned of a food: less than that is no food for a night. */
export const smallestDose = (state: Planned, food: FoodId, now: Moment): Microlitres | undefined =>
  plansOf(state, food, now).toSorted((a, b) => a.amount - b.amount)[0]?.amount

/**
 * Nights that so many portions are food for; undefined where no plan feeds this food. However small a dose, it takes a
 * whole portion: what has thawed is not kept.
 */
export const portionsCover = (
  state: Planned,
  food: FoodId,
  { each, count }: { readonly each: Microlitres; readonly count: number },
  now: Moment,
): number | undefined => {
  const plans = plansOf(state, food, now)
  const perDose = ({ amount }: PlanMade) => portionsPerDose(amount, each)
  const [only] = plans
  if (!only) return undefined
  // The last dose may be short of a portion: less is safe.
  return plans.length === 1 ? stepsToReach(count, perDose(only)) * only.everyNights : shared(count, plans, perDose)
}

/** Nights that so much from a bottle is food for; undefined where no plan feeds this food. */
export const liquidCover = (state: Planned, food: FoodId, amount: number, now: Moment): number | undefined => {
  const plans = plansOf(state, food, now)
  const [only] = plans
  if (!only) return undefined
  return plans.length === 1
    ? stepsWithin(amount, only.amount) * only.everyNights
    : shared(amount, plans, (plan) => plan.amount)
}

export type InTime = {
  readonly nights: number
  /** There is more of it than its last good day leaves nights for. */
  readonly toLastGood: boolean
}

/** As many of those nights as its last good day leaves, today's included; none when it is past. */
export const coverInTime = (nights: number | undefined, lastGood: Day | undefined, today: Day): InTime | undefined => {
  if (nights === undefined) return undefined
  const most = lastGood === undefined ? nights : Math.max(0, daysBetween(today, lastGood) + 1)
  return { nights: Math.min(nights, most), toLastGood: nights > most }
}

/** What the plans call for from tonight to a night, that one included. */
export const plannedUntil = (
  state: Planned & FoodState,
  food: FoodId,
  until: Day,
  now: Moment,
): { readonly doses: number; readonly amount: number } => {
  let doses = 0
  let amount = 0
  for (const plan of plansOf(state, food, now)) {
    const nights = nightsUntil(state, plan, until, now).length
    doses += nights
    amount += nights * plan.amount
  }
  return { doses, amount }
}

/** The first night this food is known to have reached a tank. */
export const fedSince = ({ plans, nights }: DosingState, food: FoodId): Day | undefined => {
  const given = [...plans]
    .filter(([, made]) => made.some((plan) => plan.food === food))
    .flatMap(([plan]) => [...(nights.get(plan) ?? [])])
    .filter(([, marks]) => marks.some(({ what }) => what === 'given'))
    .map(([night]) => night)
  return given.sort()[0]
}
