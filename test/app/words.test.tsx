/** Sentences at their edges: nothing taken, one hour, three decimals, a reason with an odd name. */
import { expect, test } from 'vitest'
import { entryText } from '../../app/words/entries.ts'
import { usedTrayWords } from '../../app/words/moving.ts'
import { bottleShort } from '../../app/words/names.ts'
import { unloggedWords, yesWords } from '../../app/words/nights.ts'
import { times } from '../../app/words/numbers.ts'
import { reasonText } from '../../app/words/reasons.ts'
import { refusalText } from '../../app/words/refusals.ts'
import { openTrayWords, saysWords, shakeWords, sinceWords } from '../../app/words/tonight.ts'
import {
  type BottleId,
  countPortions,
  day,
  keptGoing,
  type PlanId,
  readNumber,
  shakes,
  tonight,
} from '../../core/index.ts'
import { at, given, london, refusalOf } from '../support/given.ts'
import {
  blueClip,
  bottleOf,
  cockle,
  dose,
  firstBottle,
  greenPlan,
  lab,
  mL,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const reading = { today: day('2027-01-06'), zone: london }
/** Amounts are kept on one line by spaces that do not break. */
const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ')

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

test('the nights of two tanks are counted for each, and an answer for one night bears its name', () => {
  const book = given(
    lab,
    tankOf(cockle, usGal(200)),
    planOf({ first: '2027-01-02', amount: 1 }),
    planOf({ first: '2027-01-03', amount: 1, every: 1, tank: cockle, plan: 'cockleplan' as PlanId }),
  )
  const said = (now: string, lines = tonight(book.world(), at(now))) =>
    plain(unloggedWords(lines, day(now.slice(0, 10)), true))
  expect(said('2027-01-06 20:00')).toBe(
    'No entry, 2 January to 5 January: two dose nights for longgallery and three for cockle. What happened?',
  )
  expect(said('2027-01-03 20:00')).toBe('Last night, longgallery and cockle: dosed or not?')
  expect(yesWords(day('2027-01-05'), day('2027-01-06'))).toBe('Yes, last night')
})

test('kept going over a count takes what came after it, and the sentence says why it is less than was given', () => {
  const book = given(
    lab,
    planOf({ first: '2027-01-02', amount: 0.65, every: 1 }),
    onHand({ portions: 20, each: 1, frozen: '2026-12-05' }),
  )
  const now = at('2027-01-04 20:00')
  const answer = () => {
    const rounds = [{ plan: greenPlan, nights: ['2027-01-02', '2027-01-03'].map(day) }]
    book.does((world) => keptGoing(world, rounds, now))
    const entry = book.entries().at(-1)
    if (!entry) throw new Error('nothing was written')
    return [plain(entryText(entry.fact, book.world(), now, reading)), saysWords('answered', [entry], book.world())]
  }
  book.does((world) => countPortions(world, { lot: blueClip, counted: 19 }, at('2027-01-03 12:00')))
  expect(answer()).toEqual([
    'Gave longgallery 1.3 mL of greenfood for two nights, 2 January to 3 January: 1 portion from blue clip; the rest was out already when it was counted.',
    'Noted for those nights. What was out already when it was counted is not taken again.',
  ])
})

test('kept going without a count takes a portion a night, and says no more than that', () => {
  const book = given(
    lab,
    planOf({ first: '2027-01-02', amount: 0.65, every: 1 }),
    onHand({ portions: 20, each: 1, frozen: '2026-12-05' }),
  )
  const now = at('2027-01-04 20:00')
  const rounds = [{ plan: greenPlan, nights: ['2027-01-02', '2027-01-03'].map(day) }]
  book.does((world) => keptGoing(world, rounds, now))
  const entry = book.entries().at(-1)
  expect(entry && plain(entryText(entry.fact, book.world(), now, reading))).toBe(
    'Gave longgallery 1.3 mL of greenfood for two nights, 2 January to 3 January: 2 portions from blue clip.',
  )
  expect(entry && saysWords('answered', [entry], book.world())).toBe('Noted for those nights.')
})

test('of several trays the one in use is told by its number and its turn, and one alone by neither', () => {
  const said = (...asked: Parameters<typeof usedTrayWords>) => plain(usedTrayWords(...asked)).split(':')[0]
  expect(said(1, 12, 'open', 2)).toBe('Tray 2, the open one')
  expect(said(1, 24, 'next', 2)).toBe('Tray 2, the next one')
  expect(said(0, 24, undefined, 2)).toBe('Tray 1')
  expect(said(0, 9, 'open', 1)).toBe('The open tray')
  expect(said(0, 24, 'next', 1)).toBe('The tray')
  const tray = { tray: 1, holds: 12, rows: 3, columns: 8, filled: 24, wells: [], cuts: [] }
  expect([1, 2].map((trays) => plain(openTrayWords(tray, true, trays)))).toEqual([
    '12 portions in the open tray.',
    '12 portions in the open tray, tray 2.',
  ])
})
