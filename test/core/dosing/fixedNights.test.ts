/**
 * Fixed nights against a calendar by hand, and against ECMAScript's Temporal (temporal-polyfill) over every change of the
 * clocks: whatever was given or missed, a dose night is one so many days on from the first.
 */
import { Temporal } from 'temporal-polyfill'
import { expect, test } from 'vitest'
import { addDays, day, lasts, type PlanId, tonight } from '../../../core/index.ts'
import { at, given, zone } from '../../support/given.ts'
import { dose, greenFood, lab, lineOf, longGallery, onHand, planOf, tankOf, usGal } from '../../support/givenLab.ts'

const fixed = { ...planOf({ first: '2027-03-21', amount: 1, every: 3 }), rhythm: 'fixedNights' as const }
const begun = (where = 'Europe/London') =>
  given(
    lab,
    tankOf(longGallery, usGal(200), { zone: zone(where) }),
    fixed,
    onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
  )

test('every third night from 21 March: 21, 24, 27, 30; one missed and given late puts off nothing', () => {
  const book = begun()
  const next = (now: string) => {
    const { state } = lineOf(book.world(), at(now))
    return 'next' in state ? state.next : state.is
  }
  book.does(dose(at('2027-03-21 21:15')))
  expect([next('2027-03-22 21:15'), next('2027-03-24 21:15')]).toEqual(['2027-03-24', 'due'])
  // 24 March goes by. On the 25th it is over, and still asked about.
  expect(lineOf(book.world(), at('2027-03-25 21:15'))).toMatchObject({
    state: { is: 'resting', next: '2027-03-27' },
    unlogged: ['2027-03-24'],
  })
  book.does(dose(at('2027-03-26 21:15')))
  expect([next('2027-03-26 22:00'), next('2027-03-27 21:15')]).toEqual(['2027-03-27', 'due'])
  expect(next('2027-03-28 21:15')).toBe('2027-03-30')
  expect(lasts(book.world(), greenFood, at('2027-03-28 21:15'))?.lastNight).toBe(addDays(day('2027-03-30'), 37 * 3))
})

test('a hold ends on one of the fixed nights', () => {
  const book = begun()
  book.note({ kind: 'planHeld', at: at('2027-03-22 12:00'), plan: fixed.plan, until: day('2027-03-25') })
  expect(lineOf(book.world(), at('2027-03-25 21:15')).state).toMatchObject({ is: 'resting', next: '2027-03-27' })
})

test.each(['Europe/London', 'America/St_Johns', 'Australia/Lord_Howe', 'Africa/Casablanca'])(
  'in %s the nights of a year are three days apart, whenever the clocks change',
  (where) => {
    const world = begun(where).world()
    const first = Temporal.PlainDate.from('2027-03-21')
    for (let days = 0; days < 366; days += 1) {
      const evening = first.add({ days }).toPlainDateTime(Temporal.PlainTime.from('21:15')).toZonedDateTime(where)
      const [line] = tonight(world, evening.epochMilliseconds as Parameters<typeof tonight>[1])
      const isDue = days % 3 === 0
      expect([line?.night, line?.state.is === 'due']).toEqual([first.add({ days }).toString(), isDue])
    }
  },
)

test('a plan without fixed nights moves with the last dose', () => {
  const book = begun()
  const moving = 'moving' as PlanId
  book.note(planOf({ first: '2027-03-21', amount: 1, every: 3, plan: moving }))
  book.does(dose(at('2027-03-22 21:15'), { plan: moving }))
  expect(lineOf(book.world(), at('2027-03-23 21:15'), moving).state).toMatchObject({ next: '2027-03-25' })
})
