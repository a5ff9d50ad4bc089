/** How long the food lasts: the one question everybody asks of the walk. */
import { type Day, dayFromNumber } from '../basis/days.ts'
import type { FoodId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import type { TankState } from '../tank/state.ts'
import type { Source } from './serve.ts'
import type { DosingState } from './state.ts'
import { type Bare, type Walk, walk } from './walk.ts'

export type Lasts = {
  /** Doses given on the way, those of a tank that is still fed when another goes without included. */
  readonly doses: number
  /** The last dose night on which every tank that is due is served; undefined when there is none. */
  readonly lastNight: Day | undefined
  /** The first due night on which a tank finds nothing usable. */
  readonly bareNight: Day
  /** What passes its last good day, or is too little for a dose, before it is used. */
  readonly wasted: readonly Source[]
  /** What ends it: nothing left for a dose, or food for one that is past its time. */
  readonly ends: Bare['ends']
}

/** Undefined where no plan feeds this food. */
export const lasts = (state: FoodState & DosingState & TankState, food: FoodId, now: Moment): Lasts | undefined => {
  const walked = walk(state, food, now)
  return walked && lastsOf(walked)
}

/** The same of a walk that is there already. */
export const lastsOf = ({ steps, sources, bare: [bare] }: Walk): Lasts | undefined => {
  if (!bare) return undefined
  const last = steps.findLast(({ on }) => on < bare.on)
  return {
    doses: steps.length,
    lastNight: last && dayFromNumber(last.on),
    bareNight: dayFromNumber(bare.on),
    wasted: sources.flatMap(({ source }) => (source.left > 0 ? [source] : [])),
    ends: bare.ends,
  }
}
