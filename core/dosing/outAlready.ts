/** Why a dose for nights gone by took less than it gave: what was seen by eye since stood without it. */
import type { Moment } from '../basis/zones.ts'
import type { Bottle, FoodState, Lot } from '../food/state.ts'
import { lampOut } from '../tank/lamp.ts'
import { nightOf, type TankState, tankAt } from '../tank/state.ts'
import { portionsPerDose } from './cover.ts'
import type { ServedAny, Taken } from './facts.ts'

/** Counted, measured, or put on record as it stood, after a moment. */
export const seenAfter = (thing: Bottle | Lot, at: Moment): boolean => {
  const told = 'recorded' in thing ? thing.recorded : thing.made
  const asItStood = told.kind === 'portionsOnHand' || (told.kind === 'bottleRecorded' && told.about)
  return (asItStood && told.at > at) || thing.observations.some((seen) => seen.at > at)
}

type Given = {
  readonly at: Moment
  readonly food: string
  readonly served: readonly ServedAny[]
  readonly taken: readonly Taken[]
}

/** True where a count between those nights and their answer explains what was not taken. */
export const outAlready = (state: TankState & FoodState, { at, food, served, taken }: Given): boolean => {
  if (!tookLess(state, served, taken)) return false
  const things = [...state.lots.values(), ...state.bottles.values()].filter(
    (thing) => ('recorded' in thing ? thing.recorded : thing.made).food === food,
  )
  return served.some(({ tank: id, night }) => {
    const tank = tankAt(state, id, at)
    return (
      tank && night < nightOf(at, tank) && things.some((thing) => seenBetween(thing, lampOut(state, tank, night), at))
    )
  })
}

const seenBetween = (thing: Bottle | Lot, from: Moment, to: Moment): boolean => {
  const told = 'recorded' in thing ? thing.recorded : thing.made
  const observations = thing.observations.filter((seen) => seen.at <= to)
  return told.at <= to && seenAfter({ ...thing, observations }, from)
}

const tookLess = ({ lots }: FoodState, served: readonly ServedAny[], taken: readonly Taken[]): boolean => {
  const [first] = taken
  if (!first) return true
  // Less than a portion takes one all the same.
  const each = first.from === 'portions' ? lots.get(first.lot)?.made.each : undefined
  const inAll = each
    ? served.reduce((sum, { amount }) => sum + portionsPerDose(amount, each), 0)
    : served.reduce((sum, { amount }) => sum + amount, 0)
  const took = taken.reduce((sum, part) => sum + (part.from === 'portions' && each ? part.count : amountOf(part)), 0)
  return took < inAll
}

const amountOf = (part: Taken): number => (part.from === 'bottle' ? part.amount : part.count)
