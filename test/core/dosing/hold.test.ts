/** A plan on hold, and going on. Checked only against our own worked examples, calendars by hand. */
import { expect, test } from 'vitest'
import { type Day, day, holdPlan } from '../../../core/index.ts'
import { at, type Book } from '../../support/given.ts'
import { dose, greenPlan, lineOf } from '../../support/givenLab.ts'
import { withPortions } from '../../support/givenRound.ts'

const fed = () => {
  const book = withPortions('2027-06-10')
  book.does(dose(at('2027-06-10 21:42')))
  return book
}
const hold = (book: Book, until: string, now: string) =>
  book.does((world) => holdPlan(world, { plan: greenPlan, until: until as Day }, at(now)))
const state = (book: Book, now: string) => lineOf(book.world(), at(now)).state

test('on hold nothing is due, and the night it ends on is, with a word that it has ended', () => {
  const book = fed()
  hold(book, '2027-06-20', '2027-06-11 19:00')
  expect(state(book, '2027-06-14 21:00')).toEqual({ is: 'held', until: '2027-06-20', next: '2027-06-20' })
  expect(state(book, '2027-06-20 21:00')).toEqual({ is: 'due', since: undefined, heldUntil: '2027-06-20' })
  book.does(dose(at('2027-06-20 21:10')))
  expect(state(book, '2027-06-22 21:00')).toEqual({ is: 'due', since: undefined, heldUntil: undefined })
})

test('whoever goes on early is not asked whether the hold is over, nor about the nights it held', () => {
  const book = fed()
  hold(book, '2027-06-20', '2027-06-11 19:00')
  hold(book, '2027-06-16', '2027-06-16 19:00')
  expect(state(book, '2027-06-16 21:00')).toEqual({ is: 'due', since: undefined, heldUntil: undefined })
  expect(lineOf(book.world(), at('2027-06-16 21:00')).unlogged).toEqual([])
  expect(state(book, '2027-06-17 21:00')).toMatchObject({ is: 'due', since: day('2027-06-16') })
})
