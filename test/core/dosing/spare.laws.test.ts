/**
 * What can be given away is what nobody misses: each night up to the day it promises is lived through with and without it,
 * by the requests a person would use. No published value: the law is that the two agree, and that one more would be missed.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  addDays,
  type Day,
  describeOrdering,
  giveAway,
  type LotId,
  lasts,
  lotLastGood,
  momentAt,
  type PlanId,
  portionsLeft,
  type Spare,
  spareOf,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { type Book, london } from '../../support/given.ts'
import { anyHousehold, type Household, livedIn, nightAfter } from '../../support/givenHousehold.ts'
import { dose, greenFood, lineOf } from '../../support/givenLab.ts'

const bedtime = (night: Day) => momentAt(night, 1430, london)
const tonight = nightAfter(0)
const now = bedtime(tonight)

type Given = ReadonlyMap<LotId, number>
type Asked = { readonly household: Household; readonly leadDays: number; readonly cushionDays: number }

const bookOf = ({ household, ...days }: Asked, given: Given = new Map()): Book => {
  const book = livedIn(household)
  book.does(() => describeOrdering(days, now))
  for (const [lot, count] of given) book.does((world) => giveAway(world, { lot, count }, now))
  return book
}

/** What of the plans is met before a day; undefined where a tank went without. */
const livedThrough = (asked: Asked, until: Day, given: Given = new Map()): number | undefined => {
  const book = bookOf(asked, given)
  const plans = asked.household.plans.filter(({ retired }) => !retired).map(({ id }) => `plan${id}` as PlanId)
  let met = 0
  for (let night = tonight; night < until; night = addDays(night, 1))
    for (const plan of plans) {
      const { state, servings, plan: made, night: theirs } = lineOf(book.world(), bedtime(night), plan)
      if (theirs !== night) throw new Error(`${theirs} is not tonight`)
      if (state.is !== 'due') continue
      const [first] = servings
      if (!first) return undefined
      met += Math.min(first.amount, made.amount)
      book.does(dose(bedtime(night), { plan }))
    }
  return met
}
const givenBy = ({ lots }: Spare): Given => new Map(lots.map(({ lot, count }) => [lot, count]))

test('what is to spare is missed by no tank before an order has come, and one portion more would be', () => {
  const cases = tally(
    'something to spare',
    'nothing to spare',
    'all of it is kept',
    'some would go unused',
    'some keep longer',
    'the food ends sooner',
    'it ends sooner, and some would go unused',
    'several tanks',
    'portions of two sizes',
    'one more is missed',
    'one more leaves a night without',
    'one more makes a dose smaller',
  )
  const law = fc.property(
    fc.record({
      household: anyHousehold,
      leadDays: fc.integer({ min: 0, max: 9 }),
      cushionDays: fc.integer({ min: 0, max: 5 }),
    }),
    (asked) => {
      const { world } = bookOf(asked)
      const before = lasts(world(), greenFood, now)
      const spare = spareOf(world(), greenFood, tonight, now)
      const given = givenBy(spare)
      const good = [...world().lots.values()].filter(({ made }) => made.food === greenFood)
      if (!before) return
      const order = addDays(tonight, asked.leadDays + asked.cushionDays)
      expect(spare.short).toBe(before.bareNight < order)
      expect(spare.until).toBe(spare.short ? before.bareNight : order)

      const whole = livedThrough(asked, spare.until)
      const after = bookOf(asked, given).world()
      expect(lasts(after, greenFood, now)?.bareNight).toSatisfy((bare: Day) => bare >= spare.until)
      expect(livedThrough(asked, spare.until, given)).toSatisfy((met: number) => met >= (whole ?? Number.NaN))

      // Where the food ends sooner, only what would go unused is offered; what is past its day never is.
      for (const lot of spare.short ? [] : good) {
        const food = world().foods.get(greenFood)?.[0]
        const count = (given.get(lot.id) ?? 0) + 1
        if (!food || count > portionsLeft(lot) || (lotLastGood(lot, food) ?? tonight) < tonight) continue
        const met = livedThrough(asked, spare.until, new Map(given).set(lot.id, count))
        expect(met ?? -1).toBeLessThan(whole ?? 0)
        cases.note('one more is missed')
        cases.note('one more leaves a night without', met === undefined)
        cases.note('one more makes a dose smaller', met !== undefined)
      }
      cases.note('something to spare', given.size > 0)
      cases.note('nothing to spare', given.size === 0)
      cases.note('all of it is kept', given.size === 0 && good.length > 0)
      cases.note(
        'some would go unused',
        spare.lots.some(({ unused }) => unused > 0),
      )
      cases.note(
        'some keep longer',
        spare.lots.some(({ count, unused }) => count > unused),
      )
      cases.note('the food ends sooner', spare.short)
      cases.note('it ends sooner, and some would go unused', spare.short && given.size > 0)
      cases.note('several tanks', asked.household.plans.filter(({ retired }) => !retired).length > 1)
      cases.note('portions of two sizes', new Set(spare.lots.map(({ each }) => each)).size > 1)
    },
  )
  holds(law, 200)
  cases.expectAtLeast(3)
}, 120_000)
