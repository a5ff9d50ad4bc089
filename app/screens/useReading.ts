/** What a screen reads: the world, the time, and the calendar the household lives by. */
import { type Day, type Here, type Moment, tanksAt, type World, wallDay, type Zone } from '../../core/index.ts'
import { useNow } from '../state/clock.ts'
import { phoneZone } from '../state/phoneZone.ts'
import { useWorld } from '../state/store.ts'

/** The first tank's zone; the phone's own until there is one. */
const homeZone = (world: World, now: Moment): Zone => tanksAt(world, now)[0]?.zone ?? phoneZone()

export type Reading = { readonly world: World; readonly now: Moment; readonly zone: Zone; readonly today: Day }

/** Many parts of a screen ask at once, and finding the day takes longer than drawing most of them. */
let last: Reading | undefined

export const useReading = (): Reading => {
  const world = useWorld()
  const now = useNow()
  if (last?.world !== world || last.now !== now) {
    const zone = homeZone(world, now)
    last = { world, now, zone, today: wallDay(now, zone) }
  }
  return last
}

/** For a request: the moment it is asked, not the minute shown. */
export const hereIn = (world: World, now: Moment): Here => ({ now, zone: homeZone(world, now) })
