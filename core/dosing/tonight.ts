/** Tonight, plan by plan: what is due, what to take, what is done. */
import { type Day, daysBetween } from '../basis/days.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodDescribed } from '../food/facts.ts'
import { type FoodState, foodAt } from '../food/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lightsOutOf, nightOf, type TankState, tankAt } from '../tank/state.ts'
import { nextDue } from './due.ts'
import type { PlanMade } from './facts.ts'
import { type Serving, servings, sourcesOf } from './serve.ts'
import { type DosingState, lastNightBy, marksOf, type NightMark, plansAt } from './state.ts'

export type TonightState =
  /** `since` is an earlier night that nothing is known of: give the usual amount, never more. */
  | { readonly is: 'due'; readonly since: Day | undefined }
  | { readonly is: 'done'; readonly marks: readonly NightMark[]; readonly next: Day }
  | { readonly is: 'skipped' | 'unknown'; readonly mark: NightMark; readonly next: Day }
  | { readonly is: 'resting'; readonly next: Day; readonly lastNight: Day | undefined }

export type TonightLine = {
  readonly plan: PlanMade
  readonly tank: TankDescribed
  readonly food: FoodDescribed
  /** The night "now" belongs to, at the tank. */
  readonly night: Day
  readonly lightsOut: Moment
  readonly dark: boolean
  readonly state: TonightState
  /** What to take if a dose is given now, best first; empty when nothing usable is left. */
  readonly servings: readonly Serving[]
}

const stateOf = (state: DosingState, plan: PlanMade, night: Day): TonightState => {
  const marks = marksOf(state, plan.plan, night)
  const lastNight = lastNightBy(state, plan.plan, night)
  const next = nextDue(plan, lastNight)
  if (marks.some(({ what }) => what === 'given')) return { is: 'done', marks, next }
  const mark = marks.at(-1)
  if (mark && mark.what !== 'given') return { is: mark.what, mark, next }
  if (next > night) return { is: 'resting', next, lastNight }
  return { is: 'due', since: daysBetween(next, night) > 0 ? next : undefined }
}

/** Lamps in this trade burn 8 to 12 hours a day; nobody needs a dark screen at breakfast. Our own judgement. */
const darkHours = 8

const rank: Record<TonightState['is'], number> = { due: 0, done: 1, skipped: 1, unknown: 1, resting: 2 }

/** One line a plan, what is due first. */
export const tonight = (state: TankState & FoodState & DosingState, now: Moment): readonly TonightLine[] =>
  plansAt(state, now)
    .flatMap((plan): TonightLine[] => {
      const tank = tankAt(state, plan.tank, now)
      const food = foodAt(state, plan.food, now)
      if (!tank || !food) return []
      const night = nightOf(now, tank)
      const lightsOut = lightsOutOf(night, tank)
      return [
        {
          plan,
          tank,
          food,
          night,
          lightsOut,
          dark: now >= lightsOut && now < lightsOut + darkHours * 3_600_000,
          state: stateOf(state, plan, night),
          servings: servings(sourcesOf(state, plan.food, now), plan.amount, night),
        },
      ]
    })
    .sort((a, b) => rank[a.state.is] - rank[b.state.is])
