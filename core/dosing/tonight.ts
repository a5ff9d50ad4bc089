/** Tonight, plan by plan: what is due, what to take, what is done. */
import type { Day } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodDescribed } from '../food/facts.ts'
import { type FoodState, foodAt } from '../food/state.ts'
import { gather } from '../ledger/gather.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lampOut } from '../tank/lamp.ts'
import { nightOf, type TankState, tankKept } from '../tank/state.ts'
import { type Due, dueOf, type Overfed } from './due.ts'
import type { PlanMade } from './facts.ts'
import { openNights } from './openNights.ts'
import { type Serving, servings, sourcesOf } from './serve.ts'
import { type DosingState, marksOf, type NightMark, plansAt } from './state.ts'

export type TonightState =
  /**
   * `since` is an earlier night that nothing is known of: give the usual amount, never more. `heldUntil` is the night a
   * hold ended on, while nothing has been given after it.
   */
  | { readonly is: 'due'; readonly since: Day | undefined; readonly heldUntil: Day | undefined }
  /** `overfed`: more than the label's range reached the tank, and the next night waits unless she chooses otherwise. */
  | {
      readonly is: 'done'
      readonly marks: readonly NightMark[]
      readonly next: Day
      readonly overfed: Overfed | undefined
    }
  | { readonly is: 'skipped' | 'unknown'; readonly mark: NightMark; readonly next: Day }
  | { readonly is: 'held'; readonly until: Day; readonly next: Day }
  | {
      readonly is: 'resting'
      readonly next: Day
      readonly lastNight: Day | undefined
      readonly overfed: Overfed | undefined
    }

export type TonightLine = {
  readonly plan: PlanMade
  readonly tank: TankDescribed
  readonly food: FoodDescribed
  /** The night "now" belongs to, at the tank. */
  readonly night: Day
  readonly lightsOut: Moment
  readonly dark: boolean
  readonly state: TonightState
  /** Dose nights gone by that nothing was written down for, oldest first. */
  readonly unlogged: readonly Day[]
  /** What to take if a dose is given now, best first; empty when nothing usable is left. */
  readonly servings: readonly Serving[]
}

const stateOf = (
  { next, lastNight, overfed, heldUntil }: Due,
  marks: readonly NightMark[],
  unlogged: readonly Day[],
  night: Day,
): TonightState => {
  if (marks.some(({ what }) => what === 'given')) return { is: 'done', marks, next, overfed }
  const mark = marks.at(-1)
  if (mark?.what === 'skipped' || mark?.what === 'unknown') return { is: mark.what, mark, next }
  if (heldUntil !== undefined && heldUntil > night) return { is: 'held', until: heldUntil, next }
  if (next > night) return { is: 'resting', next, lastNight, overfed }
  // Nights from before the last one that is known made nothing late.
  const since = unlogged.find((open) => lastNight === undefined || open > lastNight)
  return { is: 'due', since, heldUntil }
}

/** Lamps in this trade burn 8 to 12 hours a day; nobody needs a dark screen at breakfast. Our own judgement. */
const darkHours = 8

const rank: Record<TonightState['is'], number> = {
  due: 0,
  done: 1,
  skipped: 1,
  unknown: 1,
  resting: 2,
  held: 2,
}

/** One line a plan, what is due first. */
export const tonight = (state: TankState & FoodState & DosingState, now: Moment): readonly TonightLine[] =>
  plansAt(state, now)
    .flatMap((plan): TonightLine[] => {
      const tank = tankKept(state, plan.tank, now)
      const food = foodAt(state, plan.food, now)
      const due = dueOf(state, plan, now)
      if (!tank || !food || !due) return []
      const night = nightOf(now, tank)
      const unlogged = openNights(state, plan, now)
      const lightsOut = lampOut(state, tank, night)
      return [
        {
          plan,
          tank,
          food,
          night,
          lightsOut,
          dark: now >= lightsOut && now < lightsOut + darkHours * 3_600_000,
          state: stateOf(due, marksOf(state, plan.plan, night), unlogged, night),
          unlogged,
          servings: servings(sourcesOf(state, plan.food, now), plan.amount, night),
        },
      ]
    })
    .sort((a, b) => rank[a.state.is] - rank[b.state.is])

export type Together = { readonly tank: TankDescribed; readonly lines: readonly TonightLine[]; readonly amount: number }

/** Tanks for which two foods or more fall on this one night, with what they come to. */
export const together = (lines: readonly TonightLine[]): readonly Together[] => {
  const byTank = new Map<TankId, TonightLine[]>()
  for (const line of lines) if (line.state.is === 'due') gather(byTank, line.tank.tank, line)
  return [...byTank.values()].flatMap((due) => {
    const [first, second] = due
    return first && second
      ? [{ tank: first.tank, lines: due, amount: due.reduce((sum, { plan }) => sum + plan.amount, 0) }]
      : []
  })
}
