/** Whether there are more than before, fewer, or whether two counts cannot tell. */
import { ok, type Result, refuse } from '../basis/result.ts'
import { spreadOf } from './clumped.ts'
import type { LookRefusal, Looks } from './counts.ts'
import type { Confidence } from './poisson.ts'
import { betaShare, crossing } from './special.ts'
import { type TallyRefusal, tally } from './tally.ts'

export type CountsCompared = {
  /** By the range alone: all of it above 1, all of it below, or 1 within. */
  readonly is: 'more' | 'fewer' | 'noClearChange'
  /** How many times as many as before. Undefined where none were seen before. */
  readonly ratio: number | undefined
  readonly low: number
  /** Undefined where it has no upper end: none were seen before. */
  readonly high: number | undefined
  /** How often two counts of the same water differ at least so much, either way. */
  readonly p: number
  /** One of the counts lay in clumps: they differ by more than chance of themselves, and the range is too narrow. */
  readonly clumped: boolean
}

/**
 * The exact comparison of two counts: of all that were counted in both, how many fell to this one? That share has the exact
 * range of C. J. Clopper and E. S. Pearson (Biometrika 26, 1934, 404–413), and share / (1 − share), over the water looked
 * at, is the ratio. p is twice the smaller tail, so that it is under 1 − confidence just when the range leaves out 1.
 * @param now equal looks, and the water in each; `before` in the same unit of volume
 */
export const compareCounts = (
  now: Looks,
  before: Looks,
  confidence: Confidence = 0.95,
): Result<CountsCompared, TallyRefusal | LookRefusal> => {
  for (const { each } of [now, before])
    if (!(each > 0 && Number.isFinite(each))) return refuse({ why: 'volumeNotPositive', volume: each, of: 'lookedAt' })
  const these = tally(now.counts)
  if (!these.ok) return these
  const those = tally(before.counts)
  if (!those.ok) return those
  const water = (now.each * now.counts.length) / (before.each * before.counts.length)
  const few = these.value.sum
  const rest = those.value.sum
  const share = shareRange(few, rest, (1 - confidence) / 2)
  const low = odds(share.low) / water
  const high = rest === 0 ? undefined : odds(share.high) / water
  return ok({
    is: low > 1 ? 'more' : high !== undefined && high < 1 ? 'fewer' : 'noClearChange',
    ratio: rest === 0 ? undefined : few / rest / water,
    low,
    high,
    p: bothTails(few, rest, water / (1 + water)),
    clumped: [these.value, those.value].some((counted) => spreadOf(counted)?.is === 'clumped'),
  })
}

/** Clopper and Pearson’s range of the share that `few` is of `few + rest`. */
const shareRange = (few: number, rest: number, rare: number) => ({
  low: few === 0 ? 0 : crossing((share) => orMore(few, rest, share) - rare, 0, 1),
  high: rest === 0 ? 1 : crossing((share) => rare - orFewer(few, rest, share), 0, 1),
})
/** The chance that at least `few` of all fall to this side, if each does with this share. */
const orMore = (few: number, rest: number, share: number): number => (few === 0 ? 1 : betaShare(share, few, rest + 1))
const orFewer = (few: number, rest: number, share: number): number =>
  rest === 0 ? 1 : betaShare(1 - share, rest, few + 1)
const bothTails = (few: number, rest: number, share: number): number =>
  Math.min(1, 2 * Math.min(orMore(few, rest, share), orFewer(few, rest, share)))
const odds = (share: number): number => share / (1 - share)
