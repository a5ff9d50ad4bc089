/** What is recorded of dosing: the plan, and what became of each night. */
import type { Microlitres } from '../basis/amounts.ts'
import type { Day } from '../basis/days.ts'
import type { BottleId, FoodId, LotId, PlanId, TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'

/** A whole snapshot. One plan feeds one food to one tank. */
export type PlanMade = {
  readonly kind: 'planMade'
  readonly at: Moment
  readonly plan: PlanId
  readonly tank: TankId
  readonly food: FoodId
  /** What one dose is. Frozen, it is as many whole portions as fit, at least one. */
  readonly amount: Microlitres
  readonly everyNights: number
  readonly firstNight: Day
}

/** The night a thing belongs to was reckoned when it was recorded, by the tank's wall clock; it is never reckoned again. */
export type Served = {
  readonly tank: TankId
  readonly plan: PlanId
  readonly night: Day
  /** What reached the tank. */
  readonly amount: Microlitres
}
export type Taken =
  | { readonly from: 'portions'; readonly lot: LotId; readonly count: number }
  | { readonly from: 'bottle'; readonly bottle: BottleId; readonly amount: Microlitres }

/** One act, however many tanks shared it. What was taken and what reached the water are two things. */
export type DoseGiven = {
  readonly kind: 'doseGiven'
  readonly at: Moment
  readonly food: FoodId
  readonly served: readonly Served[]
  readonly taken: readonly Taken[]
  readonly why?: string
}

type NightMarked = {
  readonly at: Moment
  readonly tank: TankId
  readonly food: FoodId
  readonly plan: PlanId
  readonly night: Day
  readonly why?: string
}
export type NightSkipped = NightMarked & { readonly kind: 'nightSkipped' }
/** She cannot remember. Less is safe: the round goes on as if it had been given. */
export type NightUnknown = NightMarked & { readonly kind: 'nightUnknown' }

export type DosingFact = PlanMade | DoseGiven | NightSkipped | NightUnknown
