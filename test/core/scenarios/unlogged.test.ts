/** Nights skipped, forgotten or never written down. Checked only against our own worked examples: calendars by hand. */
import { describe, expect, test } from 'vitest'
import {
  countPortions,
  day,
  doNotKnow,
  keptGoing,
  nightsByCount,
  type Round,
  skipNight,
  stoppedFeeding,
} from '../../../core/index.ts'
import { at, type Book, given, refusalOf } from '../../support/given.ts'
import {
  amberFood,
  blueClip,
  bottleOf,
  dose,
  firstBottle,
  foodOf,
  greenFood,
  greenPlan,
  lab,
  lineOf,
  longGallery,
  onHand,
  planOf,
  redClip,
} from '../../support/givenLab.ts'
import { nextOf, withPortions } from '../../support/givenRound.ts'

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

  const nights = ['03', '05', '07', '09', '11', '13'].map((date) => day(`2027-10-${date}`))
  const opened = at('2027-10-15 19:05')
  const rounds = (book: Book): readonly Round[] => {
    const { plan, unlogged } = lineOf(book.world(), opened)
    return [{ plan: plan.plan, nights: unlogged }]
  }

  test('is one question about six nights, with tonight due since the first of them', () => {
    const world = lastSeen().world()
    expect(world.lots.get(blueClip)?.left).toBe(30)
    expect(lineOf(world, opened)).toMatchObject({
      night: '2027-10-15',
      state: { is: 'due', since: '2027-10-03' },
      unlogged: nights,
    })
    expect(lineOf(world, opened).servings[0]?.amount).toBe(1000)
  })

  test('kept going as usual: one entry of six doses, 24 portions left, due on 15 October', () => {
    const book = lastSeen()
    const asked = rounds(book)
    expect(book.does((world) => keptGoing(world, asked, opened))).toHaveLength(1)
    expect(book.entries().at(-1)?.fact).toMatchObject({
      kind: 'doseGiven',
      served: nights.map((night) => ({ tank: longGallery, plan: greenPlan, night, amount: 1000 })),
      taken: [{ from: 'portions', lot: blueClip, count: 6 }],
    })
    const world = book.world()
    expect(world.lots.get(blueClip)?.left).toBe(24)
    expect(world.fed.get(greenFood)).toEqual({ doses: 7, amount: 7000 })
    expect(lineOf(world, opened)).toMatchObject({ state: { is: 'due', since: undefined }, unlogged: [] })
    expect(refusalOf(keptGoing(world, asked, opened))).toEqual({ why: 'nightKnown', night: '2027-10-03' })
  })

  test('stopped: 30 portions left, tonight due, and nothing more is asked of those nights', () => {
    const book = lastSeen()
    const asked = rounds(book)
    expect(book.does((world) => stoppedFeeding(world, asked, opened))).toHaveLength(1)
    const world = book.world()
    expect(world.lots.get(blueClip)?.left).toBe(30)
    expect(world.fed.get(greenFood)).toEqual({ doses: 1, amount: 1000 })
    expect(lineOf(world, opened)).toMatchObject({ state: { is: 'due', since: undefined }, unlogged: [] })
    expect(lineOf(world, at('2027-10-17 19:05')).unlogged).toEqual(['2027-10-15'])
    expect(refusalOf(keptGoing(world, asked, opened))).toEqual({ why: 'nightKnown', night: '2027-10-03' })
  })

  test.each([
    { counted: 27, doses: 3, next: '2027-10-15' },
    { counted: 24, doses: 6, next: '2027-10-15' },
    { counted: 30, doses: 0, next: '2027-10-15' },
  ])('counted $counted first: $doses of them were used', ({ counted, doses }) => {
    const book = lastSeen()
    const asked = { rounds: rounds(book), lots: [{ lot: blueClip, counted }] }
    expect(book.does((world) => nightsByCount(world, asked, opened))).toHaveLength(1)
    const world = book.world()
    expect(world.lots.get(blueClip)).toMatchObject({ left: counted, observations: [{ found: counted, bookThen: 30 }] })
    expect(world.fed.get(greenFood)).toEqual({ doses: 1 + doses, amount: 1000 * (1 + doses) })
    expect(lineOf(world, opened)).toMatchObject({ state: { is: 'due', since: undefined }, unlogged: [] })
    expect(world.oddities).toEqual([])
  })
})

describe('kept going as usual', () => {
  test('with fewer portions than nights takes them all, and asks what is really in the bag', () => {
    const book = withPortions('2027-10-01', 4)
    const now = at('2027-10-13 19:05')
    const { unlogged } = lineOf(book.world(), now)
    expect(unlogged).toHaveLength(6)
    book.does((world) => keptGoing(world, [{ plan: greenPlan, nights: unlogged }], now))
    expect(book.world().fed.get(greenFood)?.doses).toBe(6)
    expect(book.world().oddities).toMatchObject([{ what: 'trayEmptierThanBook', lot: blueClip, short: 2 }])
  })

  test('takes nothing off what was put on record after those nights', () => {
    const book = given(
      lab,
      planOf({ first: '2027-10-01', amount: 1 }),
      onHand({ portions: 30, each: 1, frozen: '2027-01-05', seen: at('2027-10-09 12:00') }),
    )
    const now = at('2027-10-13 19:05')
    const { unlogged } = lineOf(book.world(), now)
    book.does((world) => keptGoing(world, [{ plan: greenPlan, nights: unlogged }], now))
    // Of 1, 3, 5, 7, 9 and 11 October only the last two come after the morning she looked.
    expect(book.world().lots.get(blueClip)?.left).toBe(28)
  })

  test('does not take from what was frozen later than the night', () => {
    const book = given(
      lab,
      planOf({ first: '2027-10-01', amount: 1 }),
      bottleOf({ holds: 60, received: '2027-10-06', opened: '2027-10-06' }),
    )
    const now = at('2027-10-13 19:05')
    const { unlogged } = lineOf(book.world(), now)
    book.does((world) => keptGoing(world, [{ plan: greenPlan, nights: unlogged }], now))
    // 7, 9 and 11 October.
    expect(book.world().bottles.get(firstBottle)?.left).toBe(57_000)
  })

  test('out of a sealed bottle opens it on the first of those nights', () => {
    const book = given(
      lab,
      planOf({ first: '2027-10-01', amount: 1 }),
      bottleOf({ holds: 60, received: '2027-09-20', useBy: day('2028-09-20') }),
    )
    const now = at('2027-10-13 19:05')
    const { unlogged } = lineOf(book.world(), now)
    book.does((world) => keptGoing(world, [{ plan: greenPlan, nights: unlogged }], now))
    expect(book.world().bottles.get(firstBottle)).toMatchObject({ openedOn: '2027-10-01', left: 54_000 })
  })
})

test('a count of nights names lots of that food only, each once, and no more than a file may hold', () => {
  const book = withPortions('2027-10-01')
  book.note(...foodOf(amberFood))
  const amber = onHand({ portions: 9, each: 1, frozen: '2027-01-05', lot: redClip, food: amberFood })
  book.note(...amber(book.world()))
  const now = at('2027-10-05 19:05')
  const rounds = [{ plan: greenPlan, nights: lineOf(book.world(), now).unlogged }]
  const count = (...lots: readonly { lot: typeof blueClip; counted: number }[]) =>
    refusalOf(nightsByCount(book.world(), { rounds, lots }, now))
  expect(count({ lot: redClip, counted: 8 })).toEqual({ why: 'noSuchLot' })
  expect(count({ lot: blueClip, counted: 39 }, { lot: blueClip, counted: 38 })).toEqual({ why: 'noSuchLot' })
  expect(count({ lot: blueClip, counted: 2_000_000 })).toEqual({ why: 'tooMany' })
})
