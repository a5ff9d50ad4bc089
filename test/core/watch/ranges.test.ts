/** Exact ranges of a count against printed tables, two libraries, and what must hold of any count. */
import beta from '@stdlib/stats-base-dists-beta-quantile'
import chiSquare from '@stdlib/stats-base-dists-chisquare-quantile'
import gamma from '@stdlib/stats-base-dists-gamma-quantile'
import fc from 'fast-check'
import jstat from 'jstat'
import { describe, expect, test } from 'vitest'
import {
  betaShare,
  type Confidence,
  chiSquareAbove,
  gammaHalves,
  logGamma,
  poissonRange,
  studentT,
} from '../../../core/index.ts'
import * as published from '../../checks/counting.ts'
import { done, refusalOf } from '../../support/given.ts'

const confidence = fc.constantFrom<Confidence>(0.9, 0.95, 0.99)
const few = fc.oneof(
  fc.integer({ min: 0, max: 40 }),
  fc.integer({ min: 0, max: 700 }),
  fc.integer({ min: 0, max: 5000 }),
)
/** Above some 800 its upper quantiles are out in the fourth digit (0.2.3); the other library and the sums below are not. */
const stdlibHolds = 700
/** Term by term, as the law is written. */
const asFewAs = (count: number, truth: number): number => {
  let term = Math.exp(-truth)
  let sum = term
  for (let n = 1; n <= count; n += 1) {
    term *= truth / n
    sum += term
  }
  return sum
}

describe('the range of a count', () => {
  test.each(published.poissonRanges)('of $count at $confidence is as printed', ({ count, confidence, ...printed }) => {
    const { low, high } = done(poissonRange(count, confidence))
    expect(Math.abs(low - printed.low)).toBeLessThan(printed.within)
    expect(Math.abs(high - printed.high)).toBeLessThan(printed.within)
  })
  test('is the one that two libraries reckon from χ² and from the gamma distribution', () => {
    fc.assert(
      fc.property(few, confidence, (count, confidence) => {
        const { low, high } = done(poissonRange(count, confidence))
        const rare = (1 - confidence) / 2
        expect(high / (jstat.chisquare.inv(1 - rare, 2 * count + 2) / 2)).toBeCloseTo(1, 9)
        if (count > 0) expect(low / (jstat.chisquare.inv(rare, 2 * count) / 2)).toBeCloseTo(1, 9)
        if (count > stdlibHolds) return
        expect(high / (chiSquare(1 - rare, 2 * count + 2) / 2)).toBeCloseTo(1, 12)
        expect(high / gamma(1 - rare, count + 1, 1)).toBeCloseTo(1, 12)
        if (count > 0) expect(low / (chiSquare(rare, 2 * count) / 2)).toBeCloseTo(1, 12)
      }),
      { numRuns: 150 },
    )
  })
  test('of 938 is right to the last digits, where one library is not', () => {
    // χ² with 1878 degrees of freedom by SciPy, halved; its tail added up to fifty digits is 0.025 too.
    expect(done(poissonRange(938)).high / 1000.0008557063189).toBeCloseTo(1, 13)
  })
  test('leaves exactly half of the rest on either side, added up term by term', () => {
    for (let count = 0; count < 120; count += 1) {
      const { low, high } = done(poissonRange(count))
      expect(asFewAs(count, high)).toBeCloseTo(0.025, 10)
      if (count > 0) expect(1 - asFewAs(count - 1, low)).toBeCloseTo(0.025, 10)
    }
  })
  test('holds the count, grows with what is asked of it, and rises with the count', () => {
    fc.assert(
      fc.property(few, (count) => {
        const [most, usual, least] = ([0.99, 0.95, 0.9] as const).map((how) => done(poissonRange(count, how)))
        if (!most || !usual || !least) throw new Error('no range')
        if (count > 0) expect(least.low).toBeLessThan(count)
        expect(least.high).toBeGreaterThan(count)
        expect(most.low).toBeLessThanOrEqual(usual.low)
        expect(usual.low).toBeLessThanOrEqual(least.low)
        expect(most.high).toBeGreaterThan(usual.high)
        expect(usual.high).toBeGreaterThan(least.high)
        const next = done(poissonRange(count + 1))
        expect(next.low).toBeGreaterThan(usual.low)
        expect(next.high).toBeGreaterThan(usual.high)
        expect(next.high - next.low).toBeGreaterThan(usual.high - usual.low)
      }),
      { numRuns: 150 },
    )
  })
  test('of a million is still found', () => {
    const { low, high } = done(poissonRange(1_000_000))
    expect((high - low) / 2).toBeCloseTo(1960.5, 0)
  })
  test('is refused of what is no count', () => {
    expect(refusalOf(poissonRange(-1))).toEqual({ why: 'countNegative', count: -1 })
    expect(refusalOf(poissonRange(2.5))).toEqual({ why: 'countNotWhole', count: 2.5 })
    expect(refusalOf(poissonRange(Number.NaN)).why).toBe('countNotWhole')
    expect(refusalOf(poissonRange(Number.POSITIVE_INFINITY)).why).toBe('countNotWhole')
    expect(refusalOf(poissonRange(1_000_001))).toEqual({ why: 'countTooLarge', count: 1_000_001, most: 1_000_000 })
  })
})

describe('what the ranges stand on', () => {
  test.each(published.studentTable)('t with $freedom is as printed', ({ freedom, t }) => {
    expect(studentT(0.05, freedom)).toBeCloseTo(t, 3)
    expect(studentT(0.05, freedom) / jstat.studentt.inv(0.975, freedom)).toBeCloseTo(1, 7)
  })
  test.each(published.chiSquareTable)('χ² with $freedom is as printed', ({ freedom, value }) => {
    expect(chiSquareAbove(value, freedom)).toBeCloseTo(0.05, 4)
  })
  test('the incomplete beta function undoes the libraries’ beta quantiles', () => {
    const shape = fc.integer({ min: 1, max: 3000 })
    fc.assert(
      fc.property(shape, shape, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (a, b, p) => {
        expect(betaShare(beta(p, a, b), a, b)).toBeCloseTo(p, 8)
        expect(betaShare(beta(p, a, b), a, b)).toBeCloseTo(jstat.beta.cdf(beta(p, a, b), a, b), 6)
      }),
      { numRuns: 200 },
    )
  })
  test('the two halves of the incomplete gamma function add up, and halve as the library’s', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 700, noNaN: true }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (a, p) => {
          const { lower, upper } = gammaHalves(a, gamma(p, a, 1))
          expect(lower).toBeCloseTo(p, 8)
          expect(lower + upper).toBeCloseTo(1, 12)
        },
      ),
      { numRuns: 200 },
    )
  })
  test('ln Γ of whole numbers is the logarithm of factorials, and of ½ that of √π', () => {
    let factorial = 1
    for (let n = 1; n < 20; n += 1) {
      expect(logGamma(n)).toBeCloseTo(Math.log(factorial), 11)
      factorial *= n
    }
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 12)
    expect(logGamma(12_345.6) / jstat.gammaln(12_345.6)).toBeCloseTo(1, 12)
  })
})
