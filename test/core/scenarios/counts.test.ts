/** How many are left. Checked only against our own worked examples: sums by hand. */
import { describe, expect, test } from 'vitest'
import {
  countPortions,
  portionsFound,
  portionsGone,
  portionsLeft,
  settleQuestion,
  strikeOut,
  type World,
} from '../../../core/index.ts'
import { at, done, given, refusalOf } from '../../support/given.ts'
import { blueClip, dose, greenFood, lab, lineOf, mL, onHand, planOf, portionOf } from '../../support/givenLab.ts'
import { withPortions } from '../../support/givenRound.ts'

const lotIn = (world: World) => {
  const lot = world.lots.get(blueClip)
  if (!lot) throw new Error('no such lot')
  return lot
}

test('one dosed, one spilt and one half used leave 99 of 102, and only two of them are doses', () => {
  const book = withPortions('2027-01-06', 102)
  book.does(dose(at('2027-01-06 21:20')))
  book.does((world) => portionsGone(world, { lot: blueClip, count: 1, fate: 'lost' }, at('2027-01-07 21:05')))
  book.does(dose(at('2027-01-08 21:31'), { ...portionOf(blueClip, 1), amount: mL(0.5) }))
  const world = book.world()
  expect(lotIn(world)).toMatchObject({ left: 99, fed: 2, gone: 1 })
  expect(world.fed.get(greenFood)).toEqual({ doses: 2, amount: 1500 })
})

describe('a dose from a bag that the book calls empty', () => {
  const emptied = () => {
    const plan = planOf({ first: '2027-01-06', amount: 1 })
    const book = given(lab, plan, onHand({ portions: 1, each: 1, frozen: '2027-01-05' }))
    book.does(dose(at('2027-01-06 21:20')))
    book.does(dose(at('2027-01-08 21:20'), portionOf(blueClip, 1)))
    return book
  }
  test('is kept, shows a count of none, and asks', () => {
    const world = emptied().world()
    expect(lineOf(world, at('2027-01-08 23:00')).state.is).toBe('done')
    expect(portionsLeft(lotIn(world))).toBe(0)
    expect(world.oddities).toMatchObject([{ what: 'trayEmptierThanBook', lot: blueClip, short: 1 }])
  })
  test('is settled by the one that was found', () => {
    const book = emptied()
    book.does((world) => portionsFound(world, { lot: blueClip, count: 1 }, at('2027-01-08 21:40')))
    expect(book.world().oddities).toEqual([])
    expect(lotIn(book.world()).left).toBe(0)
  })
})

test('crossing out a dose six seconds later brings back the portion and the due night', () => {
  const book = withPortions('2027-06-10')
  const [entry] = book.does(dose(at('2027-06-10 21:42')))
  expect(lotIn(book.world()).left).toBe(39)
  if (!entry) throw new Error('nothing was written')
  book.does((world) => strikeOut(world, { target: entry }, at('2027-06-10 21:42:06')))
  const world = book.world()
  expect(lotIn(world).left).toBe(40)
  expect(lineOf(world, at('2027-06-10 21:43'))).toMatchObject({ night: '2027-06-10', state: { is: 'due' } })
  expect([...world.history.struck.keys()]).toEqual([entry])
  expect(world.history.all.find(({ id }) => id === entry)?.fact.kind).toBe('doseGiven')
  expect(refusalOf(strikeOut(world, { target: entry }, at('2027-06-10 21:44')))).toEqual({ why: 'alreadyCrossedOut' })
})

test('a count by hand of 35 against 37 in the book is an entry of two fewer, and leaves the entries before it alone', () => {
  const book = given(lab, onHand({ portions: 37, each: 1, frozen: '2027-01-05' }))
  const before = book.entries()
  book.does((world) => countPortions(world, { lot: blueClip, counted: 35, why: 'broken' }, at('2027-02-01 18:00')))
  const lot = lotIn(book.world())
  expect(lot.left).toBe(35)
  expect(lot.observations).toMatchObject([{ found: 35, bookThen: 37, bookNow: 37 }])
  expect(book.entries().slice(0, -1)).toEqual(before)
  expect(book.entries().at(-1)?.fact).toMatchObject({ kind: 'portionsCounted', counted: 35, book: 37, why: 'broken' })
  expect(book.world().oddities).toEqual([])
})

test('a dose that arrives after the count shows that the gap has changed, until it is settled', () => {
  const book = given(lab, planOf({ first: '2027-01-06', amount: 1 }))
  book.note(...onHand({ portions: 37, each: 1, frozen: '2027-01-05' })(book.world()))
  book.does((world) => countPortions(world, { lot: blueClip, counted: 35 }, at('2027-02-01 18:00')))
  const late = done(dose(at('2027-01-31 21:10'))(book.world()))
  book.noteAt(at('2027-02-02 09:00'), ...late)
  expect(lotIn(book.world()).left).toBe(35)
  const [oddity] = book.world().oddities
  expect(oddity).toMatchObject({ what: 'countGapMoved', seen: { bookThen: 37, bookNow: 36 } })
  book.note(...settleQuestion(oddity?.key ?? '', at('2027-02-02 09:30')))
  expect(book.world().oddities).toEqual([])
})
