/**
 * What Tonight needs of the world, small enough to be read at once. It is derived and may be thrown away at any time: the
 * world itself follows a moment later, and whatever is asked waits for that.
 */
import { addDays, type Day } from '../basis/days.ts'
import type { PlanId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { lastNightBefore, lastNightBy, type NightMark, type Nights, planAt } from '../dosing/state.ts'
import { nightOf, tankAt } from '../tank/state.ts'
import type { World } from './world.ts'

/** Nights back from the last one known; no screen of Tonight looks further, but for the one known before them. */
const nightsBack = 60

/** The last night known by now: one that a fast clock dated a year ahead must not cut off those that count. */
const lastOf = (world: World, id: PlanId, now: Moment): Day | undefined => {
  const plan = planAt(world, id, now)
  const tank = plan && tankAt(world, plan.tank, now)
  return tank ? lastNightBy(world, id, nightOf(now, tank)) : world.lastNight.get(id)
}

const lately = (world: World, plan: PlanId, nights: Nights, now: Moment): Nights => {
  const last = lastOf(world, plan, now)
  // All that is known lies ahead.
  if (last === undefined) return nights
  const from = addDays(last, -nightsBack)
  // After a long pause tonight's dose is alone in that time, and what it answers for begins at the night before the pause.
  const before = lastNightBefore(world, plan, from)
  const recent: [Day, readonly NightMark[]][] = []
  for (const [night, marks] of nights) if (night >= from || night === before) recent.push([night, marks])
  return new Map(recent)
}

/** The same world without its history and its questions, and with the nights of late only. */
export const glanceOf = (world: World, now: Moment): World => {
  const nights = new Map<PlanId, Nights>()
  for (const [plan, known] of world.nights) nights.set(plan, lately(world, plan, known, now))
  return {
    ...world,
    nights,
    watched: new Map(),
    photos: [],
    history: { all: [], struck: new Map() },
    oddities: [],
    unread: [],
  }
}
