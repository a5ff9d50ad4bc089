/** What a batch cost and what became of it. Checked only against our own worked examples. */
import { describe, expect, test } from 'vitest'
import {
  type BottleId,
  bottleAccounts,
  bottleCost,
  closing,
  costByTank,
  countPortions,
  day,
  doseCost,
  type Fact,
  finishBottle,
  foodCostSince,
  giveAway,
  giveShared,
  type LotId,
  type Microlitres,
  type Price,
  type PurchaseAsked,
  type PurchaseId,
  portionsGone,
  recordFreezing,
  recordPurchase,
  shareOffers,
  sharingOf,
  strikeOut,
  type TankId,
  yearOfDoses,
  yearSums,
} from '../../../core/index.ts'
import { at, type Book, done, given, london, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  cockle,
  dose,
  firstBottle,
  greenFood,
  greenPlan,
  kitchenFreezer,
  lab,
  longGallery,
  mL,
  planOf,
  portionOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const pounds = (amount: number): Price => ({ minor: Math.round(amount * 100), currency: 'GBP' })
const parcel = 'parcel1' as PurchaseId
const noon = (on: string) => ({ now: at(`${on} 12:00`), today: day(on) })
const here = (on: string) => ({ now: at(`${on} 12:00`), zone: london })

const freezing = (book: Book, portions: number, more: { lot?: LotId; bottle?: BottleId; on?: string } = {}): Book => {
  const on = more.on ?? '2027-01-05'
  const asked = {
    bottle: more.bottle ?? firstBottle,
    lot: more.lot ?? blueClip,
    mark: more.lot ?? 'blue clip',
    portions,
    each: mL(1),
    frozenOn: day(on),
    kept: { as: 'loose' as const },
    place: kitchenFreezer,
  }
  book.does((world) => recordFreezing(world, asked, { now: at(`${on} 20:00`), zone: london }))
  return book
}
const home = (more: { price?: Price } = {}, ...facts: Fact[]): Book =>
  given(
    lab,
    facts,
    planOf({ first: '2027-01-05', amount: 1 }),
    bottleOf({ holds: 120, received: '2027-01-05', opened: '2027-01-05', ...more }),
  )
const nightAfter = (nights: number): string => new Date(Date.UTC(2027, 0, 5 + nights)).toISOString().slice(0, 10)
const pour = (book: Book, on: string): Book => {
  const taken = [{ from: 'bottle', bottle: firstBottle, amount: mL(1) }] as const
  book.does(dose(at(`${on} 21:20`), { taken, amount: mL(1) }))
  return book
}
const costOf = (book: Book, on: string, size: Microlitres = mL(1)) => {
  const world = book.world()
  const account = bottleAccounts(world).get(firstBottle)
  return account && doseCost(world, account, size, noon(on))
}
const sheetOf = (book: Book, on: string) => {
  const world = book.world()
  const account = bottleAccounts(world).get(firstBottle)
  if (!account) throw new Error('the bottle has no account')
  return closing(world, account, mL(1), noon(on))
}

describe('120 mL frozen into 102 portions with 14 mL kept fresh, and finished as planned', () => {
  const finished = (): Book => {
    const book = freezing(home(), 102)
    for (let night = 0; night < 14; night += 1) pour(book, nightAfter(night * 2))
    book.does((world) => finishBottle(world, firstBottle, at('2027-02-02 12:00')))
    return book
  }
  test('are 102 + 14 + 3.6 + 0.4 = 120.0 mL, and nothing is unexplained', () => {
    const { held, sheet, closed } = sheetOf(finished(), '2027-02-03')
    expect(held).toBe(120_000)
    expect(sheet).toMatchObject({ there: 102_000, fresh: 14_000, residue: 3_600, over: 400, unexplained: 0 })
    expect(closed).toBe(false)
  })
  test('are told by what became of the portions: given, dropped, thrown away, given away, missing', () => {
    const book = finished()
    for (let night = 14; night < 60; night += 1)
      book.does(dose(at(`${nightAfter(night * 2)} 21:20`), portionOf(blueClip, 1)))
    const on = nightAfter(125)
    const then = at(`${on} 12:00`)
    book.does((world) => portionsGone(world, { lot: blueClip, count: 8, fate: 'lost', why: 'dropped' }, then))
    book.does((world) => portionsGone(world, { lot: blueClip, count: 3, fate: 'discarded' }, then))
    book.does((world) => giveAway(world, { lot: blueClip, count: 12 }, then))
    book.does((world) => countPortions(world, { lot: blueClip, counted: 30 }, then))
    const { sheet, portions, nights, freshDoses, frozenDoses, worstLoss, daysFrozen } = sheetOf(book, on)
    // 102 - 46 - 8 - 3 - 12 = 33 by the book, 30 by hand.
    expect(portions).toEqual({ made: 102, given: 46, lost: 8, binned: 3, givenAway: 12, there: 30, missing: 3 })
    expect(sheet).toMatchObject({ given: 46_000, lost: 8_000, binned: 3_000, givenAway: 12_000, unexplained: 3_000 })
    expect({ nights, freshDoses, frozenDoses }).toEqual({ nights: 60, freshDoses: 14, frozenDoses: 46 })
    expect(worstLoss).toMatchObject({ portions: 8, why: 'dropped' })
    // Frozen on 5 January, the last one given 118 days later.
    expect(daysFrozen).toBe(118)
  })
  test('more found than the book knew is unexplained with the other sign', () => {
    const book = finished()
    book.does((world) => countPortions(world, { lot: blueClip, counted: 105 }, at('2027-02-03 12:00')))
    expect(sheetOf(book, '2027-02-04').sheet).toMatchObject({ there: 105_000, unexplained: -3_000 })
  })
  test('a bottle finished with as much as a dose in the book leaves that unexplained', () => {
    const book = freezing(home(), 102)
    book.does((world) => finishBottle(world, firstBottle, at('2027-02-02 12:00')))
    expect(sheetOf(book, '2027-02-03').sheet).toMatchObject({ residue: 3_600, over: 0, unexplained: 14_400 })
  })
})

describe('what a dose truly cost', () => {
  test('counts no portion that was found missing: 30.00 over 226, not 236', () => {
    const book = given(
      lab,
      planOf({ first: '2027-01-05', amount: 1 }),
      bottleOf({ holds: 240, received: '2027-01-05', opened: '2027-01-05', price: pounds(30) }),
    )
    freezing(book, 232)
    expect(costOf(book, '2027-01-06')).toEqual({ minor: 3000 / 232, currency: 'GBP' })
    book.does((world) => countPortions(world, { lot: blueClip, counted: 222 }, at('2027-01-06 12:00')))
    for (let night = 0; night < 4; night += 1) pour(book, nightAfter(night + 1))
    // 222 there and 4 given fresh out of the 8 mL that were left, less 7.2 on its walls: 0.8 mL is no dose.
    expect(costOf(book, '2027-01-12')).toEqual({ minor: 3000 / 226, currency: 'GBP' })
  })
  test('is a year of them every so many nights', () => {
    const dose = { minor: 4350 / 116, currency: 'GBP' }
    // 365 / 2 = 182.5; 0.375 × 182.5 = 68.4375.
    expect(yearOfDoses(dose, 2)).toEqual({ minor: 6843.75, currency: 'GBP' })
    expect(yearOfDoses('notKnown', 2)).toBe('notKnown')
  })
  test('does not count what is past its day: nobody will give it', () => {
    const book = home({ price: pounds(43.5) })
    pour(pour(book, '2027-01-05'), '2027-01-07')
    expect(costOf(book, '2027-01-08')).toEqual({ minor: 4350 / 116, currency: 'GBP' })
    // Two months in the fridge, to 5 March.
    expect(costOf(book, '2027-03-06')).toEqual({ minor: 4350 / 2, currency: 'GBP' })
  })
  test('is laid to two tanks by what reached each', () => {
    const book = home({ price: pounds(40) }, ...tankOf(cockle, usGal(60)))
    freezing(book, 100)
    for (let night = 1; night <= 100; night += 1) {
      const now = at(`${nightAfter(night * 2)} 21:20`)
      const parts = [
        { tank: longGallery, plan: greenPlan, amount: mL(0.75) },
        { tank: cockle, amount: mL(0.25) },
      ]
      const taken = [{ from: 'portions', lot: blueClip, count: 1 }] as const
      book.does((world) => giveShared(world, { food: greenFood, parts, taken, at: now, sure: true }, now))
    }
    book.does((world) => finishBottle(world, firstBottle, at('2027-03-01 12:00')))
    const world = book.world()
    const account = bottleAccounts(world).get(firstBottle)
    const on = nightAfter(205)
    const each = account && doseCost(world, account, mL(1), noon(on))
    // Two doses a portion: 40.00 over 200.
    expect(each).toEqual({ minor: 20, currency: 'GBP' })
    const tanks = account && typeof each === 'object' ? costByTank(account, each) : new Map()
    expect(tanks.get(longGallery)).toBeCloseTo(3000, 6)
    expect(tanks.get(cockle)).toBeCloseTo(1000, 6)
  })
  test('of a bottle begun before it went on record is the part of the price that was in it', () => {
    const book = given(
      lab,
      planOf({ first: '2027-01-05', amount: 1 }),
      bottleOf({ holds: 100, full: 0.5, received: '2027-01-02', opened: '2027-01-02', price: pounds(50) }),
    )
    // 50 mL, 1.5 of it on the walls: 48 doses for 25.00.
    expect(costOf(book, '2027-01-06')).toEqual({ minor: 2500 / 48, currency: 'GBP' })
  })
})

describe('a pack of 84.00: six live bottles, and one of food that costs 30.00 alone', () => {
  const pack = (more: Partial<PurchaseAsked> = {}): PurchaseAsked => ({
    purchase: parcel,
    on: day('2027-01-05'),
    paid: pounds(84),
    things: [
      { what: 'live bottles', count: 6 },
      { bottle: firstBottle, alone: pounds(30) },
    ],
    ...more,
  })
  const bought = (asked: PurchaseAsked, price?: Price): Book => {
    const book = freezing(home(price ? { price } : {}), 102)
    book.does((world) => recordPurchase(world, asked, here('2027-01-06')))
    return book
  }
  const shared = (...shares: (Price | undefined)[]) =>
    pack({
      things: pack().things.map((thing, place) => ({ ...thing, share: shares[place] })) as PurchaseAsked['things'],
    })

  test('is 54.00 and 30.00 when each has what it costs alone', () => {
    expect(shareOffers(pack()).byAlone).toEqual([pounds(54), pounds(30)])
    expect(shareOffers(pack()).equally).toEqual([pounds(72), pounds(12)])
    expect(shareOffers(pack()).allOnFood).toEqual(['free', pounds(84)])
  })
  test('makes a dose cost its part of 30.00', () => {
    // 102 frozen, and 14.4 mL beyond the walls' 3.6: 116 doses.
    expect(costOf(bought(shared(pounds(54), pounds(30))), '2027-01-06')).toEqual({ minor: 3000 / 116, currency: 'GBP' })
  })
  test('says not known while the food has no share, whatever its own entry says: never 84.00 and never 0', () => {
    expect(costOf(bought(pack()), '2027-01-06')).toBe('notKnown')
    expect(costOf(bought(shared(pounds(54), undefined), pounds(84)), '2027-01-06')).toBe('notKnown')
  })
  test('shows what is not shared yet, and refuses more than was paid', () => {
    const one = shared(pounds(54), undefined)
    expect(done(sharingOf(one))).toMatchObject({ whole: pounds(84), rest: pounds(30), unshared: 1 })
    const book = home()
    const too = shared(pounds(60), pounds(30))
    expect(refusalOf(recordPurchase(book.world(), too, here('2027-01-06')))).toEqual({
      why: 'sharedTooMuch',
      over: pounds(6),
    })
  })
  test('never adds two currencies', () => {
    const mixed = pack({ postage: { minor: 900, currency: 'EUR' } })
    expect(refusalOf(sharingOf(mixed))).toEqual({ why: 'twoCurrencies', currencies: ['GBP', 'EUR'] })
    expect(shareOffers(mixed)).toEqual({ byAlone: undefined, equally: undefined, allOnFood: undefined })
  })
  test('shares postage with the price', () => {
    const posted = pack({ postage: pounds(9.5) })
    expect(done(sharingOf(posted)).whole).toEqual(pounds(93.5))
    expect(shareOffers(posted).byAlone).toEqual([pounds(63.5), pounds(30)])
  })
  test('is put right by writing it again, and is as it was when that is crossed out', () => {
    const book = bought(shared(pounds(54), pounds(30)))
    const [second] = book.does((world) => recordPurchase(world, shared(pounds(44), pounds(40)), here('2027-01-07')))
    const bottle = () => {
      const world = book.world()
      const known = world.bottles.get(firstBottle)
      return known && bottleCost(world, known, at('2027-01-08 12:00'))
    }
    expect(bottle()).toEqual(pounds(40))
    if (second) book.does((world) => strikeOut(world, { target: second }, at('2027-01-08 11:00')))
    expect(bottle()).toEqual(pounds(30))
  })
})

describe('a year', () => {
  test('tells doses, nights without, waste by cause and money, and says which price is not known', () => {
    const book = home({ price: pounds(43.5) })
    book.note(
      ...done(
        recordPurchase(
          book.world(),
          { purchase: parcel, on: day('2027-01-04'), things: [{ what: 'live bottles', count: 2 }] },
          here('2027-01-06'),
        ),
      ),
    )
    freezing(book, 102)
    for (let night = 0; night < 10; night += 1)
      book.does(dose(at(`${nightAfter(night * 2)} 21:20`), portionOf(blueClip, 1)))
    book.does((world) =>
      portionsGone(world, { lot: blueClip, count: 3, fate: 'lost', why: 'dropped' }, at('2027-01-24 12:00')),
    )
    book.note({
      kind: 'nightSkipped',
      at: at('2027-01-25 22:00'),
      tank: longGallery,
      food: greenFood,
      plan: greenPlan,
      night: day('2027-01-25'),
    })
    const world = book.world()
    const told = yearSums(world, bottleAccounts(world).values(), 2027, here('2027-01-26'))
    expect(told).toMatchObject({
      given: { doses: 10, amount: 10_000, nights: 10 },
      skipped: 1,
      missed: 0,
      open: 0,
      waste: [{ fate: 'lost', why: 'dropped', portions: 3, liquid: 0 }],
      unpricedBottles: 0,
      unpricedParcels: 1,
    })
    expect([...told.spent]).toEqual([['GBP', 4350]])
    // 99 portions and 14 fresh doses: 43.50 / 113 each, ten of them.
    expect(told.tanks[0]?.cost.get('GBP')).toBeCloseTo((4350 / 113) * 10, 6)
    expect(told.foods).toMatchObject([{ food: greenFood, doses: 10, bottles: 1, unpriced: 0 }])
    expect(yearSums(world, bottleAccounts(world).values(), 2026, here('2027-01-26')).given.doses).toBe(0)
    // From the fourth of those nights on: seven of the ten.
    const since = (tank: TankId, night: string) =>
      foodCostSince(world, bottleAccounts(world).values(), tank, day(night), here('2027-01-26'))
    const seven = since(longGallery, nightAfter(6))
    expect([seven.doses, seven.unpriced]).toEqual([7, 0])
    expect(seven.cost.get('GBP')).toBeCloseTo((4350 / 113) * 7, 6)
    expect(since(longGallery, '2028-01-01')).toEqual({ doses: 0, cost: new Map(), unpriced: 0 })
    expect(since(cockle, '2026-01-01')).toEqual({ doses: 0, cost: new Map(), unpriced: 0 })
  })
})
