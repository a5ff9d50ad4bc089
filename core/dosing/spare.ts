/** How many portions can be given away and no dose be the poorer for it before an order has had time to come. */

import type { Microlitres } from '../basis/amounts.ts'
import { byText } from '../basis/compare.ts'
import { addDays, type Day, earlier } from '../basis/days.ts'
import type { FoodId, LotId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import type { TankState } from '../tank/state.ts'
import { nightsUntil } from './due.ts'
import type { PlanMade } from './facts.ts'
import { lasts } from './lasts.ts'
import { orderingAt } from './ordering.ts'
import { afterwards, type Source, servings, sourcesOf } from './serve.ts'
import { type DosingState, plansAt } from './state.ts'

type State = FoodState & DosingState & TankState

export type SpareLot = {
  readonly lot: LotId
  readonly each: Microlitres
  readonly count: number
  /** How many of them would pass their last good day unused. */
  readonly unused: number
}
export type Spare = {
  /** What to give first, first. */
  readonly lots: readonly SpareLot[]
  /** Up to this day, not included, every dose stays as it is. */
  readonly until: Day
  /** The food ends before an order could come: only what would go unused is to spare. */
  readonly short: boolean
}

/**
 * Portions to spare: what would go unused first, then what keeps longest. Enough stays for every due night of every tank
 * from today through the days an order takes and those to spare: whoever orders on the day she gives never runs short.
 * Where the food ends sooner than that, it ends no sooner for what is given. All of it where no plan feeds this food.
 * Nothing past its day, thawed or set aside is ever among it.
 */
export const spareOf = (state: State, food: FoodId, today: Day, now: Moment): Spare => {
  const { leadDays, cushionDays } = orderingAt(state, now)
  const wanted = addDays(today, leadDays + cushionDays)
  const lasting = lasts(state, food, now)
  const until = lasting ? earlier(wanted, lasting.bareNight) : wanted
  const short = until < wanted
  const sources = sourcesOf(state, food, now)
  const unused = new Map(
    (lasting?.wasted ?? []).flatMap((source) => (source.from === 'portions' ? [[source.lot, source.left]] : [])),
  )
  const giveable = sources
    .filter((source) => source.from === 'portions')
    .filter(({ lot, lastGood }) => (lastGood ?? today) >= today && state.lots.get(lot)?.meltedOn === undefined)
    .map((source) => ({ ...source, unused: Math.min(source.left, unused.get(source.lot) ?? 0) }))
  const byKeeping = giveable.toSorted((a, b) => -byText(a.lastGood ?? '9', b.lastGood ?? '9'))
  // Sorting keeps what keeps longest first among them.
  const inOrder = byKeeping.toSorted((a, b) => Number(b.unused > 0) - Number(a.unused > 0))
  const doses = dosesBefore(state, food, until, now)
  const goal = metBy(doses, sources)
  const given = new Map<LotId, number>()
  const isEnough = (lot: LotId, count: number): boolean => {
    const met = metBy(doses, without(sources, new Map(given).set(lot, count)))
    return goal !== undefined && met !== undefined && met >= goal
  }
  const give = (lot: LotId, most: number) => {
    const already = given.get(lot) ?? 0
    given.set(
      lot,
      mostThat((count) => isEnough(lot, count), already, Math.max(already, most)),
    )
  }
  for (const { lot, unused: most } of inOrder) give(lot, most)
  if (!short) {
    for (const { lot, left } of byKeeping) give(lot, left)
    // Two sizes of one age change places by their numbers, and then one more may be no loss where one was before.
    const oneMore = () =>
      byKeeping.find(({ lot, left }) => (given.get(lot) ?? 0) < left && isEnough(lot, (given.get(lot) ?? 0) + 1))
    for (let found = oneMore(); found; found = oneMore()) given.set(found.lot, (given.get(found.lot) ?? 0) + 1)
  }
  return {
    lots: inOrder.flatMap(({ lot, each, unused: spoils }) => {
      const count = given.get(lot) ?? 0
      return count > 0 ? [{ lot, each, count, unused: Math.min(count, spoils) }] : []
    }),
    until,
    short,
  }
}

type Dose = { readonly night: Day; readonly plan: PlanMade }

/** The same rounds as how long the food lasts, not walked beyond that day. */
const dosesBefore = (state: State, food: FoodId, until: Day, now: Moment): readonly Dose[] =>
  plansAt(state, now)
    .filter((plan) => plan.food === food)
    .flatMap((plan) => nightsUntil(state, plan, addDays(until, -1), now).map((night) => ({ night, plan })))
    // Of one night, in the order Tonight lists them: sorting keeps it.
    .sort((a, b) => byText(a.night, b.night))

/** Microlitres of what the plans ask for that a stock gives; undefined where a night finds nothing. */
const metBy = (doses: readonly Dose[], stock: readonly Source[]): number | undefined => {
  let sources = stock
  let met = 0
  for (const { night, plan } of doses) {
    const [serving] = servings(sources, plan.amount, night)
    if (!serving) return undefined
    const used = afterwards(serving, night)
    sources = sources.map((source) => (source === serving.source ? used : source))
    met += Math.min(serving.amount, plan.amount)
  }
  return met
}

const without = (sources: readonly Source[], given: ReadonlyMap<LotId, number>): readonly Source[] =>
  sources.flatMap((source) => {
    const left = source.from === 'portions' ? source.left - (given.get(source.lot) ?? 0) : source.left
    return left > 0 ? [{ ...source, left }] : []
  })

/** The largest count up to the most that holds, from one that does; what holds for some holds for fewer. */
const mostThat = (holds: (count: number) => boolean, from: number, most: number): number => {
  let [low, high] = [from, most]
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (holds(middle)) low = middle
    else high = middle - 1
  }
  return low
}
