/** Nights without an entry, asked about before or after tonight's dose. Checked only against our own worked examples. */
import { expect, test } from 'vitest'
import { addDays, day, holdPlan, keptGoing, nightsByCount, stoppedFeeding } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import {
  blueClip,
  cockle,
  cocklePlan,
  dose,
  greenPlan,
  lab,
  lineOf,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'
import { withPortions } from '../../support/givenRound.ts'

const fed = () => {
  const book = withPortions('2027-10-01')
  book.does(dose(at('2027-10-01 21:12')))
  return book
}
const tonight = at('2027-10-15 21:00')
const after = at('2027-10-15 21:10')
const dosedFirst = () => {
  const book = fed()
  book.does(dose(tonight))
  return book
}
const open = (book: ReturnType<typeof fed>) => lineOf(book.world(), after).unlogged

test('a fortnight is still asked about when tonight was dosed first, and either answer ends it', () => {
  const nights = ['03', '05', '07', '09', '11', '13'].map((date) => `2027-10-${date}`)
  expect(lineOf(fed().world(), tonight).unlogged).toEqual(nights)
  expect(open(dosedFirst())).toEqual(nights)
  for (const answer of [keptGoing, stoppedFeeding]) {
    const book = dosedFirst()
    book.does((world) => answer(world, [{ plan: greenPlan, nights: open(book) }], after))
    expect(open(book)).toEqual([])
    expect(lineOf(book.world(), after).state).toMatchObject({ is: 'done', next: '2027-10-17' })
    expect(book.world().lots.get(blueClip)?.left).toBe(answer === keptGoing ? 32 : 38)
  }
})

test('what is noted for tonight answers for no night before it, and the question waits for its answer on later evenings', () => {
  const book = fed()
  const late = at('2027-10-04 21:00')
  const openAt = (now: string) => lineOf(book.world(), at(now)).unlogged
  expect(lineOf(book.world(), late).unlogged).toEqual(['2027-10-03'])
  book.does(dose(late))
  expect(openAt('2027-10-04 21:10')).toEqual(['2027-10-03'])
  expect(openAt('2027-10-05 21:00')).toEqual(['2027-10-03'])
  expect(openAt('2027-10-06 21:00')).toEqual(['2027-10-03'])
  expect(openAt('2027-10-09 21:00')).toEqual(['2027-10-03', '2027-10-06', '2027-10-08'])
  // Only the nights since the last dose make tonight late.
  expect(lineOf(book.world(), at('2027-10-06 21:00')).state).toMatchObject({ is: 'due', since: undefined })
  expect(lineOf(book.world(), at('2027-10-09 21:00')).state).toMatchObject({ is: 'due', since: '2027-10-06' })
})

test('one tank dosed tonight, the nights before it stay in the question for both', () => {
  const book = given(
    lab,
    tankOf(cockle, usGal(200)),
    planOf({ first: '2027-10-01', amount: 1, every: 1 }),
    planOf({ first: '2027-10-02', amount: 1, every: 1, tank: cockle, plan: cocklePlan }),
    onHand({ portions: 31, each: 1, frozen: '2027-01-05' }),
  )
  const now = at('2027-10-03 21:00')
  book.does(dose(now))
  expect(lineOf(book.world(), now).unlogged).toEqual(['2027-10-01', '2027-10-02'])
  expect(lineOf(book.world(), now, cocklePlan).unlogged).toEqual(['2027-10-02'])
  const next = at('2027-10-04 21:00')
  expect(lineOf(book.world(), next).unlogged).toEqual(['2027-10-01', '2027-10-02'])
})

test('of a night that is known and lies between nothing is said, whichever the answer', () => {
  const broken = () => {
    const book = fed()
    book.does(dose(at('2027-10-06 21:00')))
    return book
  }
  const now = at('2027-10-11 21:00')
  const nights = ['2027-10-03', '2027-10-05', '2027-10-08', '2027-10-10'].map(day)
  expect(lineOf(broken().world(), now).unlogged).toEqual(nights)
  const rounds = [{ plan: greenPlan, nights }]
  const ranges = [
    { from: '2027-10-03', to: '2027-10-05' },
    { from: '2027-10-08', to: '2027-10-10' },
  ]
  const stopped = broken()
  stopped.does((world) => stoppedFeeding(world, rounds, now))
  expect(
    stopped
      .entries()
      .slice(-2)
      .map(({ fact }) => fact),
  ).toMatchObject(ranges)
  expect(lineOf(stopped.world(), now).unlogged).toEqual([])
  const counted = broken()
  const lots = [{ lot: blueClip, counted: 36 }]
  counted.does((world) => nightsByCount(world, { rounds, lots }, now))
  expect(counted.entries().at(-1)?.fact).toMatchObject({ rounds: ranges })
  expect(lineOf(counted.world(), now).unlogged).toEqual([])
  expect(lineOf(counted.world(), at('2027-10-14 21:00')).unlogged).toEqual(['2027-10-12'])
})

test('nights on hold are no dose nights, those before the hold and after it are', () => {
  const book = fed()
  const hold = (until: string, now: string) =>
    book.does((world) => holdPlan(world, { plan: greenPlan, until: day(until) }, at(now)))
  hold('2027-10-20', '2027-10-06 12:00')
  hold('2027-10-11', '2027-10-11 19:00')
  expect(lineOf(book.world(), at('2027-10-09 21:00')).unlogged).toEqual(['2027-10-03', '2027-10-05'])
  const open = ['2027-10-03', '2027-10-05', '2027-10-11', '2027-10-13']
  expect(lineOf(book.world(), at('2027-10-14 21:00')).unlogged).toEqual(open)
  book.does(dose(at('2027-10-14 21:00')))
  expect(lineOf(book.world(), at('2027-10-15 21:00')).unlogged).toEqual(open)
})

test('nothing is asked of nights whose rhythm changed between, nor of what nobody remembers', () => {
  const book = fed()
  book.note({ ...planOf({ first: '2027-10-01', amount: 1, every: 1 }), at: at('2027-10-04 12:00') })
  book.does(dose(at('2027-10-08 21:00')))
  expect(lineOf(book.world(), at('2027-10-08 21:10')).unlogged).toHaveLength(6)
  expect(lineOf(book.world(), at('2027-10-09 21:00')).unlogged).toEqual([])
  const old = fed()
  old.does(dose(at('2027-10-04 21:00')))
  for (let night = day('2027-10-06'); night <= '2027-12-07'; night = addDays(night, 2))
    old.does(dose(at(`${night} 21:00`)))
  expect(lineOf(old.world(), at('2027-12-02 21:00')).unlogged).toEqual(['2027-10-03'])
  expect(lineOf(old.world(), at('2027-12-04 21:00')).unlogged).toEqual([])
})
