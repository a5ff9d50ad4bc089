/**
 * Am I in time, and is it worth it? Checked against our own worked examples, calendars by hand; the money against sums
 * done by hand, which stand beside each figure.
 */
import { describe, expect, test } from 'vitest'
import {
  bottleAccounts,
  costEach,
  costTimes,
  type Day,
  day,
  describeFood,
  doseCost,
  dosesPerYear,
  foodAt,
  freezingAhead,
  newFood,
  type OfferAsked,
  offerAhead,
  portionsCover,
  type World,
  withPostage,
} from '../../../core/index.ts'
import { at, done, given } from '../../support/given.ts'
import {
  bottleOf,
  cockle,
  cocklePlan,
  firstBottle,
  foodOf,
  greenFood,
  lab,
  mL,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const foodIn = (world: World) => {
  const food = foodAt(world, greenFood, at('2027-01-05 12:00'))
  if (!food) throw new Error('no food')
  return food
}
const ahead = (world: World, each: number, now: string) => {
  const bottle = world.bottles.get(firstBottle)
  if (!bottle) throw new Error('no bottle')
  const asked = { bottle, food: foodIn(world), each: mL(each) }
  return freezingAhead(world, asked, { now: at(now), today: now.slice(0, 10) as Day })
}

describe('60 mL for doses of half a millilitre from 5 January, good until 5 March', () => {
  const world = given(
    lab,
    foodOf(greenFood, { residueShare: 0 }),
    planOf({ first: '2027-01-05', amount: 0.5 }),
    bottleOf({ holds: 60, received: '2027-01-05', opened: '2027-01-05' }),
  ).world()
  const freezing = ahead(world, 0.5, '2027-01-05 19:00')

  test('never frozen it gives 30 doses, 15 mL, and 45 mL won’t be used', () => {
    expect(freezing.until).toBe('2027-03-05')
    expect(freezing.ifNot).toEqual({ fresh: { doses: 30, amount: 15_000 }, wasted: 45_000 })
  })
  test('frozen on its last day it leaves 45 mL for 90 portions, and all are used', () => {
    expect(freezing.ifFrozenOn(day('2027-03-05'))).toMatchObject({
      late: false,
      fresh: { doses: 30, amount: 15_000 },
      portions: 90,
      lastGood: '2029-03-05',
      over: 0,
      strands: 0,
      wasted: 0,
      begins: '2027-03-06',
      // 90 portions, 89 rounds of two nights after the first: 178 days.
      lastNight: '2027-08-31',
    })
  })
  test('frozen today it is 120 portions, begun tonight', () => {
    expect(freezing.ifFrozenOn(day('2027-01-05'))).toMatchObject({
      fresh: { doses: 0, amount: 0 },
      portions: 120,
      lastGood: '2029-01-05',
      begins: '2027-01-05',
    })
  })
  test('frozen a day late it keeps a year', () => {
    expect(freezing.ifFrozenOn(day('2027-03-06'))).toMatchObject({ late: true, lastGood: '2028-03-06' })
  })
})

test('150 mL that arrived on 12 January are not too late on 1 March: by 12 March, 145 portions, 290 nights', () => {
  const world = given(
    lab,
    bottleOf({ holds: 150, received: '2027-01-12', opened: '2027-01-20', seen: at('2027-01-20 18:00') }),
    planOf({ first: '2027-03-01', amount: 1 }),
  ).world()
  const freezing = ahead(world, 1, '2027-03-01 19:30')
  expect(freezing).toMatchObject({ until: '2027-03-12', contents: 150_000, residue: 4500, usable: 145_500 })
  expect(freezing.ifFrozenOn(day('2027-03-01'))).toMatchObject({ portions: 145, over: 500, strands: 0 })
  expect(portionsCover(world, greenFood, { each: mL(1), count: 145 }, at('2027-03-01 19:30'))).toBe(290)
  // Tonight's and those of 3, 5, 7, 9 and 11 March from the bottle.
  expect(freezing.ifFrozenOn(day('2027-03-12'))).toMatchObject({ fresh: { doses: 6 }, portions: 139 })
})

test('a litre for one small tank outlives two years in the freezer: what passes its day is told', () => {
  const world = given(
    lab,
    foodOf(greenFood, { residueShare: 0 }),
    planOf({ first: '2027-01-05', amount: 1 }),
    bottleOf({ holds: 1000, received: '2027-01-05', opened: '2027-01-05' }),
  ).world()
  const { ifFrozenOn } = ahead(world, 1, '2027-01-05 19:00')
  // 5 January 2027 to 5 January 2029 is 731 days: nights 0, 2 … 730, 366 of them.
  expect(ifFrozenOn(day('2027-01-05'))).toMatchObject({ portions: 1000, strands: 634, wasted: 634_000 })
  // 30 fresh; 6 March 2027 to 5 March 2029 is 730 days: 366 again.
  expect(ifFrozenOn(day('2027-03-05'))).toMatchObject({ portions: 970, strands: 604, wasted: 604_000 })
})

test('a sealed bottle is opened on the way, and is to be frozen while it is good opened', () => {
  const world = given(
    lab,
    foodOf(greenFood, { residueShare: 0, countsFrom: 'opening' }),
    planOf({ first: '2027-01-05', amount: 1 }),
    bottleOf({ holds: 100, received: '2027-01-05', useBy: day('2027-12-01') }),
  ).world()
  expect(ahead(world, 1, '2027-01-05 19:00').until).toBe('2027-03-05')
})

test('the other tank’s doses come out of the same bottle', () => {
  const world = given(
    lab,
    tankOf(cockle, usGal(60)),
    foodOf(greenFood, { residueShare: 0 }),
    planOf({ first: '2027-01-05', amount: 1 }),
    planOf({ first: '2027-01-06', amount: 0.5, tank: cockle, plan: cocklePlan }),
    bottleOf({ holds: 60, received: '2027-01-05', opened: '2027-01-05' }),
  ).world()
  // To 14 January: five nights of 1 mL (5, 7 … 13) and five of 0.5 mL (6, 8 … 14).
  expect(ahead(world, 0.5, '2027-01-05 19:00').ifFrozenOn(day('2027-01-15'))).toMatchObject({
    fresh: { doses: 10, amount: 7500 },
    portions: 105,
  })
})

describe('bottles she thinks of buying, every other night a millilitre', () => {
  const pounds = (minor: number) => ({ minor, currency: 'GBP' })
  const asked = (world: World, more: Partial<OfferAsked> = {}): OfferAsked => ({
    food: foodIn(world),
    bottles: 1,
    size: mL(120),
    arrives: day('2027-01-05'),
    each: mL(1),
    wellsPerTray: 15,
    ...more,
  })
  const plan = planOf({ first: '2027-01-05', amount: 1 })
  const now = at('2027-01-05 12:00')

  test('34.00 and 9.50 postage for 120 mL are 0.375 a dose and 68.44 a year', () => {
    const world = given(lab, plan).world()
    const offered = offerAhead(world, asked(world), now)
    // 120 - 3.6 on the walls = 116.4 mL: 116 portions, 0.4 mL over; 116 / 15 wells: 8 trays.
    expect(offered).toMatchObject({ portions: 116, trays: 8, residue: 3600, doses: 116, wasted: 400, planned: true })
    expect(offered).toMatchObject({ begins: '2027-01-05', lastGood: '2029-01-05' })
    const paid = withPostage(pounds(3400), pounds(950))
    const dose = costEach(paid, offered.doses)
    // 43.50 / 116 = 0.375 exactly; 365 / 2 = 182.5 doses a year; 0.375 × 182.5 = 68.4375.
    expect(dose).toEqual(pounds(37.5))
    expect(dose && costTimes(dose, dosesPerYear(world, greenFood, now))).toEqual(pounds(6843.75))
    // 43.50 / 108 = 0.40277…
    expect(costEach(paid, 108)).toEqual({ minor: 4350 / 108, currency: 'GBP' })
  })

  test('a bottle on record costs as much a dose as the same one offered', () => {
    const price = pounds(4350)
    const world = given(
      lab,
      plan,
      bottleOf({ holds: 120, received: '2027-01-05', opened: '2027-01-05', price }),
    ).world()
    const account = bottleAccounts(world).get(firstBottle)
    expect(account && doseCost(world, account, mL(1), { now, today: day('2027-01-05') })).toEqual(costEach(price, 116))
  })

  test('41 portions at home are used first, and these begin 82 nights later', () => {
    const world = given(lab, plan, onHand({ portions: 41, each: 1, frozen: '2026-12-01', seen: now })).world()
    // 5 January and 40 rounds of two nights: the last of hers on 26 March, the first of these on the 28th.
    expect(offerAhead(world, asked(world), now)).toMatchObject({ begins: '2027-03-28', doses: 116 })
  })

  test('a litre is not cheaper when most of it would pass its day', () => {
    const world = given(lab, plan).world()
    const large = offerAhead(world, asked(world, { size: mL(1000) }), now)
    // 970 portions; 366 nights by 5 January 2029; 604 pass their day.
    expect(large).toMatchObject({ portions: 970, trays: 65, doses: 366, wasted: 604_000 })
    // 150.00 / 366 = 0.4098 a dose used, although 150.00 / 970 = 0.1546 a dose made.
    expect(costEach(pounds(15_000), large.doses)).toMatchObject({ minor: 15_000 / 366 })
  })

  test('a pack of two keeps the residue of each on its own walls', () => {
    const world = given(lab, plan).world()
    // 60 - 1.8 = 58.2 mL: 58 portions from each, 0.2 mL over in each.
    const pack = offerAhead(world, asked(world, { bottles: 2, size: mL(60) }), now)
    expect(pack).toMatchObject({ contents: 120_000, residue: 3600, portions: 116, wasted: 400 })
  })

  test('nothing is given before it comes, and what was owed is given once', () => {
    const world = given(lab, plan).world()
    const late = offerAhead(world, asked(world, { arrives: day('2027-01-10') }), now)
    expect(late).toMatchObject({ begins: '2027-01-10', lastNight: '2027-08-28', doses: 116 })
  })

  test('enough at home for longer than it keeps: none of it would be used, and no dose has a cost', () => {
    const world = given(
      lab,
      foodOf(greenFood, { freezerLife: { count: 31, unit: 'days' } }),
      plan,
      onHand({ portions: 41, each: 1, frozen: '2027-01-04', seen: now }),
    ).world()
    const offered = offerAhead(world, asked(world, { size: mL(10) }), now)
    // Hers until 4 February, 16 nights; these until the 5th, and the next night is the 6th.
    expect(offered).toMatchObject({ portions: 9, doses: 0, wasted: 9700, begins: undefined })
    expect(costEach(pounds(900), offered.doses)).toBeUndefined()
  })

  test('a food that may not be frozen is used from the fridge, bottle by bottle, while it is good', () => {
    const world = given(
      lab,
      done(describeFood(newFood(greenFood, 'Live food', 'live'), at('2026-01-02 11:11'))),
      plan,
    ).world()
    // A month, until 5 February: 16 nights. Two bottles of 9.7 mL: nine doses from the first, seven from the second.
    expect(offerAhead(world, asked(world, { bottles: 2, size: mL(10) }), now)).toMatchObject({
      portions: 0,
      trays: 0,
      lastGood: '2027-02-05',
      doses: 16,
      wasted: 3400,
    })
  })

  test('without a plan it says what it could be, and that no plan is behind it', () => {
    const world = given(lab).world()
    expect(offerAhead(world, asked(world), now)).toMatchObject({ planned: false, doses: 116, wasted: 400 })
  })
})
