/** Which bottles want a shake. It is a kindness to the food, never a debt: nothing here says "overdue". */
import type { Moment } from '../basis/zones.ts'
import type { FoodDescribed } from './facts.ts'
import { type Bottle, type FoodState, foodAt, usableLiquid } from './state.ts'

export type Shake = {
  readonly bottle: Bottle
  readonly food: FoodDescribed
  /** Whole hours since the last shake known of, or since it was recorded. */
  readonly hours: number
  readonly shaken: boolean
}
/** From here on: shake long, then look. Common practice, no source. */
export const longUnshakenHours = 48

/** Bottles with liquid left whose food settles, with those shaken lately marked so. */
export const shakes = (state: FoodState, now: Moment): readonly Shake[] =>
  [...state.bottles.values()].flatMap((bottle) => {
    const food = foodAt(state, bottle.recorded.food, now)
    if (!food?.shakeHours || usableLiquid(bottle, food) <= 0) return []
    const hours = Math.max(0, Math.floor((now - (bottle.shakenAt ?? bottle.recorded.at)) / 3_600_000))
    // A daily habit drifts by an hour or two; asking again at 23 h 50 would be pedantry, waiting until 24 h 10 a missed evening.
    const shaken = bottle.shakenAt !== undefined && hours < food.shakeHours * 0.75
    return [{ bottle, food, hours, shaken }]
  })
