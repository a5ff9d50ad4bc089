import { expect, test } from 'vitest'
import { type BottleAsked, bottleLastGood, correctBottle, day, type World } from '../../../core/index.ts'
import { at, done, given, london, refusalOf } from '../../support/given.ts'
import { bottleOf, firstBottle, greenFood, greenPlan, kitchenFridge, lab, mL, planOf } from '../../support/givenLab.ts'

const poured = (world: World) => world.bottles.get(firstBottle)?.left
const asked: BottleAsked = {
  bottle: firstBottle,
  food: greenFood,
  size: { value: 120, unit: 'mL' },
  full: 1,
  receivedOn: day('2026-11-04'),
  openedOn: day('2026-11-04'),
  place: kitchenFridge,
}
const dose = (night: string, amount: number) => ({
  kind: 'doseGiven' as const,
  at: at(`${night} 21:35`),
  food: greenFood,
  served: [{ tank: planOf({ first: night, amount }).tank, plan: greenPlan, night: day(night), amount: mL(amount) }],
  taken: [{ from: 'bottle' as const, bottle: firstBottle, amount: mL(amount) }],
})
const corrected = { now: at('2026-11-21 18:15'), zone: london }

test('a corrected price leaves what was poured meanwhile poured', () => {
  const book = given(
    lab,
    bottleOf({ holds: 120, opened: '2026-11-04', received: '2026-11-04' }),
    dose('2026-11-07', 1.5),
  )
  book.does((world) => correctBottle(world, { ...asked, price: 'free' }, corrected))
  expect(poured(book.world())).toBe(118_500)
  expect(book.world().bottles.get(firstBottle)?.recorded.price).toBe('free')
})

test('a bottle corrected on the day it was recorded keeps the dose given in between', () => {
  const recorded = bottleOf({ holds: 120, opened: '2026-11-04', received: '2026-11-04', seen: at('2026-11-04 17:45') })
  const book = given(lab, recorded, dose('2026-11-04', 2.5))
  book.does((world) => correctBottle(world, asked, { now: at('2026-11-04 22:10'), zone: london }))
  expect(poured(book.world())).toBe(117_500)
})

test('a bottle found to have been begun counts what was poured since it was written down', () => {
  const recorded = bottleOf({ holds: 120, opened: '2026-11-04', received: '2026-11-04', seen: at('2026-11-10 17:45') })
  const book = given(lab, dose('2026-11-07', 1.5))
  book.noteAt(at('2026-11-10 17:45'), ...recorded(book.world()))
  book.note(dose('2026-11-13', 3.5))
  book.does((world) => correctBottle(world, { ...asked, full: 0.5 }, corrected))
  expect(poured(book.world())).toBe(56_500)
})

test('the old entry stays readable, crossed out', () => {
  const book = given(lab, bottleOf({ holds: 120, opened: '2026-11-04', received: '2026-11-04' }))
  const before = book.world().bottles.get(firstBottle)?.entry
  book.does((world) => correctBottle(world, { ...asked, size: { value: 240, unit: 'mL' } }, corrected))
  const { history, bottles } = book.world()
  expect(before && history.struck.has(before)).toBe(true)
  expect(bottles.get(firstBottle)?.left).toBe(240_000)
})

test('a day of opening noted by itself gives way to the corrected one', () => {
  const book = given(lab, bottleOf({ holds: 120, received: '2026-11-04' }))
  book.note({ kind: 'bottleOpened', at: at('2026-11-09 12:00'), bottle: firstBottle, openedOn: day('2026-11-09') })
  book.does((world) => correctBottle(world, { ...asked, openedOn: day('2026-11-08') }, corrected))
  const bottle = book.world().bottles.get(firstBottle)
  const food = book.world().foods.get(greenFood)?.at(-1)
  expect(bottle?.openedOn).toBe('2026-11-08')
  expect(bottle && food && bottleLastGood(bottle, food)).toBe('2027-01-04')
})

test('a correction is checked as a new bottle is', () => {
  const book = given(lab, bottleOf({ holds: 120, opened: '2026-11-04', received: '2026-11-04' }))
  const swapped = { ...asked, receivedOn: day('2026-11-12') }
  expect(refusalOf(correctBottle(book.world(), swapped, corrected))).toMatchObject({
    why: 'outOfOrder',
    after: 'opened',
  })
  expect(done(correctBottle(book.world(), asked, corrected)).map(({ kind }) => kind)).toEqual([
    'entryStruckOut',
    'bottleRecorded',
  ])
})
