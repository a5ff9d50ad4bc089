import { describe, expect, test } from 'vitest'
import {
  bottleAmount,
  fromMillilitres,
  litres,
  microlitres,
  toMillilitres,
  usGallons,
  waterRatio,
} from '../../../core/index.ts'
import * as published from '../../checks/units.ts'

/** Far below anything a measure shows, above the last binary digit. */
const almost = (value: number, expected: number) => expect(Math.abs(value / expected - 1)).toBeLessThan(1e-12)

describe('units agree with their published values', () => {
  test('a US gallon', () => {
    almost(litres({ value: 1, unit: 'usGal' }) * 1000, published.usGallonInMillilitres.expected)
  })
  test('an imperial gallon', () => {
    almost(litres({ value: 1, unit: 'impGal' }) * 1000, published.imperialGallonInMillilitres.expected)
  })
  test('40 US gallons', () => {
    almost(litres({ value: 40, unit: 'usGal' }), published.fortyUsGallonsInLitres.expected)
  })
  test('100 L in imperial gallons', () => {
    const ratio = waterRatio({ value: 100, unit: 'L' }, { value: 1, unit: 'impGal' })
    almost(ratio, published.hundredLitresInImperialGallons.expected)
  })
  test('a US and an imperial fluid ounce, to the nearest microlitre', () => {
    expect(bottleAmount(1, 'usFlOz')).toBe(Math.round(published.usFluidOunceInMillilitres.expected * 1000))
    expect(bottleAmount(1, 'impFlOz')).toBe(Math.round(published.imperialFluidOunceInMillilitres.expected * 1000))
  })
  test('a gallon has 128 fluid ounces in America and 160 in Britain', () => {
    almost(published.usFluidOunceInMillilitres.expected * 128, published.usGallonInMillilitres.expected)
    almost(published.imperialFluidOunceInMillilitres.expected * 160, published.imperialGallonInMillilitres.expected)
  })
})

test('the same number of ounces is another bottle in another country', () => {
  expect(bottleAmount(4, 'usFlOz')).toBe(118_294)
  expect(bottleAmount(4, 'impFlOz')).toBe(113_652)
})

test('water typed in US gallons never passes through litres', () => {
  for (const value of [12.3, 40, 55, 75.7, 125, 200]) {
    expect(usGallons({ value, unit: 'usGal' })).toBe(value)
    expect(waterRatio({ value, unit: 'usGal' }, { value: 1, unit: 'usGal' })).toBe(value)
  }
})

test('200 US gallons are exactly four times 50 US gallons, and 300 L exactly three times 100 L', () => {
  expect(waterRatio({ value: 200, unit: 'usGal' }, { value: 50, unit: 'usGal' })).toBe(4)
  expect(waterRatio({ value: 300, unit: 'L' }, { value: 100, unit: 'L' })).toBe(3)
})

test('1.005 mL is 1005 µL, though 1.005 × 1000 computes as 1004.999…', () => {
  expect(1.005 * 1000).toBeLessThan(1005)
  expect(fromMillilitres(1.005)).toBe(1005)
})

test('every whole microlitre up to ten litres comes back from millilitres untouched', () => {
  for (let whole = 0; whole <= 10_000_000; whole += 37)
    if (fromMillilitres(toMillilitres(microlitres(whole))) !== whole) expect.fail(`${whole} µL does not come back`)
  expect(toMillilitres(microlitres(96_015))).toBe(96.015)
})

test('a fraction of a microlitre is a slip in the program, and stops it', () => {
  expect(() => microlitres(0.5)).toThrow('0.5 is not a whole number of microlitres')
  expect(() => fromMillilitres(Number.NaN)).toThrow('not a whole number')
  expect(() => fromMillilitres(Number.POSITIVE_INFINITY)).toThrow('not a whole number')
})
