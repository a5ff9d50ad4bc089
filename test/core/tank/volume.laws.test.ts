/** What holds of every tank that can be measured. No published value: these are the laws of taking room from water. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  checkMeasures,
  type ExactWater,
  exactLitres,
  grossLitres,
  litres,
  measuresOf,
  noteMeasures,
  type TankShape,
  type TankWater,
  trueRange,
  trueWater,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'

const cm = (least: number, most: number) => fc.integer({ min: least * 10, max: most * 10 }).map((mm) => mm / 10)
const shape: fc.Arbitrary<TankShape> = fc.oneof(
  fc.record({ form: fc.constant('rectangle' as const), length: cm(20, 300), width: cm(20, 120) }),
  fc.record({ form: fc.constant('cylinder' as const), diameter: cm(20, 200) }),
  fc.record({ form: fc.constant('hexagon' as const), side: cm(15, 100) }),
  fc
    .tuple(cm(30, 300), cm(20, 120), fc.double({ min: 0.001, max: 1, noNaN: true }))
    .map(([length, width, deep]) => ({ form: 'bowFront' as const, length, width, bow: (length / 2) * deep })),
)
const measures: fc.Arbitrary<ExactWater['measures']> = fc.oneof(
  fc.record({ taken: fc.constant('inside' as const), waterline: cm(15, 120) }),
  fc.record({
    taken: fc.constant('outside' as const),
    height: cm(25, 120),
    glass: cm(3, 30),
    base: cm(3, 30),
    down: cm(0, 10),
  }),
)
const solids: fc.Arbitrary<ExactWater['solids']> = fc.oneof(
  fc.record({ by: fc.constant('share' as const), share: fc.integer({ min: 0, max: 60 }).map((share) => share / 100) }),
  fc.record({ by: fc.constant('sandAndRock' as const), sandDepth: cm(0, 30), rockKg: cm(0, 300) }),
)
const running = fc.option(fc.record({ value: cm(1, 200), unit: fc.constant('L' as const) }), {
  nil: undefined,
  freq: 2,
})
const exact: fc.Arbitrary<ExactWater> = fc
  .record({ shape, measures, solids, sump: running, refugium: running })
  .map(({ sump, refugium, ...rest }) => ({ ...rest, ...(sump && { sump }), ...(refugium && { refugium }) }))
const waterIn = (measured: ExactWater): number => {
  const amount = exactLitres(measured)
  if (amount === undefined) throw new Error('no volume')
  return amount
}
const nearly = 1e-9

test('more sand or more rock never leaves more water, and never less than runs in sump and refugium', () => {
  const cases = tally('really less', 'nothing left in the display', 'water elsewhere')
  const law = fc.property(exact, cm(0, 20), cm(0, 200), (tank, sand, rock) => {
    const { sandDepth = 0, rockKg = 0 } = tank.solids.by === 'sandAndRock' ? tank.solids : {}
    const before = waterIn({ ...tank, solids: { by: 'sandAndRock', sandDepth, rockKg } })
    const more = { by: 'sandAndRock', sandDepth: sandDepth + sand, rockKg: rockKg + rock } as const
    const after = waterIn({ ...tank, solids: more })
    const elsewhere = [tank.sump, tank.refugium].reduce((sum, part) => sum + (part ? litres(part) : 0), 0)
    expect(after).toBeLessThanOrEqual(before + nearly)
    expect(after).toBeGreaterThanOrEqual(elsewhere - nearly)
    cases.note('water elsewhere', elsewhere > 0)
    cases.note('really less', after < before)
    cases.note('nothing left in the display', after === elsewhere)
  })
  holds(law)
  cases.expectAtLeast(5)
})

test('thicker glass, a thicker base and a lower waterline never hold more, and none holds more than the outside', () => {
  const outside = exact.filter(({ measures: { taken } }) => taken === 'outside')
  const law = fc.property(outside, cm(0, 20), cm(0, 20), cm(0, 10), (tank, glass, base, down) => {
    const { measures: was } = tank
    if (was.taken !== 'outside') throw new Error('outside only')
    const bare = { shape: tank.shape, solids: { by: 'share', share: 0 } } as const
    const before = waterIn({ ...bare, measures: was })
    const now = { ...was, glass: was.glass + glass, base: was.base + base, down: was.down + down }
    expect(waterIn({ ...bare, measures: now })).toBeLessThanOrEqual(before + nearly)
    expect(before).toBeLessThanOrEqual((grossLitres({ ...bare, measures: was }) ?? 0) + nearly)
  })
  holds(law)
})

test('the true volume lies in its range', () => {
  const cases = tally('a range')
  const law = fc.property(exact, (tank) => {
    const water: TankWater = { about: true, doseBy: 'true', exact: tank }
    const range = trueRange(water)
    if (!range) return
    expect(range.low).toBeLessThanOrEqual(waterIn(tank) + nearly)
    expect(range.high).toBeGreaterThanOrEqual(waterIn(tank) - nearly)
    cases.note('a range', range.low < range.high)
  })
  holds(law)
  cases.expectAtLeast(20)
})

test('noted the older way or in full, the same measurements are the same water', () => {
  const cases = tally('the older way', 'in full', 'in full for its refugium alone')
  const law = fc.property(exact, (tank) => {
    const noted = noteMeasures(tank)
    const water: TankWater = { about: true, doseBy: 'true', ...noted }
    expect(measuresOf(water)).toEqual(tank)
    const real = trueWater(water)
    expect(real ? litres(real) : 0).toBe(waterIn(tank))
    cases.note('the older way', noted.inside !== undefined)
    cases.note('in full', noted.exact !== undefined)
    const { refugium, ...rest } = tank
    cases.note('in full for its refugium alone', refugium !== undefined && noteMeasures(rest).inside !== undefined)
  })
  holds(law, 1000)
  cases.expectAtLeast(10)
})

test('measurements that pass leave water in the display', () => {
  const cases = tally('pass', 'refused')
  const law = fc.property(exact, (tank) => {
    const checked = checkMeasures(tank)
    const { sump: _, refugium: __, ...display } = tank
    if (checked.ok) expect(waterIn(display)).toBeGreaterThan(0)
    cases.note(checked.ok ? 'pass' : 'refused', true)
  })
  holds(law)
  cases.expectAtLeast(5)
})
