/** Whatever runs on a tank: what is switched off is switched on again, in an order that is safe. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { deviceSorts, moment, readStep, type SeedingStep, stepsOf, type WaterPlace } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'

const devices = fc
  .array(fc.record({ device: fc.constantFrom(...deviceSorts), stops: fc.boolean() }), { maxLength: 12 })
  .map((all) => all.map((each, i) => ({ ...each, key: `${each.device}-${i}` })))
const into = fc.constantFrom<WaterPlace>('display', 'sump', 'refugium')
const places = fc.uniqueArray(fc.record({ place: into, mayBeLit: fc.boolean() }), { selector: ({ place }) => place })
const pours = fc.array(fc.record({ into, bottles: fc.integer({ min: 1, max: 4 }) }), { minLength: 1, maxLength: 3 })
const off = moment(Date.UTC(2027, 5, 15, 20, 40))
const morning = moment(Date.UTC(2027, 5, 16, 6, 30))

test('every device that stops goes off once and on once, later; no other is touched', () => {
  const met = tally('a pump', 'a sock', 'two of a sort', 'a lit place', 'nothing stops')
  holds(
    fc.property(
      devices,
      places,
      pours,
      fc.constantFrom('before' as const, 'after' as const, 'half' as const),
      (runs, where, poured, waterOut) => {
        const steps = stepsOf({ devices: runs, places: where }, { pours: poured, waterOut, off, morning })
        const keys = steps.map(({ step }) => step)
        expect(new Set(keys).size).toBe(keys.length)
        const of = (key: string): readonly SeedingStep[] => steps.filter(({ step }) => readStep(step)?.key === key)
        for (const { key, stops } of runs) {
          const its = of(key)
          expect(its.map(({ does }) => does)).toEqual(
            !stops ? [] : key.startsWith('sock') ? ['out', 'in'] : ['off', 'on'],
          )
          const [first, last] = its
          if (first && last) expect(first.at).toBeLessThan(last.at)
        }
        const pumps = runs.filter(({ device, stops }) => stops && (device === 'return' || device === 'wave'))
        for (const { key } of pumps)
          for (const step of of(key)) if (step.does === 'on') expect(step.at - off).toBeLessThanOrEqual(3_600_000)
        // In the order of the clock, and every pour between off and on.
        expect(steps.map(({ at }) => at)).toEqual(steps.map(({ at }) => at).sort((a, b) => a - b))
        const pourAt = steps.filter(({ does }) => does === 'pour').map(({ at }) => at)
        expect(pourAt.every((at) => at > off && at < off + 3_600_000)).toBe(true)
        expect(pourAt).toHaveLength(new Set(poured.map((each) => each.into)).size)
        // The display is dark before anything else is poured into it, whatever was said of it.
        const dark = steps.some(({ step }) => step === 'dark-display')
        expect(dark).toBe(poured.some((each) => each.into === 'display'))
        met.note('a pump', pumps.length > 0)
        met.note(
          'a sock',
          runs.some(({ device, stops }) => device === 'sock' && stops),
        )
        met.note('two of a sort', new Set(runs.map(({ device }) => device)).size < runs.length)
        met.note(
          'a lit place',
          where.some(({ mayBeLit }) => mayBeLit),
        )
        met.note(
          'nothing stops',
          runs.every(({ stops }) => !stops),
        )
      },
    ),
  )
  met.expectAtLeast(20)
})

test('water is taken out before the pour, after it, or half and half', () => {
  const steps = (waterOut: 'before' | 'after' | 'half') =>
    stepsOf({ devices: [], places: [] }, { pours: [{ into: 'display', bottles: 1 }], waterOut, off, morning })
      .map(({ step }) => step)
      .filter((step) => /water|pour/.test(step))
  expect(steps('before')).toEqual(['waterOut', 'pour-display'])
  expect(steps('after')).toEqual(['pour-display', 'waterOutRest'])
  expect(steps('half')).toEqual(['waterOut', 'pour-display', 'waterOutRest'])
})
