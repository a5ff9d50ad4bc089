/** Money. Unknown is unknown, never zero. */
import { bottleAmount } from '../basis/amounts.ts'
import { stepsWithin } from '../basis/numbers.ts'
import type { FoodDescribed } from './facts.ts'
import type { Bottle } from './state.ts'

export type Cost = { readonly minor: number; readonly currency: string } | 'free' | 'notKnown'

/**
 * What one dose from a bottle costs: its price over the doses it can give once the residue on its walls is taken off.
 * @param dose microlitres
 */
export const costPerDose = ({ recorded }: Bottle, food: FoodDescribed, dose: number): Cost => {
  const { price, size } = recorded
  if (price === undefined) return 'notKnown'
  if (price === 'free') return 'free'
  const whole = bottleAmount(size.value, size.unit)
  const doses = stepsWithin(whole - Math.round(whole * food.residueShare), dose)
  return doses === 0 ? 'notKnown' : { minor: price.minor / doses, currency: price.currency }
}
