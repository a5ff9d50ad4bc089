/** Ordering food, how long that takes, and the days nobody is at home. */
import { type Day, daysBetween } from '../basis/days.ts'
import { type Here, momentOn, today } from '../basis/here.ts'
import type { FoodId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { AnyFact, EntryStruckOut } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import type { DaysAway, FoodOrdered, OrderingDescribed } from './facts.ts'
import type { FoodState } from './state.ts'

type Told = FoodState & { readonly history: History<AnyFact> }

/** As much as the ledger reads back; more is a slip of the finger. */
export const mostOrderDays = 365

export type OrderRefusal =
  | { readonly why: 'noSuchFood' }
  | { readonly why: 'orderedNotYet'; readonly on: Day; readonly today: Day }
  | { readonly why: 'comesBeforeOrdered'; readonly on: Day; readonly comes: Day }
  | { readonly why: 'comesFarOff'; readonly comes: Day }

export const recordOrder = (
  state: FoodState,
  { food, on, comes }: { readonly food: FoodId; readonly on: Day; readonly comes?: Day | undefined },
  here: Here,
): Result<readonly [FoodOrdered], OrderRefusal> => {
  if (!state.foods.has(food)) return refuse({ why: 'noSuchFood' })
  if (on > today(here)) return refuse({ why: 'orderedNotYet', on, today: today(here) })
  if (comes !== undefined && comes < on) return refuse({ why: 'comesBeforeOrdered', on, comes })
  if (comes !== undefined && daysBetween(on, comes) > mostOrderDays) return refuse({ why: 'comesFarOff', comes })
  return ok([{ kind: 'foodOrdered', at: momentOn(on, here), food, on, ...(comes ? { comes } : {}) }])
}

export type StillWaitingRefusal =
  | { readonly why: 'noSuchOrder' }
  | { readonly why: 'comesFarOff'; readonly comes: Day }
  | { readonly why: 'comesInThePast'; readonly comes: Day }

/** It has not come, and is to come on another day: said of the same order. */
export const stillWaiting = (
  { orders }: FoodState,
  { food, on, comes }: { readonly food: FoodId; readonly on: Day; readonly comes: Day },
  here: Here,
): Result<readonly [FoodOrdered], StillWaitingRefusal> => {
  if (!orders.get(food)?.some((order) => order.on === on)) return refuse({ why: 'noSuchOrder' })
  if (comes < today(here)) return refuse({ why: 'comesInThePast', comes })
  if (daysBetween(today(here), comes) > mostOrderDays) return refuse({ why: 'comesFarOff', comes })
  return ok([{ kind: 'foodOrdered', at: here.now, food, on, comes }])
}

/** All that was said of an order of that day is crossed out: it was never made. */
export const neverOrdered = (
  state: Told,
  { food, on }: { readonly food: FoodId; readonly on: Day },
  now: Moment,
): Result<readonly EntryStruckOut[], { readonly why: 'noSuchOrder' }> => {
  const struck = strike(state, now, (fact) => isOrder(fact) && fact.food === food && fact.on === on)
  return struck.length > 0 ? ok(struck) : refuse({ why: 'noSuchOrder' })
}

export type OrderingRefusal = {
  readonly why: 'daysOutOfRange'
  readonly which: readonly ('leadDays' | 'cushionDays')[]
  readonly most: number
}

/** @param asked whole days, 0 to 365 */
export const describeOrdering = (
  { leadDays, cushionDays }: { readonly leadDays: number; readonly cushionDays: number },
  now: Moment,
): Result<readonly [OrderingDescribed], OrderingRefusal> => {
  const isWrong = (days: number) => !Number.isInteger(days) || days < 0 || days > mostOrderDays
  const which = [
    ...(isWrong(leadDays) ? (['leadDays'] as const) : []),
    ...(isWrong(cushionDays) ? (['cushionDays'] as const) : []),
  ]
  if (which.length > 0) return refuse({ why: 'daysOutOfRange', which, most: mostOrderDays })
  return ok([{ kind: 'orderingDescribed', at: now, leadDays, cushionDays }])
}

export type AwayRefusal =
  | { readonly why: 'awayUpsideDown'; readonly from: Day; readonly to: Day }
  | { readonly why: 'awayTooLong'; readonly days: number; readonly most: number }
  | { readonly why: 'awayAlready' }

export const recordAway = (
  { daysAway }: FoodState,
  { from, to }: { readonly from: Day; readonly to: Day },
  now: Moment,
): Result<readonly [DaysAway], AwayRefusal> => {
  if (to < from) return refuse({ why: 'awayUpsideDown', from, to })
  const days = daysBetween(from, to) + 1
  if (days > mostOrderDays) return refuse({ why: 'awayTooLong', days, most: mostOrderDays })
  // The form sent twice: they are on the list.
  if (daysAway.some((known) => known.from === from && known.to === to)) return refuse({ why: 'awayAlready' })
  return ok([{ kind: 'daysAway', at: now, from, to }])
}

/** She is at home after all. */
export const notAway = (
  state: Told,
  { from, to }: { readonly from: Day; readonly to: Day },
  now: Moment,
): Result<readonly EntryStruckOut[], { readonly why: 'noSuchDays' }> => {
  const struck = strike(state, now, (fact) => isAway(fact) && fact.from === from && fact.to === to)
  return struck.length > 0 ? ok(struck) : refuse({ why: 'noSuchDays' })
}

const isOrder = (fact: AnyFact): fact is FoodOrdered => fact.kind === 'foodOrdered'
const isAway = (fact: AnyFact): fact is DaysAway => fact.kind === 'daysAway'

const strike = ({ history }: Told, now: Moment, isMeant: (fact: AnyFact) => boolean): readonly EntryStruckOut[] =>
  history.all
    .filter(({ id, fact }) => isMeant(fact) && !history.struck.has(id))
    .map(({ id }) => ({ kind: 'entryStruckOut', at: now, target: id, why: 'didNotHappen' }))
