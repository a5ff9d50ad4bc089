/** What a pour does to the salt. The figure of the exchange is by a balance of salt, worked by hand; the rest our own examples. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  bottledIn,
  planSeeding,
  type RunId,
  type SeedingAsked,
  saltOfPour,
  saltShift,
  type TankWater,
} from '../../../core/index.ts'
import { at, done, given, refusalOf } from '../../support/given.ts'
import { lab, longGallery, mL } from '../../support/givenLab.ts'
import { equipmentOf } from '../../support/givenSeeding.ts'

const water: TankWater = {
  stated: { value: 400, unit: 'L' },
  measured: { value: 200, unit: 'L' },
  about: true,
  doseBy: 'stated',
}
const asked: SeedingAsked = {
  run: 'run1' as RunId,
  tank: longGallery,
  animals: ['copepods'],
  pours: [
    { into: 'display', bottles: 1.5 },
    { into: 'refugium', bottles: 0.5 },
  ],
  holds: mL(500),
  waterOut: 'after',
  rinse: { each: mL(100), of: 'newSaltWater' },
  tankSalt: 35,
  bottleSalt: 25,
  off: at('2027-06-15 21:40'),
  morning: at('2027-06-16 07:30'),
}

test('a litre at 25 for a litre of two hundred at 35 leaves 34.95, by the true water and without the rinse', () => {
  expect(bottledIn(asked)).toBe(mL(1000))
  const shift = saltOfPour(asked, water, bottledIn(asked))
  expect(shift?.before).toBe(35)
  expect(shift?.after).toBeCloseTo(34.95, 9)
  expect(shift?.notable).toBe(false)
  // By the volume she goes by where no other is known: (35 × 399 + 25) / 400.
  const { measured: _, ...goneBy } = water
  expect(saltOfPour(asked, goneBy, bottledIn(asked))?.after).toBeCloseTo(34.975, 9)
})

test('what is not known is not reckoned with, least of all as none', () => {
  const poured = bottledIn(asked)
  expect(saltOfPour({}, water, poured)).toBeUndefined()
  expect(saltOfPour({ tankSalt: 35 }, water, poured)).toBeUndefined()
  expect(saltOfPour({ bottleSalt: 25 }, water, poured)).toBeUndefined()
  const { stated: _stated, measured: _measured, ...noWater } = water
  expect(saltOfPour(asked, noWater, poured)).toBeUndefined()
})

test('over half a part in a thousand is worth a word', () => {
  // 12 litres at 25 in 200 at 35: 35 − 12 × 10 / 200 = 34.4.
  expect(saltOfPour(asked, water, mL(12_000))).toMatchObject({ notable: true })
  expect(saltOfPour(asked, water, mL(12_000))?.after).toBeCloseTo(34.4, 9)
})

test('it ends between the two, and what is as salty as the tank shifts nothing', () => {
  const salinity = fc.double({ min: 2, max: 45, noNaN: true })
  fc.assert(
    fc.property(salinity, salinity, fc.integer({ min: 0, max: 300_000 }), (tank, bottles, poured) => {
      const { after } = done(saltShift(200, tank, mL(poured), bottles))
      expect(after).toBeGreaterThanOrEqual(Math.min(tank, bottles) - 1e-9)
      expect(after).toBeLessThanOrEqual(Math.max(tank, bottles) + 1e-9)
      expect(done(saltShift(200, tank, mL(poured), tank)).change).toBeCloseTo(0, 9)
    }),
  )
})

test('a specific gravity is refused in a plan, with whose it is', () => {
  const book = given(lab, equipmentOf(['return']))
  const now = at('2027-06-15 18:00')
  const ask = (salt: Partial<SeedingAsked>) => planSeeding(book.world(), { ...asked, ...salt }, now)
  expect(refusalOf(ask({ tankSalt: 1.025 }))).toEqual({ why: 'notSalinity', typed: 1.025, of: 'tankSalt' })
  expect(refusalOf(ask({ bottleSalt: 350 }))).toEqual({ why: 'notSalinity', typed: 350, of: 'bottleSalt' })
  expect(done(ask({ bottleSalt: 30 }))[0]).toMatchObject({ tankSalt: 35, bottleSalt: 30 })
})
