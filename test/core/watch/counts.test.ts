/** From what was counted to animals in a litre. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  animalDensity,
  clumpedRange,
  jarSample,
  poissonRange,
  spreadOf,
  tally,
  torchCount,
} from '../../../core/index.ts'
import * as published from '../../checks/counting.ts'
import { done, refusalOf } from '../../support/given.ts'

const jar = { litres: 2, rinsedInto: 50, lookedAt: 1, counts: [4, 6, 5] }
const about = <Of extends { readonly is: string }>(found: Of) => {
  if (found.is !== 'about') throw new Error(found.is)
  return found as Extract<Of, { readonly is: 'about' }>
}

describe('two litres sieved, rinsed to 50 mL, with 4, 6 and 5 in a millilitre', () => {
  const found = done(jarSample(jar))
  test('are 250 in the sample and 125 a litre, and between 70 and 206', () => {
    const { per, range, counted, water } = about(found.perLitre)
    expect(found.inSample).toBeCloseTo(250, 9)
    expect(counted).toBe(15)
    expect(water).toBeCloseTo(0.12, 12)
    expect(per).toBeCloseTo(125, 9)
    expect(Math.round(range.low)).toBe(70)
    expect(Math.round(range.high)).toBe(206)
    // The printed range of fifteen, over the water looked at.
    expect(range.low * water).toBeCloseTo(8.395, 3)
    expect(range.high * water).toBeCloseTo(24.74, 3)
  })
  test('have a standard error of about a quarter, and lie no further apart than by chance', () => {
    const { standardErrorShare, clumped, spread } = about(found.perLitre)
    expect(standardErrorShare).toBeCloseTo(0.258, 3)
    expect(clumped).toBe(false)
    expect(spread?.freedom).toBe(2)
  })
  test('are a least figure while nobody knows what the sieve keeps, and more once it is known', () => {
    expect(found.atLeast).toBe(true)
    const kept = done(jarSample({ ...jar, kept: 0.8 }))
    expect(kept.atLeast).toBe(false)
    expect(kept.inSample).toBeCloseTo(312.5, 9)
    expect(about(kept.perLitre).per).toBeCloseTo(156.25, 9)
    expect(about(kept.perLitre).range.low).toBeCloseTo(about(found.perLitre).range.low / 0.8, 9)
    expect(done(jarSample({ ...jar, kept: 1 })).atLeast).toBe(false)
  })
})

test('nothing seen in 3 of 50 mL from 2 L is fewer than 31 a litre, which is not none', () => {
  const { perLitre, inSample } = done(jarSample({ ...jar, counts: [0, 0, 0] }))
  expect(perLitre).toMatchObject({ is: 'noneSeen', counted: 0 })
  expect(perLitre.is === 'noneSeen' && perLitre.fewerThan).toBeCloseTo(3.689 / 0.12, 2)
  expect(inSample).toBe(0)
})

test('looks are summed before anything is reckoned: splitting the same look changes no range', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(60), { minLength: 1, maxLength: 6 }), (counts) => {
      const whole = counts.reduce((sum, count) => sum + count, 0)
      const split = done(animalDensity({ counts, each: 1 }))
      const one = done(animalDensity({ counts: [whole], each: counts.length }))
      if (split.is === 'noneSeen' || one.is === 'noneSeen') expect(split).toEqual(one)
      else if (!split.clumped) expect(split.range).toEqual(one.range)
      else {
        expect(split.range.high).toBeGreaterThan(one.range.high)
        expect(split.range.low).toBeLessThan(one.range.low)
      }
    }),
  )
})

test('a figure lies within its range, and a wider look narrows nothing but the figure', () => {
  fc.assert(
    fc.property(
      fc.array(fc.nat(200), { minLength: 1, maxLength: 6 }),
      fc.double({ min: 1e-6, max: 1000, noNaN: true }),
      (counts, each) => {
        const found = done(animalDensity({ counts, each }))
        if (found.is === 'noneSeen') return
        expect(found.range.low).toBeLessThan(found.per)
        expect(found.range.high).toBeGreaterThan(found.per)
        const wider = about(done(animalDensity({ counts, each: each * 2 })))
        expect(wider.per / found.per).toBeCloseTo(0.5, 9)
        expect(wider.range.high / found.range.high).toBeCloseTo(0.5, 9)
        expect(wider.standardErrorShare).toBe(found.standardErrorShare)
      },
    ),
  )
})

test('five groups of a Neubauer square hold what its geometry says, not a thousandth of it', () => {
  const { groups, group, perMillilitre } = published.neubauer
  expect(about(done(animalDensity({ counts: groups, each: group }))).per / perMillilitre).toBeCloseTo(1, 9)
})

test.each(published.ruleOfThumb)('$counted counted are known to about ± $half', ({ counted, half }) => {
  const { low, high } = done(poissonRange(counted))
  expect((high - low) / 2 / counted).toBeCloseTo(half, 1)
  expect(about(done(animalDensity({ counts: [counted], each: 1 }))).standardErrorShare * 2).toBeCloseTo(half, 12)
})

describe('clumps', () => {
  test('12, 15, 9, 14 and 10 differ no more than chance makes them', () => {
    const { counts, chiSquare, p } = published.dispersion
    const spread = spreadOf(done(tally(counts)))
    expect(spread).toMatchObject({ is: 'byChance', freedom: 4 })
    expect(spread?.chiSquare).toBeCloseTo(chiSquare, 9)
    expect(spread?.p).toBeCloseTo(p, 6)
  })
  test('2, 30 and 4 lie in clumps, and the range is the wider one from how they differ', () => {
    const found = about(done(animalDensity({ counts: [2, 30, 4], each: 1 })))
    expect(found.clumped).toBe(true)
    expect(found.spread?.p).toBeLessThan(0.05)
    // By hand: mean 12, squares 488, s² 244, s/√3 = 9.018; t with two degrees 4.303: 12 ± 38.8, cut off at none.
    expect(found.range.low).toBe(0)
    expect(found.range.high).toBeCloseTo(50.8, 1)
    expect(found.range.high).toBeGreaterThan(done(poissonRange(36)).high / 3)
    expect(found.standardErrorShare).toBeCloseTo(9.018 / 12, 3)
  })
  test('cannot be seen in one look, nor where there was nothing', () => {
    expect(spreadOf(done(tally([40])))).toBeUndefined()
    expect(spreadOf(done(tally([0, 0, 0])))).toBeUndefined()
  })
  test('the range from how looks differ is never below none and holds the mean', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(300), { minLength: 2, maxLength: 8 }), (counts) => {
        const counted = done(tally(counts))
        const { low, high } = clumpedRange(counted, 0.95)
        expect(low).toBeGreaterThanOrEqual(0)
        expect(low).toBeLessThanOrEqual(counted.mean)
        expect(high).toBeGreaterThanOrEqual(counted.mean)
      }),
    )
  })
})

describe('three panes by torch', () => {
  test('keep the middle one, whatever their order', () => {
    expect(done(torchCount([31, 12, 14]))).toEqual({ median: 14, lowest: 12, highest: 31 })
    expect(done(torchCount([0, 0, 0]))).toEqual({ median: 0, lowest: 0, highest: 0 })
  })
  test('may be more, as when a class counts', () => {
    expect(done(torchCount([9, 20, 11, 12]))).toEqual({ median: 11.5, lowest: 9, highest: 20 })
  })
  test('are asked for where there are fewer', () => {
    expect(refusalOf(torchCount([8, 9]))).toEqual({ why: 'tooFewPanes', given: 2, wanted: 3 })
    expect(refusalOf(torchCount([8, -9, 3]))).toEqual({ why: 'countNegative', count: -9 })
  })
})

describe('what cannot be is refused, with what was given', () => {
  test.each([
    [{ ...jar, counts: [] }, { why: 'nothingCounted' }],
    [
      { ...jar, counts: [4, -1, 5] },
      { why: 'countNegative', count: -1 },
    ],
    [
      { ...jar, counts: [4, 6.5, 5] },
      { why: 'countNotWhole', count: 6.5 },
    ],
    [
      { ...jar, counts: [4, 2_000_000] },
      { why: 'countTooLarge', count: 2_000_004, most: 1_000_000 },
    ],
    [
      { ...jar, litres: 0 },
      { why: 'volumeNotPositive', volume: 0, of: 'litres' },
    ],
    [
      { ...jar, rinsedInto: -50 },
      { why: 'volumeNotPositive', volume: -50, of: 'rinsedInto' },
    ],
    [
      { ...jar, lookedAt: 0 },
      { why: 'volumeNotPositive', volume: 0, of: 'lookedAt' },
    ],
    [
      { ...jar, rinsedInto: 2.5 },
      { why: 'lookedAtMoreThanRinsed', inAll: 3, rinsedInto: 2.5 },
    ],
    [
      { ...jar, kept: 0 },
      { why: 'keptOutOfRange', kept: 0 },
    ],
    [
      { ...jar, kept: 1.2 },
      { why: 'keptOutOfRange', kept: 1.2 },
    ],
  ])('%j', (asked, refusal) => expect(refusalOf(jarSample(asked))).toEqual(refusal))
  test('volumes that are no number are no volume', () => {
    expect(refusalOf(jarSample({ ...jar, litres: Number.NaN })).why).toBe('volumeNotPositive')
    expect(refusalOf(animalDensity({ counts: [3], each: Number.POSITIVE_INFINITY })).why).toBe('volumeNotPositive')
  })
  test('all of the rinse may be looked at, in tenths that add up to a hair more', () => {
    expect(jarSample({ ...jar, rinsedInto: 0.3, lookedAt: 0.1 }).ok).toBe(true)
  })
})
