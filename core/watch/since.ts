/** What has happened in a tank since live bottles were poured into it. */
import { type Day, daysBetween } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import { type Moment, wallDay } from '../basis/zones.ts'
import type { DosingState } from '../dosing/state.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { Animals } from '../seeding/facts.ts'
import { planOfRun, type SeedingState } from '../seeding/state.ts'
import { nightOf, type TankState, tankAt } from '../tank/state.ts'
import type { KindSeen, WaterPlace } from './facts.ts'
import { type WatchState, watchedOf } from './state.ts'

export type Pour = {
  readonly at: Moment
  readonly night: Day
  readonly animals: readonly Animals[]
  readonly pours: readonly { readonly into: WaterPlace; readonly bottles: number }[]
}

/**
 * Every pour of a tank in the order it happened: those written down afterwards, and those of a night that was planned, one
 * for each run. None from the future.
 */
export const poursOf = (state: WatchState & SeedingState & TankState, tank: TankId, now: Moment): readonly Pour[] => {
  const written = watchedOf(state, tank).poured.map(({ fact }): Pour => fact)
  const poured = [...state.runs.values()].flatMap((run): readonly Pour[] => {
    const plan = planOfRun(run, now)
    const first = run.pours[0]
    if (!plan || plan.tank !== tank || !first) return []
    const described = tankAt(state, tank, now)
    const night = described ? nightOf(first.at, described) : plan.night
    const pours = run.pours.map(({ into, bottles }) => ({ into, bottles }))
    return [{ at: first.at, night, animals: plan.animals, pours }]
  })
  return [...written, ...poured].filter(({ at }) => at <= now + clockGrace).toSorted((a, b) => a.at - b.at)
}

export type KindKnown = {
  readonly form: string
  readonly first: KindSeen
  readonly last: KindSeen
  /** Tells of the last. */
  readonly entry: Stamp
  readonly times: number
}
/** Each kind that was recognised, by when it was first seen. What stayed unsure is none. */
export const kindsSeen = (state: WatchState, tank: TankId): readonly KindKnown[] => {
  const kinds = new Map<string, KindKnown>()
  for (const { entry, fact } of watchedOf(state, tank).seen) {
    if (fact.form === undefined) continue
    const known = kinds.get(fact.form)
    const times = (known?.times ?? 0) + 1
    kinds.set(fact.form, { form: fact.form, first: known?.first ?? fact, last: fact, entry, times })
  }
  return [...kinds.values()]
}

export type Since = {
  readonly first: Pour
  readonly last: Pour
  /** Whole days by the tank's calendar since the night of each. */
  readonly days: number
  readonly daysSinceLast: number
  /** Doses given by a plan since the night of the first pour. Nights of which only a count is known are not in it. */
  readonly feedings: number
  readonly kinds: number
}

/** "92 days since the pour, 41 feedings, three kinds seen." Undefined where nothing was poured yet. */
export const sinceThePour = (
  state: WatchState & SeedingState & TankState & DosingState,
  tank: TankId,
  now: Moment,
): Since | undefined => {
  const pours = poursOf(state, tank, now)
  const [first] = pours
  const last = pours.at(-1)
  const described = tankAt(state, tank, now)
  if (!first || !last || !described) return undefined
  const today = wallDay(now, described.zone)
  return {
    first,
    last,
    days: Math.max(0, daysBetween(first.night, today)),
    daysSinceLast: Math.max(0, daysBetween(last.night, today)),
    feedings: feedingsSince(state, tank, first.night).length,
    kinds: kindsSeen(state, tank).filter(({ last: seen }) => seen.at >= first.at).length,
  }
}

/** The nights of doses given to a tank since a night, in order; a night of two doses comes twice. */
export const feedingsSince = (state: DosingState, tank: TankId, since: Day): readonly Day[] => {
  const nights: Day[] = []
  for (const [plan, marks] of state.nights) {
    if (!state.plans.get(plan)?.some((made) => made.tank === tank)) continue
    for (const [night, all] of marks)
      if (night >= since) for (const { what } of all) if (what === 'given') nights.push(night)
  }
  return nights.sort()
}
