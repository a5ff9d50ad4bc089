/**
 * How much water is in a tank. The two volumes are derived, by us, from plain geometry: regressions that guard against a
 * slip, and no proof that a real tank holds as much.
 */
import { describe, expect, test } from 'vitest'
import { describeTank, doseWater, litres, type TankAsked, type TankId, tankAt, trueWater } from '../../../core/index.ts'
import { at, done, given, london, refusalOf } from '../../support/given.ts'
import { longGallery, mL, moveIn, tankOf, usGal } from '../../support/givenLab.ts'

const now = at('2027-01-05 19:00')
type Water = TankAsked['water']
const waterOf = (water: Water): Water => {
  const tank = tankAt(given(tankOf(longGallery, usGal(200), { water })).world(), longGallery, now)
  if (!tank) throw new Error('no tank')
  return tank.water
}
const about = { about: true, doseBy: 'true' } as const

describe('inside measurements', () => {
  test('120 × 50 × 50 cm outside, glass of 10 mm, a base of 12 mm, filled to 3 cm below the rim: 259.4112 L', () => {
    const shape = { form: 'rectangle', length: 120 - 2, width: 50 - 2, waterline: 50 - 1.2 - 3 } as const
    const real = trueWater(waterOf({ ...about, inside: { shape, solids: 0 } }))
    expect(real && litres(real)).toBeCloseTo(259.4112, 9)
  })
  test('a cylinder 50 cm across and 60 cm deep: 117.81 L', () => {
    const shape = { form: 'cylinder', diameter: 50, waterline: 60 } as const
    const real = trueWater(waterOf({ ...about, inside: { shape, solids: 0 } }))
    expect(real && litres(real)).toBeCloseTo(117.81, 2)
  })
  test('rock and sand take their share of the display, and the sump its running water adds', () => {
    const shape = { form: 'rectangle', length: 100, width: 40, waterline: 45 } as const
    const inside = { shape, solids: 0.12, sump: { value: 31, unit: 'L' } } as const
    const real = trueWater(waterOf({ ...about, inside }))
    expect(real && litres(real)).toBeCloseTo(180 * 0.88 + 31, 9)
  })
})

describe('which volume doses go by', () => {
  const water = { stated: usGal(100), measured: usGal(88), about: true } as const
  test('is the one she states', () => {
    expect(doseWater(waterOf({ ...water, doseBy: 'stated' }))).toEqual(usGal(100))
  })
  test('is the true one if she chose it', () => {
    expect(doseWater(waterOf({ ...water, doseBy: 'true' }))).toEqual(usGal(88))
  })
  test('is the measured one if it is all there is', () => {
    expect(doseWater(waterOf({ measured: usGal(88), about: false, doseBy: 'stated' }))).toEqual(usGal(88))
  })
})

test('an old dose is judged by the water of its day', () => {
  const book = given(tankOf(longGallery, usGal(200)))
  const [described] = tankOf(longGallery, usGal(170))
  if (described?.kind !== 'tankDescribed') throw new Error('no tank')
  book.note({ ...described, at: at('2027-03-03 12:00') })
  const waterOn = (text: string) => tankAt(book.world(), longGallery, at(text))?.water.stated
  expect(waterOn('2027-03-02 21:00')).toEqual(usGal(200))
  expect(waterOn('2027-03-03 21:00')).toEqual(usGal(170))
})

test('a tank without water, zone, lamp or pipette is refused, each with its own reason', () => {
  const asked: TankAsked = {
    tank: 'newtank' as TankId,
    name: 'New',
    water: { stated: usGal(33), about: false, doseBy: 'stated' },
    zone: london,
    lightsOut: '21:00',
    pipetteMark: mL(0.05),
  }
  const refusal = (more: Partial<TankAsked>) => refusalOf(describeTank({ ...asked, ...more }, moveIn))
  expect(done(describeTank(asked, moveIn))).toHaveLength(1)
  expect(refusal({ water: { about: false, doseBy: 'stated' } })).toEqual({ why: 'noWater' })
  expect(refusal({ water: { measured: usGal(0), about: false, doseBy: 'true' } })).toEqual({ why: 'dryTank' })
  expect(refusal({ zone: '+01:00' })).toEqual({ why: 'zoneUnknown', zone: '+01:00' })
  expect(refusal({ lightsOut: '25:00' })).toEqual({ why: 'lightsOutMissing' })
  expect(refusal({ pipetteMark: mL(0) })).toEqual({ why: 'markNotPositive' })
})
