/** How long food is good, and when it may be frozen. Checked only against our own worked examples: calendar days by hand. */
import { describe, expect, test } from 'vitest'
import {
  addDays,
  type BottleShelved,
  day,
  type FreezeRecordAsked,
  freezingWindow,
  lotLastGood,
  planFreezing,
  portionsCover,
  recordFreezing,
  residueOf,
  stock,
  type World,
} from '../../../core/index.ts'
import { at, type Book, done, given, london, refusalOf } from '../../support/given.ts'
import { blueClip, bottleOf, firstBottle, greenFood, kitchenFreezer, lab, mL, planOf } from '../../support/givenLab.ts'

const bottleOn = (world: World, today: string): BottleShelved => {
  const shelved = stock(world, at(`${today} 19:30`), day(today))
    .flatMap(({ bottles }) => bottles)
    .find(({ bottle }) => bottle.id === firstBottle)
  if (!shelved) throw new Error('the bottle is not in stock')
  return shelved
}
const freeze = (book: Book, frozenOn: string, more: Partial<FreezeRecordAsked> = {}, on = frozenOn) =>
  recordFreezing(
    book.world(),
    {
      bottle: firstBottle,
      lot: blueClip,
      mark: 'blue clip',
      portions: 96,
      each: mL(1),
      frozenOn: day(frozenOn),
      kept: { as: 'loose' },
      place: kitchenFreezer,
      ...more,
    },
    { now: at(`${on} 20:15`), zone: london },
  )
const lastGoodFrozenOf = (book: Book) => {
  const world = book.world()
  const lot = world.lots.get(blueClip)
  const food = world.foods.get(greenFood)?.[0]
  return lot && food && lotLastGood(lot, food)
}

describe('a bottle received and opened on 5 January 2027', () => {
  const opened = () => given(lab, bottleOf({ holds: 120, received: '2027-01-05', opened: '2027-01-05' }))

  test.each([
    { on: '2027-02-18', keeping: { is: 'good', days: 15 } },
    { on: '2027-02-19', keeping: { is: 'useSoon', days: 14 } },
    { on: '2027-03-05', keeping: { is: 'lastDay' } },
    { on: '2027-03-06', keeping: { is: 'pastItsUsualTime', days: 1 } },
    { on: '2027-03-20', keeping: { is: 'past', days: 15 } },
  ])('is $keeping.is on $on', ({ on, keeping }) => {
    expect(bottleOn(opened().world(), on)).toMatchObject({ lastGood: '2027-03-05', keeping })
  })

  test('may be frozen on its last good day, for two years', () => {
    const book = opened()
    book.note(...done(freeze(book, '2027-03-05')))
    expect(lastGoodFrozenOf(book)).toBe('2029-03-05')
  })

  test('may be frozen a day late with one touch, for one year', () => {
    const late = opened()
    expect(refusalOf(freeze(late, '2027-03-06'))).toEqual({ why: 'frozenLate', lastGood: '2027-03-05', days: 1 })
    late.note(...done(freeze(late, '2027-03-06', { lateIsFine: true })))
    expect(late.world().lots.get(blueClip)?.made).toMatchObject({ late: true })
    expect(lastGoodFrozenOf(late)).toBe('2028-03-06')
  })
})

test('two months from 31 December end on 28 February', () => {
  const world = given(lab, bottleOf({ holds: 120, received: '2026-12-31', opened: '2026-12-31' })).world()
  expect(bottleOn(world, '2027-01-01').lastGood).toBe('2027-02-28')
})

test('freezing before opening is refused with both days, and the other reading of the digits offered once it has come', () => {
  const book = given(lab, bottleOf({ holds: 120, opened: '2027-04-10' }))
  const before = {
    why: 'outOfOrder',
    before: 'opened',
    beforeDay: '2027-04-10',
    after: 'frozen',
    afterDay: '2027-04-08',
  }
  expect(refusalOf(freeze(book, '2027-04-08', {}, '2027-04-11'))).toEqual({ ...before, swapped: undefined })
  expect(refusalOf(freeze(book, '2027-04-08', {}, '2027-08-05'))).toEqual({ ...before, swapped: '2027-08-04' })
  expect(book.world().lots.size).toBe(0)
})

test('a bottle that arrived on 12 January is not too late on 1 March, and makes 145 portions for 290 nights', () => {
  const bottle = bottleOf({ holds: 150, received: '2027-01-12', opened: '2027-01-20', seen: at('2027-01-20 18:00') })
  const world = given(lab, bottle, planOf({ first: '2027-03-01', amount: 1 })).world()
  const { bottle: known, food } = bottleOn(world, '2027-03-01')
  expect(freezingWindow(known, food, day('2027-03-01'))).toEqual({ is: 'open', until: '2027-03-12', days: 11 })
  expect(freezingWindow(known, food, addDays(day('2027-03-12'), 1))).toEqual({ is: 'over', since: '2027-03-12' })
  const residue = residueOf(known, food)
  expect(residue).toBe(4500)
  const asked = { inBottle: mL(150), residue, keepFresh: mL(0), portion: mL(1), well: mL(1.2), wellsPerTray: 24 }
  const { portions } = done(planFreezing(asked))
  expect(portions).toBe(145)
  expect(portionsCover(world, greenFood, { each: mL(1), count: portions }, at('2027-03-01 19:30'))).toBe(290)
})

test('a bottle written down in the afternoon and frozen that day is emptied by it, even if that is written a day later', () => {
  const book = given(lab, bottleOf({ holds: 120, received: '2027-01-05', seen: at('2027-01-05 15:30') }))
  book.note(...done(freeze(book, '2027-01-05', {}, '2027-01-06')))
  expect(book.world().bottles.get(firstBottle)).toMatchObject({ left: 24_000, frozen: 96_000 })
})

test('a bottle that looked half full on the 9th has already lost what was frozen on the 7th', () => {
  const half = { full: 0.5, received: '2027-01-05', opened: '2027-01-05', seen: at('2027-01-09 16:10') }
  const book = given(lab, bottleOf({ holds: 120, ...half }))
  book.note(...done(freeze(book, '2027-01-07', { portions: 48 }, '2027-01-10')))
  expect(book.world().bottles.get(firstBottle)).toMatchObject({ left: 60_000, frozen: 48_000 })
})

describe('a bottle of 120 mL of which 14 mL stay fresh', () => {
  const world = given(lab, bottleOf({ holds: 120, received: '2027-01-05' })).world()
  const { bottle, food } = bottleOn(world, '2027-01-06')
  const asked = {
    inBottle: mL(120),
    residue: residueOf(bottle, food),
    keepFresh: mL(14),
    portion: mL(1),
    well: mL(1.2),
    wellsPerTray: 24,
  }

  test('makes 102 portions in five trays, with 0.4 mL over', () => {
    expect(done(planFreezing(asked))).toEqual({ portions: 102, trays: 5, rounds: 1, over: 400 })
  })
  test('takes three rounds with two trays', () => {
    expect(done(planFreezing({ ...asked, traysOwned: 2 }))).toMatchObject({ trays: 5, rounds: 3 })
  })
  test('makes 113 portions of 0.9 mL in wells of 1 mL, which no larger one fits', () => {
    expect(refusalOf(planFreezing({ ...asked, well: mL(1) }))).toEqual({ why: 'wellTooSmall', most: 900 })
    expect(done(planFreezing({ ...asked, well: mL(1), portion: mL(0.9) })).portions).toBe(113)
  })
})
