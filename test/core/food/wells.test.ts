/** Wells touched, trays moved and cut: the drawing follows her finger, the figures do not. Sums by hand. */
import { expect, test } from 'vitest'
import {
  countPortions,
  cutTray,
  fillTrays,
  type LotId,
  movePortions,
  nextWell,
  portionsGone,
  touchWell,
  traysNow,
  type World,
} from '../../../core/index.ts'
import { at, type Book, given, refusalOf } from '../../support/given.ts'
import { blueClip, boathouseFreezer, lab, onHand } from '../../support/givenLab.ts'

const part = 'part2' as LotId
const now = at('2026-10-01 20:00')
const lotOf = (world: World, id: LotId = blueClip) => {
  const lot = world.lots.get(id)
  if (!lot) throw new Error(`no lot ${id}`)
  return lot
}
const wells = (book: Book, id: LotId = blueClip) => {
  const trays = traysNow(lotOf(book.world(), id))
  if (!trays) throw new Error('not in trays')
  return trays
}
const touch = (book: Book, tray: number, ...touched: readonly number[]) => {
  for (const well of touched) book.does((world) => touchWell(world, { lot: blueClip, tray, well }, now))
}
const out = (book: Book, tray: number) =>
  wells(book)
    .trays.find((each) => each.tray === tray)
    ?.wells.flatMap((full, well) => (full ? [] : [well]))

/** Seven trays of fifteen, 17 taken: the last is empty, two are out of the one before. */
const begun = (): Book => {
  const book = given(
    lab,
    onHand({ portions: 105, each: 1, frozen: '2026-09-04', kept: { as: 'trays', trays: fillTrays(105, 3, 5) } }),
  )
  book.does((world) => portionsGone(world, { lot: blueClip, count: 17, fate: 'lost' }, at('2026-09-30 20:00')))
  return book
}

test('a touched well is the one that is out, instead of one the book only supposed', () => {
  const book = begun()
  expect(out(book, 5)).toEqual([13, 14])
  touch(book, 5, 0)
  expect(out(book, 5)).toEqual([0, 14])
  touch(book, 5, 7)
  expect(out(book, 5)).toEqual([0, 7])
  expect(wells(book)).toMatchObject({ full: 5, beyondBook: 0, open: { holds: 13 } })
  expect(lotOf(book.world()).left).toBe(88)
})

test('touched again, it is in after all', () => {
  const book = begun()
  touch(book, 5, 0, 0)
  expect(out(book, 5)).toEqual([13, 14])
})

test('a well that is out by the book alone says to touch the one it came from', () => {
  const world = begun().world()
  expect(refusalOf(touchWell(world, { lot: blueClip, tray: 5, well: 14 }, now))).toEqual({ why: 'outByTheBook' })
  expect(refusalOf(touchWell(world, { lot: blueClip, tray: 5, well: 15 }, now))).toEqual({ why: 'noSuchWell' })
  expect(refusalOf(touchWell(world, { lot: blueClip, tray: 9, well: 0 }, now))).toEqual({ why: 'noSuchTray' })
})

test('touches beyond the book are told, and the tray that is used up is not filled again by them', () => {
  const book = begun()
  touch(book, 5, 0, 1, 2)
  expect(wells(book)).toMatchObject({ full: 5, beyondBook: 1, open: { tray: 5, holds: 12 } })
  expect(out(book, 6)).toHaveLength(15)

  book.does((world) => countPortions(world, { lot: blueClip, counted: 87, why: 'notNoted' }, now))
  expect(wells(book)).toMatchObject({ beyondBook: 0, open: { holds: 12 } })
  expect(out(book, 5)).toEqual([0, 1, 2])
})

test('the next portion comes out of the last well that still holds one', () => {
  const book = begun()
  touch(book, 5, 12, 0)
  const open = wells(book).open
  expect(out(book, 5)).toEqual([0, 12])
  expect(open && nextWell(open)).toBe(14)
  book.does((world) => portionsGone(world, { lot: blueClip, count: 1, fate: 'lost' }, now))
  expect(out(book, 5)).toEqual([0, 12, 14])
})

test('a later count that has more than the touched wells leave outranks them', () => {
  const book = begun()
  touch(book, 5, 0, 1, 2)
  book.does((world) => countPortions(world, { lot: blueClip, counted: 105 }, now))
  expect(wells(book)).toMatchObject({ full: 7, beyondBook: 0, open: undefined })
})

test('whole trays that move leave the open one as it was', () => {
  const book = begun()
  touch(book, 5, 0, 7)
  const kept = { as: 'trays', trays: fillTrays(30, 3, 5) } as const
  book.does((world) =>
    movePortions(world, { from: blueClip, to: boathouseFreezer, count: 30, lot: part, mark: 'part 2', kept }, now),
  )
  expect(lotOf(book.world())).toMatchObject({ left: 58 })
  expect(wells(book)).toMatchObject({ full: 3, beyondBook: 0, open: { tray: 5, holds: 13 } })
  expect(out(book, 5)).toEqual([0, 7])
  expect(lotOf(book.world(), part)).toMatchObject({ left: 30, place: boathouseFreezer })
  expect(wells(book, part)).toMatchObject({ full: 2, open: undefined })
})

test('the open tray may move as well; what is left is as full as it was', () => {
  const book = begun()
  const kept = { as: 'trays', trays: [{ rows: 3, columns: 5, filled: 13 }] } as const
  book.does((world) =>
    movePortions(world, { from: blueClip, to: boathouseFreezer, count: 13, lot: part, mark: 'part 2', kept }, now),
  )
  expect(wells(book)).toMatchObject({ full: 5, open: undefined, beyondBook: 0 })
  expect(wells(book, part)).toMatchObject({ full: 0, open: { holds: 13 } })
})

test('a tray is cut after its columns and keeps its portions', () => {
  const book = begun()
  book.does((world) => cutTray(world, { lot: blueClip, tray: 5, after: [2] }, now))
  expect(wells(book).open).toMatchObject({ holds: 13, cuts: [2] })
  book.does((world) => cutTray(world, { lot: blueClip, tray: 5, after: [] }, now))
  expect(wells(book).open).toMatchObject({ cuts: [] })
})
