/** Plans, and what is known of each night. */
import { byText } from '../basis/compare.ts'
import { addDays, type Day } from '../basis/days.ts'
import type { FoodId, PlanId, TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { begunAgain, clockGrace, inForce, retiredAt } from '../ledger/snapshot.ts'
import { type Stamp, writtenBy } from '../ledger/stamp.ts'
import { type TankState, tankKept } from '../tank/state.ts'
import type { NextNightChosen, PlanEnded, PlanHeld, PlanMade } from './facts.ts'

export type NightMark = {
  /** 'counted': one of several nights in which, by a count, something was given. */
  readonly what: 'given' | 'skipped' | 'unknown' | 'counted'
  readonly entry: Stamp
  readonly at: Moment
  /** Microlitres that reached the tank; 0 unless given. */
  readonly amount: number
}
/** Night to what was recorded for it, in the order it happened. */
export type Nights = ReadonlyMap<Day, readonly NightMark[]>

/** Nights from and to, both included. */
export type NightRange = { readonly from: Day; readonly to: Day }

export type DosingState = {
  readonly plans: ReadonlyMap<PlanId, readonly PlanMade[]>
  readonly plansEnded: ReadonlyMap<PlanId, readonly Pick<PlanEnded, 'at'>[]>
  readonly holds: ReadonlyMap<PlanId, readonly PlanHeld[]>
  readonly choices: ReadonlyMap<PlanId, readonly NextNightChosen[]>
  /** Nights on which nothing was given, and she said so. */
  readonly missed: ReadonlyMap<PlanId, readonly NightRange[]>
  readonly nights: ReadonlyMap<PlanId, Nights>
  /** The last night of each plan that anything is known of. */
  readonly lastNight: ReadonlyMap<PlanId, Day>
}

/** The plan as it was made last, ended or not: what happened by it still has to be told. */
export const planAt = ({ plans }: DosingState, plan: PlanId, now: Moment): PlanMade | undefined =>
  inForce(plans.get(plan) ?? [], now)

/** The plans that go on. One that another phone made for a tank already taken down waits with the tank. */
export const plansAt = (state: DosingState & TankState, now: Moment): readonly PlanMade[] =>
  [...state.plans].flatMap(([plan, made]) => {
    const holding = inForce(made, now)
    if (!holding || retiredAt(state.plansEnded.get(plan), holding, now)) return []
    return tankKept(state, holding.tank, now) ? [holding] : []
  })

/** Since when it goes on: no night before that is owed. Made again after an end it begins anew, and so it does with its tank. */
export const goesOnSince = (state: DosingState & TankState, { plan, tank }: PlanMade, now: Moment): Moment => {
  const made = state.plans.get(plan)
  const again = begunAgain(state.plansEnded.get(plan), made, now) ?? made?.[0]?.at ?? now
  const tankAgain = begunAgain(state.tanksRetired.get(tank), state.tanks.get(tank), now)
  return tankAgain !== undefined && tankAgain > again ? tankAgain : again
}

/** Its holds, over or not; none from the future, and none from before the plan was made again. */
export const holdsOf = ({ holds, plans, plansEnded }: DosingState, plan: PlanId, now: Moment): readonly PlanHeld[] => {
  const said = holds.get(plan)?.filter(({ at }) => at <= now + clockGrace) ?? []
  if (said.length === 0) return said
  const again = begunAgain(plansEnded.get(plan), plans.get(plan), now)
  return again === undefined ? said : said.filter(({ at }) => at >= again)
}
/** The last of them. */
export const holdOf = (state: DosingState, plan: PlanId, now: Moment): PlanHeld | undefined =>
  holdsOf(state, plan, now).at(-1)
/** Until when nothing of it is due, if it is held. */
export const heldUntil = (state: DosingState, plan: PlanId, now: Moment): Day | undefined =>
  holdOf(state, plan, now)?.until

export const planFor = (
  state: DosingState & TankState,
  tank: TankId,
  food: FoodId,
  now: Moment,
): PlanMade | undefined => plansAt(state, now).find((plan) => plan.tank === tank && plan.food === food)

export const marksOf = ({ nights }: DosingState, plan: PlanId, night: Day): readonly NightMark[] =>
  nights.get(plan)?.get(night) ?? []

/**
 * The last night of a plan that anything is known of, one far ahead passed over: a phone whose clock ran a year fast must
 * not silence a year of nights. The night after tonight counts: clocks differ by minutes, and a tank may change its zone.
 */
export const lastNightBy = ({ lastNight, nights }: DosingState, plan: PlanId, tonight: Day): Day | undefined => {
  const limit = addDays(tonight, 1)
  const last = lastNight.get(plan)
  if (last === undefined || last <= limit) return last
  let latest: Day | undefined
  for (const night of nights.get(plan)?.keys() ?? [])
    if (night <= limit && (latest === undefined || night > latest)) latest = night
  return latest
}

/** The last night before this one that anything is known of. */
export const lastNightBefore = ({ nights }: DosingState, plan: PlanId, night: Day): Day | undefined => {
  let latest: Day | undefined
  for (const known of nights.get(plan)?.keys() ?? [])
    if (known < night && (latest === undefined || known > latest)) latest = known
  return latest
}

export const givenOf = (marks: readonly NightMark[]): readonly NightMark[] =>
  marks.filter(({ what }) => what === 'given')

/** Her last act, whatever time of the evening it was written down for: what is to be put right is mostly that. */
export const lastNoted = (marks: readonly NightMark[]): NightMark | undefined =>
  marks.toSorted((a, b) => byText(a.entry, b.entry)).at(-1)

/** Two or more doses for one night, written by different phones: logged twice, or given twice. */
export const fromTwoPhones = (marks: readonly NightMark[]): boolean =>
  new Set(givenOf(marks).map(({ entry }) => writtenBy(entry))).size > 1
