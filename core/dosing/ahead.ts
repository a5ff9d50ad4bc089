/** The coming dose nights of every tank that shares a food, and what each would be given: of stock that may be yet to come. */
import type { Microlitres } from '../basis/amounts.ts'
import { byText } from '../basis/compare.ts'
import { addDays, type Day, later } from '../basis/days.ts'
import type { BottleId, FoodId, LotId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import { nightOf, type TankState, tankKept } from '../tank/state.ts'
import { dueOf, fixedFrom } from './due.ts'
import type { PlanMade } from './facts.ts'
import { afterwards, comesFrom, type Serving, type Source, servings } from './serve.ts'
import { type DosingState, plansAt } from './state.ts'

export type Planned = FoodState & DosingState & TankState
export type NightAhead = {
  readonly night: Day
  readonly plan: PlanMade
  /** Undefined: nothing usable is there that night. */
  readonly serving: Serving | undefined
}
export type Stock = {
  readonly sources: readonly Source[]
  /** What is not there yet: the day from which it may be served. */
  readonly notBefore?: ReadonlyMap<LotId | BottleId, Day>
}

/** Nights ahead that are walked, a hundred years. */
const horizon = 36_525

/** The first night a dose that found nothing could be given after all: it stays owed, unless the nights are fixed. */
const onceThere = (plan: PlanMade, there: Day): Day => (plan.rhythm === 'fixedNights' ? fixedFrom(plan, there) : there)

/**
 * Night by night, of one night in the order Tonight lists them, until no tank can be fed any more. It serves as Tonight
 * does: first to expire, first out.
 */
export function* nightsAhead(
  state: Planned,
  food: FoodId,
  { sources: stock, notBefore }: Stock,
  now: Moment,
): Generator<NightAhead, undefined> {
  let sources = stock
  let rounds = plansAt(state, now).flatMap((plan) => {
    const tank = plan.food === food ? tankKept(state, plan.tank, now) : undefined
    const due = tank && dueOf(state, plan, now)
    if (!due) return []
    const next = later(due.next, nightOf(now, tank))
    return [{ plan, next, end: addDays(next, horizon) }]
  })
  while (rounds.length > 0) {
    const [round] = rounds.toSorted((a, b) => byText(a.next, b.next))
    if (!round || round.next > round.end) return
    const { plan, next: night } = round
    const there = sources.filter((source) => (notBefore?.get(comesFrom(source)) ?? '') <= night)
    const [serving] = servings(there, plan.amount, night)
    yield { night, plan, serving }
    if (serving) {
      const used = afterwards(serving, night)
      sources = sources.map((source) => (source === serving.source ? used : source))
      round.next = addDays(night, plan.everyNights)
      continue
    }
    const [coming] = [...(notBefore?.values() ?? [])].filter((day) => day > night).sort()
    if (coming === undefined) rounds = rounds.filter((other) => other !== round)
    else round.next = onceThere(plan, coming)
  }
  return
}

/**
 * Doses a year that the plans for a food ask for: 182.5 for one tank fed every other night.
 * @param dose microlitres, where a larger dose is to count as more than one
 */
export const dosesPerYear = (state: Planned, food: FoodId, now: Moment, dose?: Microlitres): number =>
  plansAt(state, now).reduce(
    (sum, plan) => sum + (plan.food === food ? (365 / plan.everyNights) * (dose ? plan.amount / dose : 1) : 0),
    0,
  )
