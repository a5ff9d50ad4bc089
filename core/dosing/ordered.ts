/** What has become of an order: on its way, or late enough to be asked about. */
import { addDays, type Day, daysBetween } from '../basis/days.ts'
import type { FoodId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodOrdered } from '../food/facts.ts'
import type { Bottle, FoodState } from '../food/state.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import { writtenAt } from '../ledger/stamp.ts'
import { orderingAt } from './ordering.ts'

export type Ordered = {
  readonly order: FoodOrdered
  /** When it is to come. */
  readonly comes: Day
  /** Nobody said so: it is the day of the order and the days one takes. */
  readonly about: boolean
  /** It should have been here some days ago. */
  readonly late: boolean
}

/** Days past the day it was to come, from which on it is asked about. Our own judgement. */
export const lateDays = 3

/** The order she waits for; undefined where there is none, or a bottle has come home since. Of several the last one speaks. */
export const orderedOf = (state: FoodState, food: FoodId, today: Day, now: Moment): Ordered | undefined => {
  const order = state.orders.get(food)?.findLast(({ at }) => at <= now + clockGrace)
  if (!order || [...state.bottles.values()].some((bottle) => cameAfter(bottle, order))) return undefined
  const comes = order.comes ?? addDays(order.on, orderingAt(state, now).leadDays)
  return { order, comes, about: order.comes === undefined, late: daysBetween(comes, today) >= lateDays }
}

/** Of a bottle that came on the very day of the order, the one written down later was there later. */
const cameAfter = ({ entry, recorded }: Bottle, { food, on, at }: FoodOrdered): boolean => {
  if (recorded.food !== food) return false
  const came = recorded.receivedOn ?? recorded.openedOn
  if (came === undefined) return recorded.at > at
  return came > on || (came === on && writtenAt(entry) > at)
}
