/** Nights skipped, forgotten or never written down. Checked only against our own worked examples: calendars by hand. */
import { describe, expect, test } from 'vitest'
import { countPortions, type Day, type DoseGiven, day, doNotKnow, type Fact, skipNight } from '../../../core/index.ts'
import { at, type Book, given, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  dose,
  greenFood,
  greenPlan,
  lab,
  lineOf,
  longGallery,
  mL,
  onHand,
  planOf,
} from '../../support/givenLab.ts'

const withPortions = (first: string, portions = 40, ...more: readonly (readonly Fact[])[]) =>
  given(lab, ...more, planOf({ first, amount: 1 }), onHand({ portions, each: 1, frozen: '2027-01-05' }))
const _nightsOf = (book: Book): readonly Day[] => [...(book.world().nights.get(greenPlan)?.keys() ?? [])]
const nextOf = (book: Book, now: string) => {
  const { state } = lineOf(book.world(), at(now))
  return state.is === 'due' ? 'due' : state.next
}

test('a night skipped on purpose takes nothing, and the round goes on', () => {
  const book = withPortions('2027-06-10')
  book.does((world) => skipNight(world, { plan: greenPlan, why: 'cloudy water' }, at('2027-06-10 22:10')))
  expect(nextOf(book, '2027-06-10 22:11')).toBe('2027-06-12')
  expect(book.world().lots.get(blueClip)?.left).toBe(40)
  expect(book.world().fed.has(greenFood)).toBe(false)
})

test('a night nobody remembers is kept as just that, takes nothing, and the round goes on', () => {
  const book = withPortions('2027-06-10')
  book.does((world) => doNotKnow(world, { plan: greenPlan }, at('2027-06-10 23:10')))
  expect(lineOf(book.world(), at('2027-06-10 23:11')).state).toMatchObject({ is: 'unknown', next: '2027-06-12' })
  expect(book.world().lots.get(blueClip)?.left).toBe(40)
  book.does((world) => countPortions(world, { lot: blueClip, counted: 39 }, at('2027-06-11 12:00')))
  expect(book.world().lots.get(blueClip)?.left).toBe(39)
})

test('a night with a dose cannot be skipped', () => {
  const book = withPortions('2027-06-10')
  book.does(dose(at('2027-06-10 22:10')))
  const asked = skipNight(book.world(), { plan: greenPlan }, at('2027-06-10 22:20'))
  expect(refusalOf(asked)).toMatchObject({ why: 'alreadyGiven', night: '2027-06-10' })
})

describe('a fortnight without an entry after the night of 1 October', () => {
  const lastSeen = () => {
    const book = withPortions('2027-10-01', 31)
    book.does(dose(at('2027-10-01 21:12')))
    return book
  }

  test('leaves 30 portions and tonight due, if the feeding stopped', () => {
    const world = lastSeen().world()
    expect(world.lots.get(blueClip)?.left).toBe(30)
    expect(lineOf(world, at('2027-10-15 19:00'))).toMatchObject({
      night: '2027-10-15',
      state: { is: 'due', since: '2027-10-03' },
    })
  })

  test('is one entry of six nights, if it went on as usual', () => {
    const book = lastSeen()
    const nights = ['03', '05', '07', '09', '11', '13'].map((date) => day(`2027-10-${date}`))
    const asUsual: DoseGiven = {
      kind: 'doseGiven',
      at: at('2027-10-15 19:05'),
      food: greenFood,
      served: nights.map((night) => ({ tank: longGallery, plan: greenPlan, night, amount: mL(1) })),
      taken: [{ from: 'portions', lot: blueClip, count: 6 }],
    }
    book.note(asUsual)
    const world = book.world()
    expect(world.lots.get(blueClip)?.left).toBe(24)
    expect(world.fed.get(greenFood)).toEqual({ doses: 7, amount: 7000 })
    expect(lineOf(world, at('2027-10-15 19:10')).state).toEqual({ is: 'due', since: undefined })
  })

  test('is whatever the count says, if the tray is counted first', () => {
    const book = lastSeen()
    book.does((world) => countPortions(world, { lot: blueClip, counted: 27 }, at('2027-10-15 19:07')))
    expect(book.world().lots.get(blueClip)?.observations).toMatchObject([{ found: 27, bookNow: 30 }])
  })
})
