/** When to order. Checked only against our own worked examples: calendars by hand. */
import { describe, expect, test } from 'vitest'
import {
  addDays,
  arrivalOf,
  type BottleId,
  type Day,
  day,
  daysBetween,
  describeOrdering,
  holdPlan,
  neverOrdered,
  notAway,
  orderBy,
  orderedOf,
  recordAway,
  recordOrder,
  stillWaiting,
  unattended,
  type World,
} from '../../../core/index.ts'
import { at, type Book, given, london, refusalOf } from '../../support/given.ts'
import { bottleOf, dose, greenFood, lab, onHand, planOf } from '../../support/givenLab.ts'

const here = (now: string) => ({ now: at(now), zone: london })
const nineAndFive =
  (now = '2026-08-30 12:00') =>
  (world: World) => {
    void world
    return describeOrdering({ leadDays: 9, cushionDays: 5 }, at(now))
  }
/** 45 portions, one every other night from 1 September: the first night without is 30 November. */
const untilNovember = (): Book => {
  const book = given(
    lab,
    planOf({ first: '2026-09-01', amount: 1 }),
    onHand({ portions: 45, each: 1, frozen: '2026-07-01' }),
  )
  book.does(nineAndFive())
  return book
}
const byOf = (book: Book, now: string): Day | undefined => orderBy(book.world(), greenFood, at(now))?.day

describe('the day to order by', () => {
  test('is the first night without food less nine days on the way and five to spare: Monday, 16 November', () => {
    const by = orderBy(untilNovember().world(), greenFood, at('2026-08-31 20:00'))
    expect(by).toEqual({ day: '2026-11-16', bareNight: '2026-11-30', leadDays: 9, cushionDays: 5 })
    expect(new Date('2026-11-16T12:00Z').getUTCDay()).toBe(1)
  })

  test('is a week and a week before, until she says otherwise, and hers again once that is crossed out', () => {
    const book = given(
      lab,
      planOf({ first: '2026-09-01', amount: 1 }),
      onHand({ portions: 45, each: 1, frozen: '2026-07-01' }),
    )
    expect(byOf(book, '2026-08-31 20:00')).toBe('2026-11-16')
    book.does(() => describeOrdering({ leadDays: 20, cushionDays: 0 }, at('2026-08-31 19:00')))
    expect(byOf(book, '2026-08-31 20:00')).toBe('2026-11-10')
  })

  test('is the same day on every day of a round that is kept, and after it has passed', () => {
    const book = untilNovember()
    for (let night = day('2026-09-01'); night <= '2026-11-28'; night = addDays(night, 2)) {
      expect(byOf(book, `${night} 20:00`)).toBe('2026-11-16')
      book.does(dose(at(`${night} 21:20`)))
      expect(byOf(book, `${addDays(night, 1)} 12:00`)).toBe('2026-11-16')
    }
    // Nothing is left. The dose owed since 30 November does not make it a new day each day.
    for (const now of ['2026-11-30 20:00', '2026-12-01 20:00', '2026-12-20 20:00'])
      expect(orderBy(book.world(), greenFood, at(now))).toMatchObject({ day: '2026-11-16', bareNight: '2026-11-30' })
  })

  test('stays on fixed nights too, and waits for the end of a hold', () => {
    const fixed = given(lab, { ...planOf({ first: '2026-11-28', amount: 1 }), rhythm: 'fixedNights' })
    expect(byOf(fixed, '2026-12-09 20:00')).toBe('2026-11-14')
    const held = given(lab, planOf({ first: '2026-11-28', amount: 1 }))
    held.does((world) =>
      holdPlan(
        world,
        { plan: planOf({ first: '2026-11-28', amount: 1 }).plan, until: day('2026-12-20') },
        at('2026-11-27 20:00'),
      ),
    )
    expect(byOf(held, '2026-11-27 21:00')).toBe('2026-12-06')
  })

  test('is earlier by what was lost, and no day at all where no plan feeds the food', () => {
    expect(
      byOf(given(lab, onHand({ portions: 45, each: 1, frozen: '2026-07-01' })), '2026-08-31 20:00'),
    ).toBeUndefined()
  })
})

describe('an order', () => {
  const ordered = (comes?: string): Book => {
    const book = untilNovember()
    book.does((world) =>
      recordOrder(
        world,
        { food: greenFood, on: day('2026-11-16'), comes: comes === undefined ? undefined : day(comes) },
        here('2026-11-16 09:30'),
      ),
    )
    return book
  }
  const standing = (book: Book, today: string) => orderedOf(book.world(), greenFood, day(today), at(`${today} 20:00`))

  test('is on its way until its day, and late three days after it', () => {
    expect(standing(ordered('2026-11-25'), '2026-11-27')).toMatchObject({
      comes: '2026-11-25',
      about: false,
      late: false,
    })
    expect(standing(ordered('2026-11-25'), '2026-11-28')).toMatchObject({ late: true })
  })

  test('without a day is expected after the days she says one takes', () => {
    expect(standing(ordered(), '2026-11-20')).toMatchObject({ comes: '2026-11-25', about: true, late: false })
  })

  test('is over once a bottle of that food comes home, and not by one that was there before', () => {
    const book = ordered('2026-11-25')
    book.note(...bottleOf({ holds: 120, received: '2026-11-10', seen: at('2026-11-16 09:40') })(book.world()))
    expect(standing(book, '2026-11-20')).toBeDefined()
    book.note(
      ...bottleOf({ holds: 120, received: '2026-11-24', seen: at('2026-11-24 17:00'), bottle: 'bottle2' as BottleId })(
        book.world(),
      ),
    )
    expect(standing(book, '2026-11-24')).toBeUndefined()
  })

  test('that is still waited for is late no more, and one never made leaves no trace in what is said', () => {
    const book = ordered('2026-11-25')
    book.does((world) =>
      stillWaiting(
        world,
        { food: greenFood, on: day('2026-11-16'), comes: day('2026-12-02') },
        here('2026-11-28 09:00'),
      ),
    )
    expect(standing(book, '2026-11-28')).toMatchObject({ comes: '2026-12-02', late: false })
    book.does((world) => neverOrdered(world, { food: greenFood, on: day('2026-11-16') }, at('2026-11-28 10:00')))
    expect(standing(book, '2026-11-28')).toBeUndefined()
  })

  test('is not made tomorrow, and does not come before it is made', () => {
    const { world } = untilNovember()
    const ask = (on: string, comes: string) =>
      refusalOf(recordOrder(world(), { food: greenFood, on: day(on), comes: day(comes) }, here('2026-11-16 09:30')))
    expect(ask('2026-11-17', '2026-11-25')).toMatchObject({ why: 'orderedNotYet' })
    expect(ask('2026-11-16', '2026-11-15')).toMatchObject({ why: 'comesBeforeOrdered' })
    expect(ask('2026-11-16', '2036-11-25')).toMatchObject({ why: 'comesFarOff' })
    expect(refusalOf(describeOrdering({ leadDays: -1, cushionDays: 366 }, at('2026-11-16 09:30')))).toMatchObject({
      which: ['leadDays', 'cushionDays'],
    })
  })
})

describe('a parcel', () => {
  const ask = (orderedOn: string, away: readonly (readonly [string, string])[] = [], more = {}) =>
    arrivalOf({
      orderedOn: day(orderedOn),
      leadDays: 9,
      away: away.map(([from, to]) => ({ from: day(from), to: day(to) })),
      today: day('2026-11-01'),
      ...more,
    })

  test('ordered on Monday, 16 November comes on a Wednesday, and there is nothing to say', () => {
    expect(ask('2026-11-16')).toEqual({
      orderedOn: '2026-11-16',
      comes: '2026-11-25',
      untimely: [],
      earlier: undefined,
      later: undefined,
    })
  })

  test('that would come on a Friday may lie over the weekend: a day earlier, or three days later', () => {
    // Wednesday, 18 November and nine days: Friday the 27th.
    expect(ask('2026-11-18')).toMatchObject({
      comes: '2026-11-27',
      untimely: [{ is: 'beforeWeekend' }],
      earlier: '2026-11-17',
      later: '2026-11-21',
    })
    expect(ask('2026-11-20')).toMatchObject({ comes: '2026-11-29', untimely: [{ is: 'weekend' }], later: '2026-11-21' })
  })

  test('that would come while nobody is at home is better ordered so that it comes before or after', () => {
    // The trip begins on Wednesday the 25th: what comes within three nights before it is no help either.
    const trip = ask('2026-11-16', [['2026-11-25', '2026-11-29']])
    expect(trip.untimely).toEqual([{ is: 'away', from: '2026-11-25', to: '2026-11-29' }])
    // Thursday the 19th, six nights before; or Monday the 30th.
    expect([trip.earlier, trip.later]).toEqual(['2026-11-10', '2026-11-21'])
    const soon = ask('2026-11-16', [['2026-11-28', '2026-12-06']])
    expect(soon.untimely).toEqual([{ is: 'tripSoon', from: '2026-11-28', to: '2026-12-06' }])
    // The day before the door is shut: a day late it would find nobody.
    expect(ask('2026-11-16', [['2026-11-26', '2026-11-29']]).untimely).toMatchObject([{ is: 'away' }])
  })

  test('is not kept from coming by one day without anybody at the door later that week', () => {
    expect(ask('2026-11-16', [['2026-11-27', '2026-11-27']]).untimely).toEqual([])
  })

  test('is not advised for yesterday, nor so late that a night would be without food', () => {
    expect(ask('2026-11-18', [], { today: day('2026-11-18') }).earlier).toBeUndefined()
    expect(ask('2026-11-18', [], { latest: day('2026-11-20') }).later).toBeUndefined()
    // It is too late already: later is all there is.
    expect(ask('2026-11-18', [], { latest: day('2026-11-10') }).later).toBe('2026-11-21')
  })

  test('whatever is advised comes at a good time', () => {
    for (let on = day('2026-11-01'); on < '2027-02-01'; on = addDays(on, 1)) {
      const trips = [
        ['2026-12-10', '2026-12-20'],
        ['2026-12-30', '2026-12-30'],
      ] as const
      const { earlier, later } = ask(on, trips)
      for (const better of [earlier, later]) if (better) expect(ask(better, trips).untimely).toEqual([])
    }
  })
})

describe('a bottle that would stand in the fridge while she is away', () => {
  const food = { countsFrom: 'arrival', fridgeLife: { count: 2, unit: 'months' } } as const
  const trip = { from: day('2026-12-20'), to: day('2027-01-03') }

  test('has its days counted', () => {
    expect(unattended(day('2026-11-25'), food, [trip])).toEqual({ ...trip, days: 15, lastGood: '2027-01-25' })
    expect(daysBetween(trip.from, trip.to) + 1).toBe(15)
    // Only until its last good day.
    expect(unattended(day('2026-10-28'), food, [trip])).toMatchObject({ days: 9, lastGood: '2026-12-28' })
  })

  test('is no worry over a weekend, nor while it is sealed and its time has not begun', () => {
    expect(unattended(day('2026-11-25'), food, [{ from: day('2026-12-04'), to: day('2026-12-06') }])).toBeUndefined()
    expect(unattended(day('2026-11-25'), { ...food, countsFrom: 'opening' }, [trip])).toBeUndefined()
  })
})

test('days away are put on the list once, the right way round, and taken off it', () => {
  const book = given(lab)
  const days = { from: day('2026-12-20'), to: day('2027-01-03') }
  book.does((world) => recordAway(world, days, at('2026-11-25 20:00')))
  expect(refusalOf(recordAway(book.world(), days, at('2026-11-25 20:01')))).toEqual({ why: 'awayAlready' })
  expect(refusalOf(recordAway(book.world(), { from: days.to, to: days.from }, at('2026-11-25 20:01')))).toMatchObject({
    why: 'awayUpsideDown',
  })
  book.does((world) => notAway(world, days, at('2026-11-25 20:02')))
  expect(book.world().daysAway).toEqual([])
})
