/** Thawed food is good for two nights. What of it no dose night uses in time is for the bin or a culture, and counted on by nobody. */
import type { LotId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { type FoodState, portionsLeft } from '../food/state.ts'
import type { TankState } from '../tank/state.ts'
import { lasts } from './lasts.ts'
import type { FirstBecause } from './order.ts'
import { whyFirst } from './order.ts'
import { comesFrom, type Serving } from './serve.ts'
import type { DosingState } from './state.ts'
import { tonight } from './tonight.ts'

type State = TankState & FoodState & DosingState

/** Of each thawed lot, how many portions no dose night takes in time. Lots that are set aside are no stock at all. */
export const thawedSpare = (state: State, now: Moment): ReadonlyMap<LotId, number> => {
  const spare = new Map<LotId, number>()
  const thawed = [...state.lots.values()].filter(({ meltedOn, left, aside }) => meltedOn && left > 0 && !aside)
  for (const food of new Set(thawed.map(({ made }) => made.food))) {
    const wasted = lasts(state, food, now)?.wasted
    for (const lot of thawed) {
      if (lot.made.food !== food) continue
      const left = wasted?.find((source) => source.from === 'portions' && source.lot === lot.id)?.left
      // No plan feeds it to a tank: none of it is used.
      const unused = wasted ? (left ?? 0) : portionsLeft(lot)
      if (unused > 0) spare.set(lot.id, unused)
    }
  }
  return spare
}

export type TakenFirst = { readonly taken: Serving['taken']; readonly because: FirstBecause | undefined }

/** What each plan takes next, and why: thawed food whose nights no dose falls on is not among it. */
export const takenFirst = (state: State, now: Moment): readonly TakenFirst[] => {
  const spare = thawedSpare(state, now)
  const used = ({ source }: Serving): boolean =>
    source.from !== 'portions' || (spare.get(source.lot) ?? 0) < source.left
  return tonight(state, now).flatMap(({ servings }) => {
    const usable = servings.filter(used)
    const [first] = usable
    return first ? [{ taken: first.taken, because: whyFirst(usable) }] : []
  })
}

/** Whether a lot or bottle is what a plan takes next, and why. */
export const firstOf = (state: State, id: ReturnType<typeof comesFrom>, now: Moment): TakenFirst | undefined =>
  takenFirst(state, now).find(({ taken }) => comesFrom(taken) === id)
