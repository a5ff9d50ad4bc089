/** Whether the looks differ by more than chance: small life gathers in clumps, and then a range by chance alone is too narrow. */
import type { Confidence, CountRange } from './poisson.ts'
import { chiSquareAbove, studentT } from './special.ts'
import type { Tally } from './tally.ts'

export type CountSpread = {
  readonly is: 'byChance' | 'clumped'
  /** Σ(x − mean)² / mean, with one degree of freedom fewer than looks. */
  readonly chiSquare: number
  readonly freedom: number
  /** How often chance alone makes looks differ at least so much. */
  readonly p: number
}

/** Under one in twenty is no longer taken for chance. Common practice. */
const tooRare = 0.05

/**
 * The index of dispersion (J. M. Elliott, Statistical Analysis of Samples of Benthic Invertebrates, 1977; from memory).
 * Rough where the looks hold only a few animals each. Undefined with fewer than two looks, or with no animal in any.
 */
export const spreadOf = ({ counts, sum, mean }: Tally): CountSpread | undefined => {
  if (counts.length < 2 || sum === 0) return undefined
  const freedom = counts.length - 1
  const chiSquare = squares(counts, mean) / mean
  const p = chiSquareAbove(chiSquare, freedom)
  return { is: p < tooRare ? 'clumped' : 'byChance', chiSquare, freedom, p }
}

/** One standard error of the mean of a look, from how the looks differ. Wants two looks or more. */
export const standardError = ({ counts, mean }: Tally): number =>
  Math.sqrt(squares(counts, mean) / (counts.length - 1) / counts.length)

/** The range of the mean of a look by Student’s t, from how the looks differ; never below 0. Wants two looks or more. */
export const clumpedRange = (counted: Tally, confidence: Confidence): CountRange => {
  const half = studentT(1 - confidence, counted.counts.length - 1) * standardError(counted)
  return { low: Math.max(0, counted.mean - half), high: counted.mean + half }
}

const squares = (counts: readonly number[], mean: number): number =>
  counts.reduce((sum, count) => sum + (count - mean) ** 2, 0)
