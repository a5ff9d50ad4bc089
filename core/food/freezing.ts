/** Is there still time to freeze a bottle, and what it would make. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import { type Day, daysBetween } from '../basis/days.ts'
import { stepsToReach, stepsWithin } from '../basis/numbers.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { FoodDescribed } from './facts.ts'
import { type Bottle, bottleLastGood } from './state.ts'

export type FreezingWindow =
  | { readonly is: 'open'; readonly until: Day; readonly days: number }
  | { readonly is: 'over'; readonly since: Day }
  /** No life in the freezer is promised, or it is a block of ice, has thawed, or is set aside. */
  | { readonly is: 'notPromised' }
  | { readonly is: 'unknown' }

/** Freezing is in time on any day of the food's life in the fridge, the last one included. */
export const freezingWindow = (bottle: Bottle, food: FoodDescribed, today: Day): FreezingWindow => {
  if (!food.freezerLife || bottle.frozeOn !== undefined || bottle.aside) return { is: 'notPromised' }
  const until = bottleLastGood(bottle, food)
  if (!until) return { is: 'unknown' }
  const days = daysBetween(today, until)
  return days < 0 ? { is: 'over', since: until } : { is: 'open', until, days }
}

/**
 * The most a well may be filled, nine tenths: water grows by about 9 % on freezing (ice 916.72 against water
 * 999.84 kg/m³ at 0 °C, TEOS-10).
 */
export const mostPerWell = (well: Microlitres): Microlitres => microlitres(stepsWithin(well * 9, 10))

export type FreezeAsked = {
  readonly inBottle: Microlitres
  readonly residue: Microlitres
  readonly keepFresh: Microlitres
  readonly portion: Microlitres
  readonly well: Microlitres
  readonly wellsPerTray: number
  /** How many trays she has. Absent: as many as needed. */
  readonly traysOwned?: number
}
export type FreezePlan = {
  readonly portions: number
  readonly trays: number
  readonly rounds: number
  /** What is left over, less than one portion. */
  readonly over: Microlitres
}
export type FreezeRefusal =
  | { readonly why: 'wellTooSmall'; readonly most: Microlitres }
  | { readonly why: 'nothingToFreeze'; readonly available: number }
  | { readonly why: 'notWhole' }

/** Portions are metered by the pipette; the well only caps them. Refuses a portion above nine tenths of the well. */
export const planFreezing = (asked: FreezeAsked): Result<FreezePlan, FreezeRefusal> => {
  const { portion, well, wellsPerTray, traysOwned } = asked
  const whole = (count: number) => Number.isInteger(count) && count > 0
  if (!whole(wellsPerTray) || (traysOwned !== undefined && !whole(traysOwned)) || portion <= 0)
    return refuse({ why: 'notWhole' })
  if (portion > mostPerWell(well)) return refuse({ why: 'wellTooSmall', most: mostPerWell(well) })
  const available = asked.inBottle - asked.keepFresh - asked.residue
  const portions = stepsWithin(Math.max(0, available), portion)
  if (portions === 0) return refuse({ why: 'nothingToFreeze', available })
  const trays = stepsToReach(portions, wellsPerTray)
  return ok({
    portions,
    trays,
    rounds: traysOwned ? stepsToReach(trays, traysOwned) : 1,
    over: microlitres(available - portions * portion),
  })
}
