/** Which portion to freeze of a bottle, and how many it would make. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import type { FoodId } from '../basis/ids.ts'
import { stepsWithin } from '../basis/numbers.ts'
import type { Moment } from '../basis/zones.ts'
import { type Bottle, type FoodState, foodAt, usableLiquid } from '../food/state.ts'
import { type TankState, tanksAt } from '../tank/state.ts'
import { bandOf } from './band.ts'
import { couldBeShared, portionsCover } from './cover.ts'
import { proposePortion } from './fit.ts'
import { type DosingState, plansAt } from './state.ts'

type State = FoodState & DosingState & TankState

/** A usual pipette's, until a tank says otherwise. Common practice, no source. */
const usualMark = microlitres(50)
/** The tray assumed before she says which is hers. Common practice, no source. */
export const usualWell = microlitres(1200)

/** The least that is metered into a well: a drop more or less would be a dose more or less. Our own judgement. */
const leastPortion = microlitres(250)

/**
 * The dose portions are made for: the smallest planned that can be metered into a well, since a portion too large for one
 * tank suits the others in twos no better than a small one; the largest planned where none can; without a plan, the low
 * end for the first tank; else the label's own low end.
 */
export const doseToFreeze = (
  state: State,
  food: FoodId,
  now: Moment,
): { readonly dose: Microlitres; readonly mark: Microlitres } => {
  const tanks = tanksAt(state, now)
  const plans = plansAt(state, now)
    .filter((made) => made.food === food)
    .sort((a, b) => a.amount - b.amount)
  const plan = plans.find(({ amount }) => amount >= leastPortion) ?? plans.at(-1)
  const tank = tanks.find(({ tank }) => tank === plan?.tank) ?? tanks[0]
  const described = foodAt(state, food, now)
  const shown = tank && described && bandOf(tank, described)?.shown
  const low = typeof shown === 'object' ? shown.low : described?.band.low
  return { dose: plan?.amount ?? low ?? microlitres(1000), mark: tank?.pipetteMark ?? usualMark }
}

export type WouldMake = {
  readonly portions: number
  readonly each: Microlitres
  /** How long that is food for; undefined without a plan. */
  readonly nights: number | undefined
  /** Those nights are fewer than there could be: some tank takes less than half a portion. */
  readonly couldBeShared: boolean
}

/**
 * What a bottle makes if all of it is frozen today; undefined where it makes nothing.
 * @param most the most a well may hold
 */
export const wouldMake = (state: State, bottle: Bottle, most: Microlitres, now: Moment): WouldMake | undefined => {
  const { food } = bottle.recorded
  const described = foodAt(state, food, now)
  const { dose, mark } = doseToFreeze(state, food, now)
  const each = proposePortion(dose, mark, most)?.portion
  if (!described || !each) return undefined
  const portions = stepsWithin(usableLiquid(bottle, described), each)
  if (portions === 0) return undefined
  return {
    portions,
    each,
    nights: portionsCover(state, food, { each, count: portions }, now),
    couldBeShared: couldBeShared(state, food, each, now),
  }
}
