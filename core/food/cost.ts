/** Money. Unknown is unknown, never zero. */
import { bottleAmount } from '../basis/amounts.ts'
import { stepsWithin } from '../basis/numbers.ts'
import type { FoodDescribed } from './facts.ts'
import type { Bottle, FoodState } from './state.ts'

export type Cost = { readonly minor: number; readonly currency: string } | 'free' | 'notKnown'

/** Microlitres of a bottle that reached no tank of hers: spilt, thrown away or given away, as liquid or as portions. */
export const lostOf = ({ lots }: FoodState, { id, gone }: Bottle): number => {
  let lost = gone
  for (const { made, gone: portions } of lots.values())
    if (made.kind === 'portionsFrozen' && made.bottle === id) lost += portions * made.each
  return lost
}

/**
 * What one dose from a bottle costs: its price over the doses it can give once the residue on its walls is taken off, and
 * what was lost.
 * @param dose microlitres
 * @param lost microlitres
 */
export const costPerDose = ({ recorded }: Bottle, food: FoodDescribed, dose: number, lost = 0): Cost => {
  const { price, size } = recorded
  if (price === undefined) return 'notKnown'
  if (price === 'free') return 'free'
  const whole = bottleAmount(size.value, size.unit)
  const doses = stepsWithin(whole - Math.round(whole * food.residueShare) - lost, dose)
  return doses < 1 ? 'notKnown' : { minor: price.minor / doses, currency: price.currency }
}
