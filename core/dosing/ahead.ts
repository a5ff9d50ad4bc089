/** The coming dose nights of every tank that shares a food, and what each would be given: of stock that may be yet to come. */
import type { Microlitres } from '../basis/amounts.ts'
import { byText } from '../basis/compare.ts'
import { type Day, dayFromNumber, dayNumber } from '../basis/days.ts'
import type { BottleId, FoodId, LotId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import type { TankState } from '../tank/state.ts'
import { fixedFrom } from './due.ts'
import type { PlanMade } from './facts.ts'
import { afterwards, comesFrom, goesFirst, type Serving, type Source, servingFrom } from './serve.ts'
import { type DosingState, plansAt } from './state.ts'
import { horizon, roundsOf, soonest, type WalkRound } from './walk.ts'

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

/** Night by night, as `nightsFrom` goes on from what is due of a food now. */
export const nightsAhead = (
  state: Planned,
  food: FoodId,
  stock: Stock,
  now: Moment,
): Generator<NightAhead, undefined> => nightsFrom(roundsOf(state, food, now), stock)

/**
 * Night by night, of one night in the order Tonight lists them, until no tank can be fed any more. It serves as Tonight
 * does: first to expire, first out. Walked again for each place of a slider, so it steps numbers and puts nothing in order
 * that is so already.
 */
export function* nightsFrom(
  due: readonly WalkRound[],
  { sources, notBefore }: Stock,
): Generator<NightAhead, undefined> {
  const shelf = sources.toSorted(bySoonest)
  const isThere = (source: Source, night: Day) => (notBefore?.get(comesFrom(source)) ?? '') <= night
  let rounds = due.map(({ plan, next }) => ({ plan, next, end: next + horizon }))
  for (let round = soonest(rounds); round && round.next <= round.end; round = soonest(rounds)) {
    const { plan, next } = round
    const night = dayOf(next)
    while (shelf[0]?.lastGood !== undefined && shelf[0].lastGood < night) shelf.shift()
    const serving = bestOf(shelf, plan.amount, night, isThere)
    yield { night, plan, serving }
    if (serving) {
      takeFrom(shelf, serving, night)
      round.next += plan.everyNights
      continue
    }
    const [coming] = [...(notBefore?.values() ?? [])].filter((day) => day > night).sort()
    if (coming === undefined) rounds = rounds.filter((other) => other !== round)
    else round.next = dayNumber(onceThere(plan, coming))
  }
  return
}

const bySoonest = (a: Source, b: Source): number => byText(a.lastGood ?? '9999', b.lastGood ?? '9999')

/** Writing a day out takes longer than all else of a night, and each is asked for once a place of the slider. */
const written = new Map<number, Day>()
const dayOf = (number: number): Day => {
  const day = written.get(number) ?? dayFromNumber(number)
  written.set(number, day)
  return day
}

/** A dose that found nothing is given once there is something: it stays owed, unless the nights are fixed. */
const onceThere = (plan: PlanMade, there: Day): Day => (plan.rhythm === 'fixedNights' ? fixedFrom(plan, there) : there)

/** The first of `servings`: only what is good equally long is weighed against each other. */
const bestOf = (
  shelf: readonly Source[],
  amount: Microlitres,
  night: Day,
  isThere: (source: Source, night: Day) => boolean,
): Serving | undefined => {
  let best: Serving | undefined
  for (const source of shelf) {
    if (best && source.lastGood !== best.source.lastGood) break
    if (!isThere(source, night) || (best && goesFirst(best.source, source, amount) <= 0)) continue
    best = servingFrom(source, amount) ?? best
  }
  return best
}

const takeFrom = (shelf: Source[], serving: Serving, night: Day): void => {
  const used = afterwards(serving, night)
  shelf.splice(shelf.indexOf(serving.source), 1, ...(used.left > 0 ? [used] : []))
  // Opened, it may have to go sooner.
  if (used.lastGood !== serving.source.lastGood) shelf.sort(bySoonest)
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
