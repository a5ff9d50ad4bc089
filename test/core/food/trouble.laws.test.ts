/** Laws of food in doubt. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  addDays,
  type FoodThing,
  type FoundAs,
  foodAt,
  freezerThawed,
  ifThawed,
  lasts,
  lotLastGood,
  type Moment,
  setAside,
  takeBack,
  thawedSpare,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { at, london } from '../../support/given.ts'
import { anyHousehold, firstNight, livedIn, nightAfter } from '../../support/givenHousehold.ts'
import { greenFood, kitchenFreezer } from '../../support/givenLab.ts'

const noon = (days: number): Moment => at(`${nightAfter(days)} 12:00`)
const founds = fc.array(fc.constantFrom<FoundAs>('icy', 'cold', 'warm', 'notKnown'), { minLength: 3, maxLength: 3 })

test('setting aside and taking back leaves the food as it was', () => {
  const met = tally('lot', 'bottle')
  holds(
    fc.property(anyHousehold, fc.nat(), (household, pick) => {
      const book = livedIn(household)
      const before = book.world()
      const things: FoodThing[] = [
        ...[...before.lots.keys()].map((lot) => ({ lot })),
        ...[...before.bottles.keys()].map((bottle) => ({ bottle })),
      ]
      const thing = things[pick % Math.max(1, things.length)]
      if (!thing) return
      met.note('lot' in thing ? 'lot' : 'bottle')
      book.does((world) => setAside(world, { thing }, noon(1)))
      expect('lot' in thing ? book.world().lots : book.world().bottles).not.toEqual(
        'lot' in thing ? before.lots : before.bottles,
      )
      book.does((world) => takeBack(world, { thing }, noon(2)))
      expect(book.world().lots).toEqual(before.lots)
      expect(book.world().bottles).toEqual(before.bottles)
      const [was, is] = [lasts(before, greenFood, noon(2)), lasts(book.world(), greenFood, noon(2))]
      expect([is?.doses, is?.bareNight]).toEqual([was?.doses, was?.bareNight])
    }),
    150,
  )
  met.expectAtLeast(20)
})

test('a thaw never lengthens a life, however often, and never lets food last longer', () => {
  const met = tally('twice', 'cold')
  holds(
    fc.property(anyHousehold, founds, founds, fc.integer({ min: 0, max: 3 }), (household, first, second, later) => {
      const book = livedIn(household)
      for (const [how, on] of [
        [first, firstNight],
        [second, addDays(firstNight, later)],
      ] as const) {
        const before = book.world()
        const lots = [...before.lots.keys()].map((lot, index) => ({ lot, found: how[index] ?? 'icy' }))
        if (lots.length === 0) return
        const now = noon(4)
        const asked = { place: kitchenFreezer, on, lots }
        const said = ifThawed(before, asked, now)
        book.does((world) => freezerThawed(world, asked, { now, zone: london }))
        const after = book.world()
        const food = foodAt(after, greenFood, now)
        if (!food) throw new Error('no food')
        for (const [id, lot] of after.lots) {
          const was = before.lots.get(id)
          const until = was && lotLastGood(was, food)
          const then = lotLastGood(lot, food)
          expect(until === undefined || (then !== undefined && then <= until)).toBe(true)
          // What is said before saving is what is then so.
          const told = said.lots.get(id)
          expect(told && lotLastGood(told, food)).toBe(then)
          expect(told?.aside?.because).toBe(lot.aside?.because)
          met.note('twice', was?.meltedOn !== undefined && lot.meltedOn !== undefined)
          met.note('cold', lot.meltedOn !== undefined)
        }
        const [lasted, lasting] = [lasts(before, greenFood, now), lasts(after, greenFood, now)]
        if (lasted && lasting) expect(lasting.doses).toBeLessThanOrEqual(lasted.doses)
        for (const [id, spare] of thawedSpare(after, now)) {
          expect(spare).toBeGreaterThan(0)
          expect(spare).toBeLessThanOrEqual(after.lots.get(id)?.left ?? 0)
        }
      }
    }),
    120,
  )
  met.expectAtLeast(20)
})
