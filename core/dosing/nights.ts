/** A night without a dose: skipped on purpose, or nobody remembers. */
import type { Day } from '../basis/days.ts'
import type { PlanId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import { nightOf, type TankState, tankAt } from '../tank/state.ts'
import type { NightSkipped, NightUnknown } from './facts.ts'
import { type DosingState, marksOf, type NightMark, planAt } from './state.ts'

type State = TankState & DosingState

export type NightRefusal =
  | { readonly why: 'noSuchPlan' }
  | { readonly why: 'nightToCome'; readonly night: Day }
  | { readonly why: 'alreadyGiven'; readonly night: Day; readonly mark: NightMark }

type NightAsked = {
  readonly plan: PlanId
  /** Absent: tonight. */
  readonly night?: Day
  readonly why?: string
}
type NightMarked = Omit<NightSkipped, 'kind'>

const ofNight = (state: State, asked: NightAsked, now: Moment): Result<NightMarked, NightRefusal> => {
  const plan = planAt(state, asked.plan, now)
  const tank = plan && tankAt(state, plan.tank, now)
  if (!plan || !tank) return refuse({ why: 'noSuchPlan' })
  const tonight = nightOf(now, tank)
  const night = asked.night ?? tonight
  if (night > tonight) return refuse({ why: 'nightToCome', night })
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
  const night = ofNight(state, asked, now)
  return night.ok ? ok([{ kind: 'nightSkipped', ...night.value }]) : night
}

/** She cannot remember: kept as just that. A later count may settle it. */
export const doNotKnow = (
  state: State,
  asked: NightAsked,
  now: Moment,
): Result<readonly [NightUnknown], NightRefusal> => {
  const night = ofNight(state, asked, now)
  return night.ok ? ok([{ kind: 'nightUnknown', ...night.value }]) : night
}
