/**
 * What Tonight needs of the world, small enough to be read at once. It is derived and may be thrown away at any time: the
 * world itself follows a moment later, and whatever is asked waits for that.
 */
import { addDays, type Day } from '../basis/days.ts'
import type { PlanId } from '../basis/ids.ts'
import type { NightMark, Nights } from '../dosing/state.ts'
import type { World } from './world.ts'

/** Nights back from the last one known; no screen of Tonight looks further. */
const nightsBack = 60

const lately = (nights: Nights, last: Day | undefined): Nights => {
  if (last === undefined) return new Map()
  const from = addDays(last, -nightsBack)
  const recent: [Day, readonly NightMark[]][] = []
  for (const [night, marks] of nights) if (night >= from) recent.push([night, marks])
  return new Map(recent)
}

/** The same world without its history and its questions, and with the nights of late only. */
export const glanceOf = (world: World): World => {
  const nights = new Map<PlanId, Nights>()
  for (const [plan, known] of world.nights) nights.set(plan, lately(known, world.lastNight.get(plan)))
  return { ...world, nights, history: { all: [], struck: new Map() }, oddities: [], unread: [] }
}
