/** Making a plan, holding it, ending it, and choosing another night. */
import type { Microlitres } from '../basis/amounts.ts'
import { addDays, type Day } from '../basis/days.ts'
import type { FoodId, PlanId, TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import { type FoodState, foodAt } from '../food/state.ts'
import { nightOf, type TankState, tankAt, tankKept } from '../tank/state.ts'
import { absurdRatio, bandOf, quietRatio } from './band.ts'
import type { NextNightChosen, PlanEnded, PlanHeld, PlanMade } from './facts.ts'
import { type DosingState, planAt, plansAt } from './state.ts'

type State = TankState & FoodState & DosingState

export type PlanAsked = {
  readonly plan: PlanId
  readonly tank: TankId
  readonly food: FoodId
  readonly amount: Microlitres
  readonly everyNights: number
  readonly firstNight: Day
  readonly rhythm?: PlanMade['rhythm']
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
  const tank = tankKept(state, asked.tank, now)
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
  const { sure: _, rhythm, ...plan } = asked
  return ok([{ kind: 'planMade', at: now, ...plan, ...(rhythm ? { rhythm } : {}) }])
}

const goesOn = (state: DosingState & TankState, plan: PlanId, now: Moment): PlanMade | undefined =>
  plansAt(state, now).find((going) => going.plan === plan)

/** Nothing more is due of it; what was given by it stands. */
export const endPlan = (
  state: DosingState & TankState,
  { plan, why }: { readonly plan: PlanId; readonly why?: string },
  now: Moment,
): Result<readonly [PlanEnded], { readonly why: 'noSuchPlan' }> =>
  goesOn(state, plan, now)
    ? ok([{ kind: 'planEnded', at: now, plan, ...(why ? { why } : {}) }])
    : refuse({ why: 'noSuchPlan' })

/** A hold longer than this is an end: nobody remembers it. Our own judgement. */
const longestHold = 366

export type HoldRefusal =
  | { readonly why: 'noSuchPlan' }
  | { readonly why: 'holdInThePast'; readonly until: Day }
  | { readonly why: 'holdTooLong'; readonly until: Day; readonly most: number }

/**
 * Puts a plan on hold.
 * @param until the first night it may be due again; tonight ends a hold
 */
export const holdPlan = (
  state: State,
  { plan: id, until, why }: { readonly plan: PlanId; readonly until: Day; readonly why?: string },
  now: Moment,
): Result<readonly [PlanHeld], HoldRefusal> => {
  const plan = goesOn(state, id, now)
  const tank = plan && tankAt(state, plan.tank, now)
  if (!tank) return refuse({ why: 'noSuchPlan' })
  const tonight = nightOf(now, tank)
  if (until < tonight) return refuse({ why: 'holdInThePast', until })
  if (until > addDays(tonight, longestHold)) return refuse({ why: 'holdTooLong', until, most: longestHold })
  return ok([{ kind: 'planHeld', at: now, plan: id, until, ...(why ? { why } : {}) }])
}

export type ChoiceRefusal = { readonly why: 'noSuchPlan' } | { readonly why: 'notAfter'; readonly next: Day }

/** Which night is next after a night that was too much: the usual one, or the later one that is suggested. */
export const chooseNext = (
  state: DosingState,
  asked: { readonly plan: PlanId; readonly after: Day; readonly next: Day },
  now: Moment,
): Result<readonly [NextNightChosen], ChoiceRefusal> => {
  if (!planAt(state, asked.plan, now)) return refuse({ why: 'noSuchPlan' })
  if (asked.next <= asked.after) return refuse({ why: 'notAfter', next: asked.next })
  return ok([{ kind: 'nextNightChosen', at: now, ...asked }])
}
