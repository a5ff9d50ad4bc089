/**
 * How much water is in a tank. The two volumes are derived, by us, from plain geometry: regressions that guard against a
 * slip, and no proof that a real tank holds as much.
 */
import { describe, expect, test } from 'vitest'
import {
  bandOf,
  checkMeasures,
  type DoseGiven,
  describeTank,
  doseMarks,
  doseWater,
  type ExactWater,
  foodAt,
  grossLitres,
  litres,
  statedIsFarOff,
  type TankAsked,
  type TankId,
  tankAt,
  trueRange,
  trueWater,
  usGallons,
  vastMeasures,
  volumesHeld,
} from '../../../core/index.ts'
import {
  cylinder,
  rectangleGross,
  rectangleInUsGallons,
  rectangleOutside,
  thirtyKilogramsOfRock,
  waterInSand,
} from '../../checks/volumes.ts'
import { at, done, given, london, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  cockle,
  dose,
  greenFood,
  lab,
  longGallery,
  mL,
  moveIn,
  onHand,
  planOf,
  portionOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

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

const outside = { taken: 'outside', height: 50, glass: 10, base: 12, down: 3 } as const
const bare = { by: 'share', share: 0 } as const
const sold: ExactWater = { shape: { form: 'rectangle', length: 120, width: 50 }, measures: outside, solids: bare }
const exactly = (exact: ExactWater, more: Partial<Water> = {}) => trueWater(waterOf({ ...about, exact, ...more }))
const litresOf = (exact: ExactWater): number => litres(exactly(exact) ?? { value: Number.NaN, unit: 'L' })

describe('measurements in full', () => {
  test('a tank sold as 300 L holds 259.41 L to its waterline, 68.53 US gal', () => {
    const real = exactly(sold)
    expect(real && litres(real)).toBeCloseTo(rectangleOutside.expected, 9)
    expect(real && usGallons(real)).toBeCloseTo(rectangleInUsGallons.expected, 9)
    expect(grossLitres(sold)).toBe(rectangleGross.expected)
  })
  test('a cylinder, measured inside', () => {
    const measures = { taken: 'inside', waterline: 60 } as const
    const exact: ExactWater = { shape: { form: 'cylinder', diameter: 50 }, measures, solids: bare }
    expect(litresOf(exact)).toBeCloseTo(cylinder.expected, 3)
    expect(grossLitres(exact)).toBeUndefined()
  })
  test('rock takes its weight over its density', () => {
    const rock = { by: 'sandAndRock', rockKg: 30 } as const
    expect(litresOf(sold) - litresOf({ ...sold, solids: rock })).toBeCloseTo(thirtyKilogramsOfRock.expected, 9)
  })
  test('sand takes what is not water in its bed, and no more of it than sands have that were measured', () => {
    const bed = (118 * 48 * 5) / 1000
    const solids = { by: 'sandAndRock', sandDepth: 5 } as const
    const taken = (of: number) => (litresOf(sold) - of) / bed
    const usual = 1 - taken(litresOf({ ...sold, solids }))
    expect(usual).toBeCloseTo(0.4, 9)
    const range = trueRange(waterOf({ ...about, exact: { ...sold, solids } }))
    expect(1 - taken(range?.low ?? 0)).toBeCloseTo(0.3, 9)
    expect(1 - taken(range?.high ?? 0)).toBeCloseTo(0.45, 9)
    const { leastSorted, mostSorted } = waterInSand
    expect(usual).toBeGreaterThan(leastSorted.expected)
    expect(usual).toBeLessThan(mostSorted.expected)
  })
  test('sump and refugium add their running water', () => {
    const elsewhere = { sump: { value: 31, unit: 'L' }, refugium: usGal(4) } as const
    expect(litresOf({ ...sold, ...elsewhere })).toBeCloseTo(rectangleOutside.expected + 31 + 4 * 3.785411784, 9)
  })
  test('outrank the older ones, and a measured fill outranks both', () => {
    const shape = { form: 'rectangle', length: 10, width: 10, waterline: 10 } as const
    const inside = { shape, solids: 0 }
    expect(exactly(sold, { inside })?.value).toBeCloseTo(rectangleOutside.expected, 9)
    expect(exactly(sold, { inside, measured: usGal(60) })).toEqual(usGal(60))
    expect(trueRange(waterOf({ ...about, exact: sold, measured: usGal(60) }))).toBeUndefined()
  })
  test('of a form only a newer version knows nothing follows, and doses go by the stated volume', () => {
    const read: unknown = { ...sold, shape: { form: 'oval', across: 90 } }
    const water = { ...about, stated: usGal(70), exact: read as ExactWater }
    expect(trueWater(water)).toBeUndefined()
    expect(doseWater(water)).toEqual(usGal(70))
  })
})

describe('measurements that cannot be', () => {
  const found = (exact: ExactWater) => refusalOf(checkMeasures(exact))
  const inside = { taken: 'inside', waterline: 40 } as const
  test('a bow deeper than half the front', () => {
    const bow = (deep: number): ExactWater => ({
      shape: { form: 'bowFront', length: 80, width: 40, bow: deep },
      measures: inside,
      solids: bare,
    })
    expect(found(bow(40.1))).toEqual([{ why: 'bowTooDeep', most: 40 }])
    expect(checkMeasures(bow(40)).ok).toBe(true)
  })
  test('glass, base, sand and rock that leave nothing', () => {
    expect(found({ ...sold, measures: { ...outside, glass: 250 } })).toEqual([{ why: 'glassTooThick' }])
    expect(found({ ...sold, measures: { ...outside, down: 49 } })).toEqual([{ why: 'noHeight' }])
    const sand = { by: 'sandAndRock', sandDepth: 46 } as const
    expect(found({ ...sold, solids: sand })).toEqual([{ why: 'sandTooDeep', height: 50 - 1.2 - 3 }])
    expect(found({ ...sold, solids: { by: 'sandAndRock', rockKg: 520 } })).toEqual([{ why: 'allRock' }])
  })
  test('are all said at once', () => {
    const shape = { form: 'bowFront', length: 80, width: 40, bow: 50 } as const
    const wrong = found({ shape, measures: inside, solids: { by: 'sandAndRock', sandDepth: 41 } })
    expect(wrong.map(({ why }) => why)).toEqual(['bowTooDeep', 'sandTooDeep'])
  })
})

describe('a volume that may be a slip', () => {
  const metres = { ...sold, shape: { form: 'rectangle', length: 1200, width: 500 } } as const
  test('is vast by its measurements, unless one as vast was stated and asked about', () => {
    expect(vastMeasures({ ...about, exact: metres })).toBeGreaterThan(10_000)
    expect(vastMeasures({ ...about, exact: metres, stated: { value: 27_000, unit: 'L' } })).toBeUndefined()
    expect(vastMeasures({ ...about, measured: { value: 20_000, unit: 'L' } })).toBe(20_000)
    expect(vastMeasures({ ...about, exact: sold })).toBeUndefined()
  })
  test('or is far from the number she goes by', () => {
    expect(statedIsFarOff({ ...about, exact: sold, stated: { value: 300, unit: 'L' } })).toBe(false)
    expect(statedIsFarOff({ ...about, exact: sold, stated: usGal(300) })).toBe(true)
    expect(statedIsFarOff({ ...about, exact: sold, stated: { value: 60, unit: 'L' } })).toBe(true)
    expect(statedIsFarOff({ ...about, stated: usGal(300) })).toBe(false)
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

describe('how much water, from when', () => {
  const describedAgain = (when: string, more: Partial<TankAsked>) =>
    tankOf(longGallery, usGal(200), more).map((fact) => ({ ...fact, at: at(when) }))
  const volumes = (...story: Parameters<typeof given>) =>
    volumesHeld(given(...story).world(), longGallery, now).map(({ from, water }) => [from, water.stated?.value])
  const smaller = { stated: usGal(170), about: false, doseBy: 'stated' } as const

  test('only where the volume changed, and back again', () => {
    expect(
      volumes(
        tankOf(longGallery, usGal(200)),
        describedAgain('2026-03-01 12:00', { lightsOut: '22:00' }),
        describedAgain('2026-05-01 12:00', { water: smaller }),
        describedAgain('2026-06-01 12:00', { water: smaller, name: 'Gallery' }),
        describedAgain('2026-07-01 12:00', {}),
      ),
    ).toEqual([
      [moveIn, 200],
      [at('2026-05-01 12:00'), 170],
      [at('2026-07-01 12:00'), 200],
    ])
  })
  test('a new rock is a change, the same water in litres is none, and tomorrow has not come', () => {
    const rock = { ...smaller, exact: sold }
    const litresOfIt = { ...smaller, stated: { value: litres(usGal(170)), unit: 'L' } } as const
    expect(
      volumes(
        tankOf(longGallery, usGal(170), { water: smaller }),
        describedAgain('2026-05-01 12:00', { water: litresOfIt }),
        describedAgain('2026-06-01 12:00', { water: rock }),
        describedAgain('2027-01-06 12:00', {}),
      ),
    ).toEqual([
      [moveIn, 170],
      [at('2026-06-01 12:00'), 170],
    ])
  })
  test('a tank never described has none', () => {
    expect(volumesHeld(given(lab).world(), cockle, now)).toEqual([])
  })
})

test('a dose keeps the verdict of the volume of its day when the tank is described again, larger or smaller', () => {
  const book = given(
    tankOf(longGallery, usGal(100)),
    lab.filter(({ kind }) => kind !== 'tankDescribed'),
    planOf({ first: '2026-06-10', amount: 1 }),
    onHand({ portions: 40, each: 1, frozen: '2026-01-05' }),
  )
  book.does(dose(at('2026-06-10 21:15'), { ...portionOf(blueClip, 1, 2), sure: true }))
  const old = book.entries().at(-1)?.fact as DoseGiven
  const verdicts = () => {
    const world = book.world()
    const then = tankAt(world, longGallery, old.at)
    const food = foodAt(world, greenFood, old.at)
    return { above: doseMarks(world, old).above, top: then && food && bandOf(then, food)?.high }
  }
  expect(verdicts()).toEqual({ above: 2, top: 1000 })
  const again = (when: string, value: number) =>
    book.note(...tankOf(longGallery, usGal(value)).map((fact) => ({ ...fact, at: at(when) })))
  again('2026-07-01 12:00', 200)
  expect(verdicts()).toEqual({ above: 2, top: 1000 })
  again('2026-08-01 12:00', 20)
  expect(verdicts()).toEqual({ above: 2, top: 1000 })
  const today = tankAt(book.world(), longGallery, now)
  expect(today && litres(doseWater(today.water) ?? usGal(0))).toBeCloseTo(20 * 3.785411784, 9)
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
