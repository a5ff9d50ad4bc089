/** Parts of lots behind other doors: no portion is lost, whatever the clocks say. Counts by hand. */
import { expect, test } from 'vitest'
import {
  type Entry,
  type Fact,
  fold,
  type LotId,
  movePortions,
  type PortionsMoved,
  strikeOut,
  type World,
} from '../../../core/index.ts'
import { at, given, labPhone, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  boathouseFreezer,
  dose,
  kitchenFreezer,
  kitchenFridge,
  lab,
  onHand,
  portionOf,
  redClip,
} from '../../support/givenLab.ts'
import { withPortions } from '../../support/givenRound.ts'

const third = 'thirdclip' as LotId
const counts = (world: World) => Object.fromEntries([...world.lots].map(([id, { left }]) => [id, left]))
const moved = (when: string, more: Partial<PortionsMoved>): PortionsMoved => ({
  kind: 'portionsMoved',
  at: at(when),
  from: blueClip,
  lot: redClip,
  mark: 'red clip',
  count: 9,
  kept: { as: 'loose' },
  to: boathouseFreezer,
  ...more,
})
const begun = () => withPortions('2027-03-02', 31)

test('a part of a part is there even if a quick clock dates the second move before the first', () => {
  const book = begun()
  book.note(moved('2027-03-01 18:00', { from: redClip, lot: third, count: 4 }), moved('2027-03-01 18:07', {}))
  expect(counts(book.world())).toEqual({ [blueClip]: 22, [redClip]: 5, [third]: 4 })
  expect(book.world().oddities).toEqual([])
})

test('the same move written twice is one move', () => {
  const book = begun()
  book.note(moved('2027-03-01 18:00', {}), moved('2027-03-01 18:01', {}))
  expect(counts(book.world())).toEqual({ [blueClip]: 22, [redClip]: 9 })
})

test('a part moved into itself, or in a ring of nothing, loses nothing', () => {
  const book = begun()
  book.note(moved('2027-03-01 18:00', { lot: blueClip }))
  expect(counts(book.world())).toEqual({ [blueClip]: 31 })
  book.note(
    moved('2027-03-01 19:00', { from: redClip, lot: third }),
    moved('2027-03-01 19:01', { from: third, lot: redClip }),
  )
  expect(counts(book.world())).toEqual({ [blueClip]: 31 })
  expect(book.world().oddities.map(({ what }) => what)).toEqual(['unknownStock', 'unknownStock'])
})

test('a part whose lot is crossed out is asked about, and so is what is taken from it', () => {
  const book = begun()
  const lot = book.entries().find(({ fact }) => fact.kind === 'portionsOnHand')
  book.note(moved('2027-03-01 18:00', {}))
  book.does(dose(at('2027-03-02 21:15'), portionOf(redClip, 1)))
  book.does((world) => strikeOut(world, { target: lot?.id ?? ('' as Entry<Fact>['id']) }, at('2027-03-03 09:00')))
  expect(book.world().lots.size).toBe(0)
  expect(book.world().oddities).toMatchObject([
    { what: 'unknownStock', thing: blueClip },
    { what: 'unknownStock', thing: redClip },
  ])
})

test('what a slow clock dates before a part was moved came out of that part', () => {
  const book = begun()
  book.note(moved('2027-03-02 21:20', {}))
  book.does(dose(at('2027-03-02 21:15'), portionOf(redClip, 1)))
  expect(counts(book.world())).toEqual({ [blueClip]: 22, [redClip]: 8 })
})

test('what was moved before the rest was looked over is not taken off what was seen', () => {
  const book = given(lab, onHand({ portions: 31, each: 1, frozen: '2027-01-05', seen: at('2027-03-02 12:00') }))
  book.note(moved('2027-03-01 18:00', {}))
  expect(counts(book.world())).toEqual({ [blueClip]: 31, [redClip]: 9 })
})

test('portions go behind a freezer door that is there, and a form sent twice moves them once', () => {
  const book = begun()
  const asked = { from: blueClip, lot: redClip, mark: 'red', count: 9, kept: { as: 'loose' as const } }
  const move = (to: typeof kitchenFridge) => (world: World) =>
    movePortions(world, { ...asked, to }, at('2027-03-01 18:00'))
  expect(refusalOf(move(kitchenFridge)(book.world()))).toEqual({ why: 'noSuchPlace' })
  book.does(move(boathouseFreezer))
  expect(refusalOf(move(boathouseFreezer)(book.world()))).toEqual({ why: 'alreadyThere' })
  book.note({ kind: 'placeRetired', at: at('2027-03-01 19:00'), place: kitchenFreezer })
  const back = { ...asked, from: redClip, lot: third, count: 2, to: kitchenFreezer }
  expect(refusalOf(movePortions(book.world(), back, at('2027-03-01 20:00')))).toEqual({ why: 'noSuchPlace' })
  expect(fold(book.entries()).lots.get(redClip)).toMatchObject({ place: boathouseFreezer, partOf: blueClip, left: 9 })
  expect(book.entries().every(({ id }) => id.endsWith(labPhone))).toBe(true)
})
