/** How much is one dose. Checked only against our own worked examples, reckoned by hand from the label's range. */
import { expect, test } from 'vitest'
import {
  bandOf,
  bottleAmount,
  type Fact,
  type FoodId,
  foodAt,
  microlitres,
  portionFit,
  proposePortion,
  readWater,
  recordBottle,
  type TankId,
  tankAt,
  waterReadings,
} from '../../../core/index.ts'
import { at, done, given, london, refusalOf } from '../../support/given.ts'
import {
  cockle,
  doors,
  firstBottle,
  foodOf,
  greenFood,
  kitchenFridge,
  lab,
  longGallery,
  mL,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const today = at('2027-01-05 19:00')
const bandIn = (facts: readonly (readonly Fact[])[], tank: TankId, food: FoodId) => {
  const world = given(...facts).world()
  const known = { tank: tankAt(world, tank, today), food: foodAt(world, food, today) }
  const band = known.tank && known.food && bandOf(known.tank, known.food)
  if (!band) throw new Error('no band')
  return band
}

test('Long Gallery, 200 US gal, takes one to two millilitres', () => {
  const band = bandIn([lab], longGallery, greenFood)
  expect(band).toEqual({ low: 1000, high: 2000, shown: { low: 1000, high: 2000 } })
})

test('a portion of 1 mL is too big for Cockle, 60 US gal, and half-millilitre wells are suggested', () => {
  const band = bandIn([tankOf(cockle, usGal(60)), foodOf(greenFood)], cockle, greenFood)
  expect(band.shown).toEqual({ low: 300, high: 600 })
  const fit = portionFit(mL(1), band)
  expect(fit).toMatchObject({ is: 'tooBig', well: 500 })
  expect(fit.is === 'tooBig' && fit.ratio).toBeCloseTo(1.67, 2)
})

test('400 L is 105.67 US gal, and its range is rounded inward to the pipette mark', () => {
  const water = { value: 400, unit: 'L' } as const
  const band = bandIn([tankOf(cockle, water), foodOf(greenFood)], cockle, greenFood)
  expect(waterReadings(water).usGal).toBeCloseTo(105.67, 2)
  expect(band.low).toBeCloseTo(528.3, 1)
  expect(band.high).toBeCloseTo(1056.7, 1)
  expect(band.shown).toEqual({ low: 550, high: 1050 })
})

test('a volume of nothing, less than nothing or no number at all is refused, each with its own reason', () => {
  expect(refusalOf(readWater('0', 'usGal'))).toEqual({ why: 'notPositive', typed: '0' })
  expect(refusalOf(readWater('-60', 'usGal'))).toEqual({ why: 'notPositive', typed: '-60' })
  expect(refusalOf(readWater(' ', 'usGal'))).toEqual({ why: 'empty' })
})

test('"60,5" is sixty and a half', () => {
  expect(done(readWater('60,5', 'L'))).toEqual({ value: 60.5, unit: 'L' })
})

test.each([
  { mark: 0.05, shown: 2100 },
  { mark: 0.2, shown: 2000 },
])('a label of one figure for 400 L gives $shown µL with a mark of $mark mL, and is not called too small', (each) => {
  const label = { band: { low: mL(1), high: mL(1), per: usGal(50) } }
  const tank = tankOf(cockle, { value: 400, unit: 'L' }, { pipetteMark: mL(each.mark) })
  const band = bandIn([tank, foodOf(greenFood, label)], cockle, greenFood)
  expect(band.high).toBeCloseTo(2113.4, 1)
  expect(band.shown).toEqual({ low: each.shown, high: each.shown })
})

test('water too little for one mark is too small to measure', () => {
  const drop = tankOf(cockle, { value: 7, unit: 'L' })
  expect(bandIn([drop, foodOf(greenFood)], cockle, greenFood).shown).toBe('tooSmall')
})

test('a dose that no well holds is made of equal portions', () => {
  expect(proposePortion(mL(2), microlitres(50), mL(1.08))).toEqual({ portion: 1000, perDose: 2 })
  expect(proposePortion(mL(0.8), microlitres(50), mL(1.08))).toEqual({ portion: 800, perDose: 1 })
})

test('a bottle of 4 US fluid ounces holds 118.29 mL, one of 4 imperial ones 113.65 mL', () => {
  const bottle = (unit: 'usFlOz' | 'impFlOz') =>
    given(foodOf(greenFood), doors, (world) =>
      done(
        recordBottle(
          world,
          { bottle: firstBottle, food: greenFood, size: { value: 4, unit }, full: 1, place: kitchenFridge },
          { now: today, zone: london },
        ),
      ),
    )
      .world()
      .bottles.get(firstBottle)
  expect(bottle('usFlOz')?.left).toBe(118_294)
  expect(bottle('impFlOz')?.left).toBe(113_652)
  expect(bottleAmount(4, 'usFlOz')).toBe(118_294)
})
