/** Which night it is, and whether it is a dose night. Checked only against our own worked examples: calendars by hand. */
import { describe, expect, test } from 'vitest'
import { type Day, day, lightsOutOf, tonight } from '../../../core/index.ts'
import { at, type Book, london, refusalOf, zone } from '../../support/given.ts'
import {
  blueClip,
  dose,
  greenFood,
  greenPlan,
  lineOf,
  longGallery,
  planOf,
  portionOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'
import { nextOf, withPortions } from '../../support/givenRound.ts'

const nightsOf = (book: Book): readonly Day[] => [...(book.world().nights.get(greenPlan)?.keys() ?? [])]

test('a missed night asks for the usual amount the night after, and the round goes on from there', () => {
  const book = withPortions('2027-03-02')
  book.does(dose(at('2027-03-02 21:30')))
  const { state, servings } = lineOf(book.world(), at('2027-03-05 20:30'))
  expect(state).toEqual({ is: 'due', since: '2027-03-04' })
  expect(servings[0]?.amount).toBe(1000)
  book.does(dose(at('2027-03-05 21:30')))
  expect(nextOf(book, '2027-03-05 21:31')).toBe('2027-03-07')
  expect(book.world().fed.get(greenFood)).toEqual({ doses: 2, amount: 2000 })
})

describe('with lights-out at 21:30 and a dose due on 7 March', () => {
  const late = tankOf(longGallery, usGal(200), { lightsOut: '21:30' })
  test.each([
    { tapped: '2027-03-08 00:25', night: '2027-03-07', next: '2027-03-09' },
    { tapped: '2027-03-07 20:40', night: '2027-03-07', next: '2027-03-09' },
    { tapped: '2027-03-07 09:30', night: '2027-03-07', next: '2027-03-09' },
    { tapped: '2027-03-07 09:20', night: '2027-03-06', next: '2027-03-08' },
  ])('a touch at $tapped is for the night of $night', ({ tapped, night, next }) => {
    const book = withPortions('2027-03-05', 40, late)
    book.does(dose(at('2027-03-05 22:00')))
    book.does(dose(at(tapped)))
    expect(nightsOf(book)).toEqual(['2027-03-05', night])
    expect(nextOf(book, tapped)).toBe(next)
  })
})

test('47 hours over the change to summer time are two nights', () => {
  const book = withPortions('2027-03-27')
  const [first, second] = [at('2027-03-27 22:00'), at('2027-03-29 22:00')]
  expect(second - first).toBe(47 * 3_600_000)
  book.does(dose(first))
  expect(nextOf(book, '2027-03-28 22:00')).toBe('2027-03-29')
  expect(lineOf(book.world(), second).state).toEqual({ is: 'due', since: undefined })
  book.does(dose(second))
  expect(nightsOf(book)).toEqual(['2027-03-27', '2027-03-29'])
})

test('a dose of tomorrow has not come yet, one seven minutes ahead of the clock has', () => {
  const book = withPortions('2027-06-03')
  const asked = portionOf(blueClip, 1)
  const tomorrow = { ...asked, at: at('2027-06-04 21:00') }
  expect(refusalOf(dose(at('2027-06-03 21:40'), tomorrow)(book.world()))).toEqual({ why: 'notYet', at: tomorrow.at })
  book.does(dose(at('2027-06-03 21:40'), { ...asked, at: at('2027-06-03 21:47') }))
  expect(nightsOf(book)).toEqual(['2027-06-03'])
})

test('seen from Tokyo, a touch at five on Sunday morning is for Saturday night in London', () => {
  const tokyo = zone('Asia/Tokyo')
  const book = withPortions('2027-08-14')
  book.does(dose(at('2027-08-15 05:00', tokyo)))
  expect(nightsOf(book)).toEqual(['2027-08-14'])
  expect(lightsOutOf(day('2027-08-14'), lineOf(book.world(), at('2027-08-14 20:00')).tank)).toBe(
    at('2027-08-15 05:00', tokyo),
  )
  expect(at('2027-08-14 21:00', london)).toBe(at('2027-08-15 05:00', tokyo))
})

test('what is due stands first', () => {
  const book = withPortions('2027-06-10')
  book.note(planOf({ first: '2027-06-11', amount: 0.7, plan: `${greenPlan}2` as typeof greenPlan }))
  const lines = tonight(book.world(), at('2027-06-10 20:00')).map(({ plan, state }) => [plan.plan, state.is])
  expect(lines).toEqual([
    [greenPlan, 'due'],
    [`${greenPlan}2`, 'resting'],
  ])
})
