/** More than before, fewer, or no telling. */
import beta from '@stdlib/stats-base-dists-beta-quantile'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type CountsCompared, compareCounts } from '../../../core/index.ts'
import { rateRatios } from '../../checks/counting.ts'
import { done, refusalOf } from '../../support/given.ts'

const one = (count: number, each = 1) => ({ counts: [count], each })

describe('against published comparisons', () => {
  test.each(rateRatios)('$now.count against $before.count', ({ now, before, ...printed }) => {
    const found = done(compareCounts(one(now.count, now.over), one(before.count, before.over)))
    expect((found.ratio ?? 0) / printed.ratio).toBeCloseTo(1, 6)
    expect(found.low / printed.low).toBeCloseTo(1, 6)
    expect((found.high ?? 0) / printed.high).toBeCloseTo(1, 6)
    if (printed.p !== undefined) expect(found.p).toBeCloseTo(printed.p, 5)
    expect(found.is).toBe('noClearChange')
  })
  test('the range is the one a library’s beta quantiles give', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 1, max: 2000 }), (few, rest) => {
        const { low, high } = done(compareCounts(one(few), one(rest)))
        const odds = (share: number) => share / (1 - share)
        expect(low / odds(beta(0.025, few, rest + 1))).toBeCloseTo(1, 6)
        expect((high ?? 0) / odds(beta(0.975, few + 1, rest))).toBeCloseTo(1, 6)
      }),
      { numRuns: 150 },
    )
  })
})

const looks = fc.record({
  counts: fc.array(fc.oneof(fc.constant(0), fc.nat(30), fc.nat(500)), { minLength: 1, maxLength: 4 }),
  each: fc.constantFrom(0.1, 0.5, 1, 2, 10),
})
const upsideDown: Record<CountsCompared['is'], CountsCompared['is']> = {
  more: 'fewer',
  fewer: 'more',
  noClearChange: 'noClearChange',
}

test('the other way round, ratio and range stand on their heads', () => {
  const met = { more: 0, fewer: 0, noClearChange: 0, none: 0 }
  fc.assert(
    fc.property(looks, looks, (now, before) => {
      const there = done(compareCounts(now, before))
      const back = done(compareCounts(before, now))
      met[there.is] += 1
      expect(back.is).toBe(upsideDown[there.is])
      expect(back.p).toBeCloseTo(there.p, 9)
      expect(back.clumped).toBe(there.clumped)
      if (there.high === undefined) {
        met.none += 1
        expect(back.low).toBe(0)
      } else if (there.high > 0) expect(back.low * there.high).toBeCloseTo(1, 6)
      if (there.ratio && back.ratio) expect(back.ratio * there.ratio).toBeCloseTo(1, 9)
    }),
  )
  for (const times of Object.values(met)) expect(times).toBeGreaterThan(3)
})

test('the range holds the ratio, and p agrees with it', () => {
  fc.assert(
    fc.property(looks, looks, (now, before) => {
      const { is, ratio, low, high, p } = done(compareCounts(now, before))
      expect(p).toBeGreaterThanOrEqual(0)
      expect(p).toBeLessThanOrEqual(1)
      if (ratio !== undefined) {
        expect(low).toBeLessThanOrEqual(ratio)
        expect(high ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(ratio)
      }
      // Right at the edge the last digits of the two ways may disagree.
      if (Math.abs(p - 0.05) > 1e-9) expect(is !== 'noClearChange').toBe(p < 0.05)
    }),
  )
})

test('a clear change is said to be one', () => {
  expect(done(compareCounts(one(60), one(20))).is).toBe('more')
  expect(done(compareCounts(one(5), one(30))).is).toBe('fewer')
  // As many, in ten times the water, are fewer.
  expect(done(compareCounts(one(30, 10), one(30, 1))).is).toBe('fewer')
})

test('15 and 11 are no clear change, however much it looks like one', () => {
  expect(done(compareCounts(one(15), one(11)))).toMatchObject({ is: 'noClearChange', clumped: false })
})

test('none before has no ratio and no upper end', () => {
  const found = done(compareCounts(one(12), one(0)))
  expect(found).toMatchObject({ is: 'more', ratio: undefined, high: undefined })
  expect(found.low).toBeGreaterThan(1)
  expect(done(compareCounts(one(0), one(12)))).toMatchObject({ is: 'fewer', ratio: 0, low: 0 })
  expect(done(compareCounts(one(0), one(0)))).toEqual({
    is: 'noClearChange',
    ratio: undefined,
    low: 0,
    high: undefined,
    p: 1,
    clumped: false,
  })
})

test('clumps are told, for they make a change look surer than it is', () => {
  expect(done(compareCounts({ counts: [2, 30, 4], each: 1 }, one(10))).clumped).toBe(true)
})

test('what cannot be is refused', () => {
  expect(refusalOf(compareCounts(one(3, 0), one(4)))).toEqual({ why: 'volumeNotPositive', volume: 0, of: 'lookedAt' })
  expect(refusalOf(compareCounts(one(3), one(4, Number.NaN))).why).toBe('volumeNotPositive')
  expect(refusalOf(compareCounts(one(3.5), one(4)))).toEqual({ why: 'countNotWhole', count: 3.5 })
  expect(refusalOf(compareCounts(one(3), { counts: [], each: 1 }))).toEqual({ why: 'nothingCounted' })
})
