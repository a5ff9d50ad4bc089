/** A month's nights on paper. Checked only against our own worked examples, by hand, and against how long the food lasts. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bareAmong, day, lasts, monthsAhead, nightsAhead, sameHour, turnsOf, wallClock } from '../../../core/index.ts'
import { at, given, london } from '../../support/given.ts'
import {
  blueClip,
  boathouseFreezer,
  bottleOf,
  cockle,
  cocklePlan,
  greenFood,
  lab,
  longGallery,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const now = at('2027-06-03 18:00')
const june = { from: day('2027-06-03'), to: day('2027-06-30') }

test('this month runs from today on; in its last week the next one is offered first', () => {
  expect(monthsAhead(day('2027-06-03'))).toEqual({
    this: june,
    next: { from: '2027-07-01', to: '2027-07-31' },
    usual: 'this',
  })
  expect(monthsAhead(day('2027-06-23')).usual).toBe('this')
  expect(monthsAhead(day('2027-06-24')).usual).toBe('next')
  expect(monthsAhead(day('2027-12-31')).next).toEqual({ from: '2028-01-01', to: '2028-01-31' })
  expect(monthsAhead(day('2028-01-31')).next).toEqual({ from: '2028-02-01', to: '2028-02-29' })
})

describe('four portions in one bag and three in another', () => {
  const book = () =>
    given(
      lab,
      planOf({ first: '2027-06-04', amount: 1 }),
      onHand({ portions: 4, each: 1, frozen: '2026-01-05' }),
      onHand({ portions: 3, each: 1, frozen: '2026-02-05', lot: redClip, place: boathouseFreezer }),
    )
  const [tank] = nightsAhead(book().world(), june, now)
  const nights = tank?.rounds[0]?.nights ?? []

  test('the bag that goes first is used up before the other, and the first night without food is 18 June', () => {
    expect(nights.map(({ night }) => night)).toHaveLength(14)
    expect(turnsOf(nights)).toMatchObject([
      { from: '2027-06-04', to: '2027-06-10', doses: 4, serving: { taken: { lot: blueClip, count: 1 } } },
      { from: '2027-06-12', to: '2027-06-16', doses: 3, serving: { taken: { lot: redClip, count: 1 } } },
    ])
    expect(bareAmong(nights)).toBe('2027-06-18')
  })

  test('in the next month nothing is left of what this one uses', () => {
    const [next] = nightsAhead(book().world(), monthsAhead(day('2027-06-03')).next, now)
    expect(next?.rounds[0]?.nights[0]).toMatchObject({ night: '2027-07-02', serving: undefined })
  })
})

test('a tank without a plan is there without rounds; without food every night is bare', () => {
  const book = given(lab, tankOf(cockle, usGal(60)), planOf({ first: '2027-06-04', amount: 1 }))
  expect(nightsAhead(book.world(), june, now)).toMatchObject([
    { tank: { tank: longGallery }, rounds: [{ food: { food: greenFood } }] },
    { tank: { tank: cockle }, rounds: [] },
  ])
  expect(bareAmong(nightsAhead(book.world(), june, now)[0]?.rounds[0]?.nights ?? [])).toBe('2027-06-04')
})

test('a dial goes out an hour later from the night the clocks change', () => {
  const book = given(
    tankOf(longGallery, usGal(200), { lamp: 'dial' }),
    lab.slice(1),
    planOf({ first: '2027-03-21', amount: 1 }),
    onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
  )
  const [tank] = nightsAhead(book.world(), { from: day('2027-03-20'), to: day('2027-03-31') }, at('2027-03-20 18:00'))
  const hours = sameHour(tank?.rounds[0]?.nights ?? [], ({ lightsOut }) => wallClock(lightsOut, london).minutes)
  expect(hours).toEqual([
    { from: '2027-03-21', hour: 1260 },
    { from: '2027-03-29', hour: 1320 },
  ])
})

test('law: the first bare night of all is the one the forecast names', () => {
  let bare = 0
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 20 }),
      fc.integer({ min: 0, max: 15 }),
      fc.integer({ min: 1, max: 4 }),
      fc.integer({ min: 1, max: 4 }),
      fc.boolean(),
      (blue, red, every, everyCockle, two) => {
        const book = given(
          lab,
          tankOf(cockle, usGal(60)),
          planOf({ first: '2027-06-04', amount: 1, every }),
          ...(two
            ? [planOf({ first: '2027-06-05', amount: 2, every: everyCockle, tank: cockle, plan: cocklePlan })]
            : []),
          ...(blue > 0 ? [onHand({ portions: blue, each: 1, frozen: '2025-06-15' })] : []),
          ...(red > 0 ? [onHand({ portions: red, each: 0.5, frozen: '2026-02-05', lot: redClip })] : []),
          bottleOf({ holds: 6, received: '2027-05-01', opened: '2027-05-02' }),
        )
        const world = book.world()
        const nights = nightsAhead(world, june, now).flatMap(({ rounds }) => rounds.flatMap((round) => round.nights))
        const first = nights
          .filter(({ serving }) => !serving)
          .map(({ night }) => night)
          .sort()[0]
        const forecast = lasts(world, greenFood, now)?.bareNight
        if (first !== undefined) bare += 1
        expect(first).toBe(forecast !== undefined && forecast <= june.to ? forecast : undefined)
      },
    ),
    { numRuns: 150 },
  )
  expect(bare).toBeGreaterThan(40)
})
