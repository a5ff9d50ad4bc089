/** How much is one dose for this water. */
import { type Microlitres, microlitres, type WaterAmount, waterRatio } from '../basis/amounts.ts'
import { stepsToReach, stepsWithin } from '../basis/numbers.ts'
import type { DoseBand, FoodDescribed } from '../food/facts.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { doseWater } from '../tank/state.ts'

export type Band = {
  /** Exact, in microlitres, with fractions. */
  readonly low: number
  readonly high: number
  /** What her pipette can show of it; 'tooSmall' when even the top is less than one mark. */
  readonly shown: { readonly low: Microlitres; readonly high: Microlitres } | 'tooSmall'
}

/** A label for a drop of water and a lake to feed make no number: beyond this the band stands still. */
const mostTimes = 1_000_000

/**
 * The label's range for a volume of water. Rounded inward to the pipette's mark, the low end up and the high end down;
 * where that leaves nothing between them, the largest mark not above the high end.
 * @param mark microlitres, above 0
 */
export const doseBand = (water: WaterAmount, band: DoseBand, mark: Microlitres): Band => {
  const times = Math.min(waterRatio(water, band.per), mostTimes)
  const low = band.low * times
  const high = band.high * times
  const least = stepsToReach(low, mark)
  const most = stepsWithin(high, mark)
  if (most < 1) return { low, high, shown: 'tooSmall' }
  return {
    low,
    high,
    shown: { low: microlitres(Math.max(0, Math.min(least, most)) * mark), high: microlitres(most * mark) },
  }
}

export const bandOf = (tank: TankDescribed, food: FoodDescribed): Band | undefined => {
  const water = doseWater(tank.water)
  return water && doseBand(water, food.band, tank.pipetteMark)
}

/** Up to here above the top of the band nothing is said; above it the plan is asked about, once. */
export const quietRatio = 1.25
/** Above this a plan is refused. */
export const absurdRatio = 10
