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
  /** With fixed nights also the night they are counted from. */
  readonly firstNight: Day
  /** Absent: so many nights after the last dose. An app that does not know it gives no more often, only on other nights. */
  readonly rhythm?: 'fixedNights'
}

/** Nothing more is due of it, until it is made again. */
export type PlanEnded = {
  readonly kind: 'planEnded'
  readonly at: Moment
  readonly plan: PlanId
  readonly why?: string
}

/** A whole snapshot: no night before `until` is due. One that has come ends the hold. */
export type PlanHeld = {
  readonly kind: 'planHeld'
  readonly at: Moment
  readonly plan: PlanId
  readonly until: Day
  readonly why?: string
}

/** Which night is next, said by her of one night: it holds while that is the last one anything is known of. */
export type NextNightChosen = {
  readonly kind: 'nextNightChosen'
  readonly at: Moment
  readonly plan: PlanId
  readonly after: Day
  readonly next: Day
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
  /** What it was taken from was set aside, and she said so. An app that does not know it tells of the dose alone. */
  readonly fromAside?: true
  readonly why?: string
}

type Given = Omit<DoseGiven, 'kind' | 'served'>
export type ServedAny = Omit<Served, 'plan'> & { readonly plan?: PlanId }
/** A dose that reached a tank without a plan for this food, alone or beside tanks that have one. */
export type DoseGivenOffPlan = Given & {
  readonly kind: 'doseGivenOffPlan'
  readonly served: readonly ServedAny[]
}
/**
 * A dose that cannot have come from where it is said to: more than the bottle holds by the book. Its night is taken as
 * given, since less is safe, but nothing leaves the stock until she has said how it was.
 */
export type DoseSetAside = Given & { readonly kind: 'doseSetAside'; readonly served: readonly ServedAny[] }

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

/** Nothing reached the tank on the dose nights of a range. The round waited, so tonight may be due. */
export type NightsMissed = {
  readonly kind: 'nightsMissed'
  readonly at: Moment
  readonly plan: PlanId
  readonly tank: TankId
  readonly food: FoodId
  readonly from: Day
  readonly to: Day
  readonly why?: string
}

/**
 * Dose nights nobody wrote down, settled by counting: what is gone was used in the range, on nights that are not invented.
 * One act with the count, and like it an observation.
 */
export type NightsCounted = {
  readonly kind: 'nightsCounted'
  readonly at: Moment
  readonly food: FoodId
  readonly rounds: readonly {
    readonly plan: PlanId
    readonly tank: TankId
    readonly from: Day
    readonly to: Day
  }[]
  /** Each with the book figure she saw. */
  readonly lots: readonly {
    readonly lot: LotId
    readonly counted: number
    readonly book: number
  }[]
  /** What that comes to; none where nothing is gone. */
  readonly doses: number
  readonly amount: Microlitres
}

export type DosingFact =
  | PlanMade
  | PlanEnded
  | PlanHeld
  | NextNightChosen
  | DoseGiven
  | DoseGivenOffPlan
  | DoseSetAside
  | NightSkipped
  | NightUnknown
  | NightsMissed
  | NightsCounted
