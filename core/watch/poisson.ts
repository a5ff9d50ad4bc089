/** How far the truth may lie from a count, if nothing but chance stands between them. */
import { ok, type Result } from '../basis/result.ts'
import { crossing, gammaHalves } from './special.ts'
import { type TallyRefusal, tally } from './tally.ts'

/** In the unit of what it is a range of. */
export type CountRange = { readonly low: number; readonly high: number }
/** How often such a range holds the truth, at the least. */
export type Confidence = 0.9 | 0.95 | 0.99

/**
 * The exact range for a count of animals spread by chance: the fewest that would still show this many, and the most that
 * would still show this few, each as rarely as half of what the confidence leaves over. Exact limits after F. Garwood,
 * "Fiducial limits for the Poisson distribution", Biometrika 28 (1936), 437–442.
 *
 * Counted none, it runs from 0 to 3.689: "fewer than 3.7", which is not "none".
 * @param count animals, summed over all looks first; ranges of single looks may not be averaged
 */
export const poissonRange = (count: number, confidence: Confidence = 0.95): Result<CountRange, TallyRefusal> => {
  const counted = tally([count])
  return counted.ok ? ok(rangeOf(count, confidence)) : counted
}

/** The same, of a count that has been checked. */
export const rangeOf = (count: number, confidence: Confidence): CountRange => {
  const rare = (1 - confidence) / 2
  const farAbove = count + 8 * Math.sqrt(count + 1) + 16
  return {
    // The chance of as many or more rises with what there is; the chance of as few or fewer falls.
    low: count === 0 ? 0 : crossing((truth) => gammaHalves(count, truth).lower - rare, 0, count),
    high: crossing((truth) => rare - gammaHalves(count + 1, truth).upper, count, farAbove),
  }
}
