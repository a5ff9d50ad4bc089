/** What may be asked of dosing. A plan can be refused; what has happened can always be recorded, if need be once confirmed. */
import type { Microlitres } from '../basis/amounts.ts'
import { type Day, daysBetween } from '../basis/days.ts'
import type { FoodId, PlanId, TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { BottleOpened } from '../food/facts.ts'
import { bottleLastGood, type FoodState, foodAt, liquidLeft, lotLastGood } from '../food/state.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import { nightOf, type TankState, tankAt } from '../tank/state.ts'
import { absurdRatio, bandOf, quietRatio } from './band.ts'
import type { DoseGiven, NightSkipped, NightUnknown, PlanMade, Taken } from './facts.ts'
import { type DosingState, marksOf, type NightMark, planAt } from './state.ts'

type State = TankState & FoodState & DosingState

export type PlanAsked = {
  readonly plan: PlanId
  readonly tank: TankId
  readonly food: FoodId
  readonly amount: Microlitres
  readonly everyNights: number
  readonly firstNight: Day
  /** She was told it is above the range, and keeps it. */
  readonly sure?: boolean
}
export type PlanRefusal =
  | { readonly why: 'noSuchTank' | 'noSuchFood' | 'noAmount' }
  | { readonly why: 'nightsOutOfRange'; readonly asked: number }
  /** `top` in microlitres. Asked once; a dose that follows the plan is never asked about again. */
  | { readonly why: 'aboveRange'; readonly ratio: number; readonly top: number }
  | { readonly why: 'farAboveRange'; readonly ratio: number; readonly top: number }

/** Nights between doses are whole, 1 to 14. */
export const makePlan = (state: State, asked: PlanAsked, now: Moment): Result<readonly [PlanMade], PlanRefusal> => {
  const tank = tankAt(state, asked.tank, now)
  const food = foodAt(state, asked.food, now)
  if (!tank) return refuse({ why: 'noSuchTank' })
  if (!food) return refuse({ why: 'noSuchFood' })
  if (asked.amount <= 0) return refuse({ why: 'noAmount' })
  if (!Number.isInteger(asked.everyNights) || asked.everyNights < 1 || asked.everyNights > 14)
    return refuse({ why: 'nightsOutOfRange', asked: asked.everyNights })
  const top = bandOf(tank, food)?.high
  if (top !== undefined) {
    const ratio = asked.amount / top
    if (ratio > absurdRatio) return refuse({ why: 'farAboveRange', ratio, top })
    if (ratio > quietRatio && !asked.sure) return refuse({ why: 'aboveRange', ratio, top })
  }
  const { sure: _, ...plan } = asked
  return ok([{ kind: 'planMade', at: now, ...plan }])
}

export type DoseAsked = {
  readonly plan: PlanId
  readonly taken: readonly Taken[]
  /** What reached the tank. */
  readonly amount: Microlitres
  readonly at: Moment
  /** She was asked about it and it is so. */
  readonly sure?: boolean
  /** There is a dose for this night already, and this is another. */
  readonly again?: boolean
  readonly why?: string
}
export type DoseRefusal =
  | { readonly why: 'noSuchPlan' | 'nothingGiven' | 'wholePortions' }
  | { readonly why: 'notYet'; readonly at: Moment }
  /** The same touch twice on a wet screen. */
  | { readonly why: 'justRecorded'; readonly mark: NightMark }
  | { readonly why: 'alreadyGiven'; readonly night: Day; readonly mark: NightMark }
  | { readonly why: 'aboveRange' | 'farAboveRange'; readonly ratio: number; readonly top: number }
  | { readonly why: 'moreThanBottleHolds'; readonly holds: Microlitres; readonly asked: Microlitres }
  | { readonly why: 'pastItsDay'; readonly lastGood: Day; readonly days: number }

/** Two touches within this are one. */
export const doubleTouch = 5_000

const pastDay = (state: State, food: FoodId, taken: Taken, night: Day, now: Moment): Day | undefined => {
  const described = foodAt(state, food, now)
  if (!described) return undefined
  const lot = taken.from === 'portions' ? state.lots.get(taken.lot) : undefined
  const bottle = taken.from === 'bottle' ? state.bottles.get(taken.bottle) : undefined
  const lastGood = lot ? lotLastGood(lot, described) : bottle && bottleLastGood(bottle, described)
  return lastGood !== undefined && lastGood < night ? lastGood : undefined
}

/** A sealed bottle that a dose came from is open now. */
const openings = (state: State, taken: readonly Taken[], night: Day, at: Moment): BottleOpened[] =>
  taken.flatMap((part): BottleOpened[] => {
    const bottle = part.from === 'bottle' ? state.bottles.get(part.bottle) : undefined
    return bottle && bottle.openedOn === undefined
      ? [{ kind: 'bottleOpened', at, bottle: bottle.id, openedOn: night }]
      : []
  })

/**
 * Records a dose. Its night is that of the tank whose plan it follows, by the wall clock there. A dose that keeps to the
 * plan is never questioned; a larger one, an emptier bottle or a past day is confirmed once with `sure`.
 */
export const giveDose = (
  state: State,
  asked: DoseAsked,
  now: Moment,
): Result<readonly (DoseGiven | BottleOpened)[], DoseRefusal> => {
  const plan = planAt(state, asked.plan, now)
  const tank = plan && tankAt(state, plan.tank, asked.at)
  const food = plan && foodAt(state, plan.food, asked.at)
  if (!plan || !tank || !food) return refuse({ why: 'noSuchPlan' })
  if (asked.amount <= 0) return refuse({ why: 'nothingGiven' })
  if (asked.taken.some((part) => part.from === 'portions' && !(Number.isInteger(part.count) && part.count > 0)))
    return refuse({ why: 'wholePortions' })
  if (asked.at > now + clockGrace) return refuse({ why: 'notYet', at: asked.at })
  const night = nightOf(asked.at, tank)

  const before = marksOf(state, plan.plan, night).findLast(({ what }) => what === 'given')
  if (before && !asked.again) {
    const touch = Math.abs(asked.at - before.at) < doubleTouch
    return refuse(touch ? { why: 'justRecorded', mark: before } : { why: 'alreadyGiven', night, mark: before })
  }
  if (!asked.sure) {
    const top = bandOf(tank, food)?.high
    const ratio = top === undefined ? 0 : asked.amount / top
    if (top !== undefined && asked.amount > plan.amount && ratio > quietRatio)
      return refuse({ why: ratio > absurdRatio ? 'farAboveRange' : 'aboveRange', ratio, top })
    for (const part of asked.taken) {
      const bottle = part.from === 'bottle' ? state.bottles.get(part.bottle) : undefined
      if (part.from === 'bottle' && bottle && part.amount > liquidLeft(bottle))
        return refuse({ why: 'moreThanBottleHolds', holds: liquidLeft(bottle), asked: part.amount })
      const lastGood = pastDay(state, plan.food, part, night, now)
      if (lastGood) return refuse({ why: 'pastItsDay', lastGood, days: daysBetween(lastGood, night) })
    }
  }
  return ok([
    ...openings(state, asked.taken, night, asked.at),
    {
      kind: 'doseGiven',
      at: asked.at,
      food: plan.food,
      served: [{ tank: plan.tank, plan: plan.plan, night, amount: asked.amount }],
      taken: asked.taken,
      ...(asked.why ? { why: asked.why } : {}),
    },
  ])
}

export type NightRefusal =
  | { readonly why: 'noSuchPlan' }
  | { readonly why: 'alreadyGiven'; readonly night: Day; readonly mark: NightMark }

type NightAsked = { readonly plan: PlanId; readonly why?: string }
type NightMarked = Omit<NightSkipped, 'kind'>

const ofTonight = (state: State, asked: NightAsked, now: Moment): Result<NightMarked, NightRefusal> => {
  const plan = planAt(state, asked.plan, now)
  const tank = plan && tankAt(state, plan.tank, now)
  if (!plan || !tank) return refuse({ why: 'noSuchPlan' })
  const night = nightOf(now, tank)
  const given = marksOf(state, plan.plan, night).find(({ what }) => what === 'given')
  if (given) return refuse({ why: 'alreadyGiven', night, mark: given })
  const why = asked.why ? { why: asked.why } : {}
  return ok({ at: now, tank: plan.tank, food: plan.food, plan: plan.plan, night, ...why })
}

/** Chosen not to, tonight: the round goes on. */
export const skipNight = (
  state: State,
  asked: NightAsked,
  now: Moment,
): Result<readonly [NightSkipped], NightRefusal> => {
  const night = ofTonight(state, asked, now)
  return night.ok ? ok([{ kind: 'nightSkipped', ...night.value }]) : night
}

/** She cannot remember: kept as just that. A later count may settle it. */
export const doNotKnow = (
  state: State,
  asked: NightAsked,
  now: Moment,
): Result<readonly [NightUnknown], NightRefusal> => {
  const night = ofTonight(state, asked, now)
  return night.ok ? ok([{ kind: 'nightUnknown', ...night.value }]) : night
}
