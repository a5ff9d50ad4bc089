/** What a dose carries at most. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  checkContents,
  dryMatter,
  microlitres,
  nitratePerNitrogen,
  nutrientsOf,
  nutrientWater,
  phosphatePerPhosphorus,
  redfield,
  stumm,
} from '../../../core/index.ts'
import {
  bottleKnockedIn,
  fiveOfLargeCells,
  fiveOfSmallCells,
  nitrateOfNitrogen,
  phosphateOfPhosphorus,
  redfieldNitrogen,
  redfieldPhosphorus,
  stummPhosphorus,
} from '../../checks/nutrients.ts'
import { holds } from '../../fixtures/laws.ts'
import { refusalOf } from '../../support/given.ts'
import { mL } from '../../support/givenLab.ts'

test('the make-up of algae and the factors to nitrate and phosphate are the published ones', () => {
  expect(redfield.nitrogen).toBeCloseTo(redfieldNitrogen.expected, 5)
  expect(redfield.phosphorus).toBeCloseTo(redfieldPhosphorus.expected, 5)
  expect(stumm.phosphorus).toBeCloseTo(stummPhosphorus.expected, 5)
  expect(nitratePerNitrogen).toBeCloseTo(nitrateOfNitrogen.expected, 4)
  expect(phosphatePerPhosphorus).toBeCloseTo(phosphateOfPhosphorus.expected, 4)
})

for (const worked of [bottleKnockedIn, fiveOfSmallCells, fiveOfLargeCells])
  test(`as ${worked.source}`, () => {
    const carried = nutrientsOf(mL(worked.mL), worked.contents, worked.litres)
    expect(carried?.dry).toBeCloseTo(worked.dry, 6)
    expect(carried?.nitrate.high).toBeCloseTo(worked.nitrate, worked.digits)
    expect(carried?.nitrate.low).toBe(carried?.nitrate.high)
    expect(carried?.phosphate.high).toBeCloseTo(worked.phosphate, worked.digits)
  })

test('where the maker gives no shares it is a range, from the leaner make-up to the richer', () => {
  const carried = nutrientsOf(mL(60), { dry: 0.1 }, 400)
  expect(carried?.nitrate.low).toBeCloseTo((6_000 * redfield.nitrogen * nitratePerNitrogen) / 400, 9)
  expect(carried?.nitrate.high).toBeCloseTo((6_000 * stumm.nitrogen * nitratePerNitrogen) / 400, 9)
  expect(carried && carried.phosphate.high > carried.phosphate.low).toBe(true)
})

test('of contents nobody knows, nothing is said', () => {
  expect(nutrientsOf(mL(60), undefined, 400)).toBeUndefined()
  expect(nutrientsOf(mL(60), { cells: 1e9 }, 400)).toBeUndefined()
  expect(nutrientsOf(mL(60), { nitrogen: 0.06 }, 400)).toBeUndefined()
  expect(nutrientsOf(mL(60), { dry: 0.1 }, 0)).toBeUndefined()
  expect(dryMatter(mL(1), {})).toBeUndefined()
})

test('it grows with the amount and shrinks with the water, in proportion', () => {
  const amount = fc.integer({ min: 1, max: 1_000_000 }).map(microlitres)
  const water = fc.double({ min: 1, max: 100_000, noNaN: true })
  holds(
    fc.property(amount, water, fc.double({ min: 0.001, max: 1, noNaN: true }), (some, litres, dry) => {
      const once = nutrientsOf(some, { dry }, litres)
      const twice = nutrientsOf(microlitres(some * 2), { dry }, litres)
      const wide = nutrientsOf(some, { dry }, litres * 2)
      expect((twice?.nitrate.high ?? 0) / (once?.nitrate.high ?? 1)).toBeCloseTo(2, 9)
      expect((wide?.phosphate.low ?? 0) / (once?.phosphate.low ?? 1)).toBeCloseTo(0.5, 9)
    }),
  )
})

test('they are reckoned in the true water where it is known', () => {
  const stated = { value: 400, unit: 'L' as const }
  expect(nutrientWater({ stated, about: true, doseBy: 'stated' })).toEqual(stated)
  const measured = { value: 350, unit: 'L' as const }
  expect(nutrientWater({ stated, measured, about: false, doseBy: 'stated' })).toEqual(measured)
})

test('contents beyond anything that pours are refused, and cells without their weight', () => {
  expect(checkContents({})).toEqual({ ok: true, value: undefined })
  expect(checkContents({ nitrogen: 0.06 })).toEqual({ ok: true, value: undefined })
  expect(checkContents({ dry: 0.1, nitrogen: 0 })).toEqual({ ok: true, value: { dry: 0.1, nitrogen: 0 } })
  expect(refusalOf(checkContents({ dry: 0 }))).toEqual({ why: 'contentsOutOfRange', which: 'dry', most: 2 })
  expect(refusalOf(checkContents({ dry: 0.1, phosphorus: 0.2 }))).toMatchObject({ which: 'phosphorus', most: 0.1 })
  expect(refusalOf(checkContents({ cells: 1e9 }))).toEqual({ why: 'cellsUnweighed' })
})
