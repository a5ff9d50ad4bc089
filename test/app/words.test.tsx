/** Sentences at their edges: nothing taken, one hour, three decimals, a reason with an odd name. */
import { expect, test } from 'vitest'
import { entryText } from '../../app/words/entries.ts'
import { bottleShort } from '../../app/words/names.ts'
import { times } from '../../app/words/numbers.ts'
import { reasonText } from '../../app/words/reasons.ts'
import { refusalText } from '../../app/words/refusals.ts'
import { shakeWords, sinceWords } from '../../app/words/tonight.ts'
import { type BottleId, day, readNumber, shakes } from '../../core/index.ts'
import { at, given, london, refusalOf } from '../support/given.ts'
import { bottleOf, dose, firstBottle, lab, mL, planOf } from '../support/givenLab.ts'

const reading = { today: day('2027-01-06'), zone: london }
/** Amounts are kept on one line by spaces that do not break. */
const plain = (text: string): string => text.replace(/\u00a0/g, ' ')

test('a dose from something not on record says so', () => {
  const book = given(lab, planOf({ first: '2027-01-06', amount: 1 }))
  const evening = at('2027-01-06 21:22')
  book.does(dose(evening, { taken: [], amount: mL(1) }))
  const fact = book.entries().at(-1)?.fact
  expect(fact && plain(entryText(fact, book.world(), evening, reading))).toBe(
    'Gave longgallery 1 mL of greenfood: from something not on record.',
  )
})

test('a bottle shaken an hour ago was shaken one hour ago', () => {
  const book = given(lab, bottleOf({ holds: 96, opened: '2027-01-05' }))
  book.note({ kind: 'bottlesShaken', at: at('2027-01-06 18:05'), bottles: [firstBottle] })
  const now = at('2027-01-06 19:20')
  const said = shakes(book.world(), now).map((shake) => plain(shakeWords(shake, 48, book.world(), now)))
  expect(said).toEqual(['The 96 mL bottle of greenfood was shaken one hour ago.'])
})

test('a number with two readings shows both of them whole, and how to type either', () => {
  const said = refusalText(refusalOf(readNumber('1.234')), reading)
  expect(said).toContain('1.234 or 1,234. Type 1.2340 or 1234.')
  expect(readNumber('1.2340')).toEqual({ ok: true, value: 1.234 })
})

test('a reason in her own words stays her own', () => {
  expect(reasonText('constructor')).toBe('constructor')
  expect(reasonText('thawed')).toBe('thawed')
})

test('how far above the range is said in two figures', () => {
  expect([1.25, 1.6666, 12.34, 1666.67].map((ratio) => plain(times(ratio)))).toEqual([
    '1.3 ×',
    '1.7 ×',
    '12 ×',
    '1,700 ×',
  ])
})

test('bottles of one size are told apart by their day, and those of one day by their order', () => {
  const [second, third] = ['second', 'third'] as BottleId[]
  const book = given(
    lab,
    bottleOf({ holds: 96, opened: '2027-01-05' }),
    bottleOf({ holds: 96, opened: '2027-01-05', ...(second && { bottle: second }) }),
    bottleOf({ holds: 96, opened: '2027-01-02', ...(third && { bottle: third }) }),
  )
  expect([...book.world().bottles.keys()].map((bottle) => plain(bottleShort(book.world(), bottle)))).toEqual([
    'the 96 mL bottle opened 2 January',
    'the 96 mL bottle opened 5 January, 1 of 2',
    'the 96 mL bottle opened 5 January, 2 of 2',
  ])
})

test('since when a dose is due is not said again under the question about that night', () => {
  const advice = 'Give the usual amount, no more: the small life grazes what is there for days.'
  expect(sinceWords(day('2027-01-05'), day('2027-01-06'), true)).toBe(advice)
  expect(sinceWords(day('2027-01-05'), day('2027-01-06'), false)).toBe(`Due since last night. ${advice}`)
})
