/** What to take first, when a bottle is open, what a dose costs. Checked only against our own worked examples. */
import { describe, expect, test } from 'vitest'
import {
  type BottleId,
  bottleAccounts,
  day,
  doseCost,
  type LotId,
  movePortions,
  portionsGone,
  recordFreezing,
  stock,
  type Taken,
  type World,
} from '../../../core/index.ts'
import { at, given, london } from '../../support/given.ts'
import {
  blueClip,
  boathouseFreezer,
  bottleOf,
  dose,
  firstBottle,
  kitchenFreezer,
  lab,
  lineOf,
  mL,
  onHand,
  planOf,
  redClip,
} from '../../support/givenLab.ts'

const idOf = (taken: Taken): BottleId | LotId => (taken.from === 'bottle' ? taken.bottle : taken.lot)

test('what is good for the shortest time is taken first, and what is past its time is left for a decision', () => {
  const book = given(
    lab,
    planOf({ first: '2027-06-01', amount: 1 }),
    onHand({ portions: 22, each: 1, frozen: '2027-02-02', lot: redClip }),
    onHand({ portions: 31, each: 1, frozen: '2026-11-20', lot: blueClip }),
    bottleOf({ holds: 63, received: '2027-04-14', opened: '2027-04-14' }),
  )
  const order = (now: string) => lineOf(book.world(), at(now)).servings.map(({ taken }) => idOf(taken))
  expect(order('2027-06-01 20:00')).toEqual([firstBottle, blueClip, redClip])
  expect(order('2027-06-14 20:00')).toEqual([firstBottle, blueClip, redClip])
  expect(order('2027-06-15 20:00')).toEqual([blueClip, redClip])
  const shelved = stock(book.world(), at('2027-06-15 20:00'), day('2027-06-15')).flatMap(({ bottles }) => bottles)
  expect(shelved).toMatchObject([{ lastGood: '2027-06-14', keeping: { is: 'pastItsUsualTime', days: 1 } }])
})

test('a sealed bottle is good until its printed date, and open from its first dose on', () => {
  const book = given(
    lab,
    planOf({ first: '2027-05-01', amount: 1 }),
    bottleOf({ holds: 40, received: '2027-04-20', useBy: day('2027-05-20') }),
  )
  expect(book.world().bottles.get(firstBottle)?.openedOn).toBe(undefined)
  book.does(dose(at('2027-05-01 21:10')))
  expect(book.world().bottles.get(firstBottle)?.openedOn).toBe('2027-05-01')
})

describe('34.00 and 9.50 postage for 120 mL: 102 portions and 14 mL kept fresh at 1 mL a dose', () => {
  const price = { minor: 3400 + 950, currency: 'GBP' }
  const story = (paid: typeof price | 'free' | undefined) => {
    const book = given(lab, bottleOf({ holds: 120, received: '2027-01-05', opened: '2027-01-05', price: paid }))
    const asked = {
      bottle: firstBottle,
      lot: blueClip,
      mark: 'blue clip',
      portions: 102,
      each: mL(1),
      frozenOn: day('2027-01-05'),
      kept: { as: 'loose' as const },
      place: kitchenFreezer,
    }
    book.does((world) => recordFreezing(world, asked, { now: at('2027-01-05 20:00'), zone: london }))
    return book
  }
  const cost = (world: World) => {
    const account = bottleAccounts(world).get(firstBottle)
    return account && doseCost(world, account, mL(1), { now: at('2027-01-08 12:00'), today: day('2027-01-08') })
  }
  const inPounds = (world: World, doses = 1) => {
    const told = cost(world)
    return typeof told === 'object' ? ((told.minor * doses) / 100).toFixed(doses === 1 ? 3 : 2) : told
  }

  test('are 116 doses at 0.375, 68.44 a year', () => {
    expect(inPounds(story(price).world())).toBe('0.375')
    expect(inPounds(story(price).world(), 182.5)).toBe('68.44')
  })
  test('are 0.403 a dose with 8 portions lost, wherever they stood', () => {
    const book = story(price)
    const part = 'part' as LotId
    const away = {
      from: blueClip,
      to: boathouseFreezer,
      count: 20,
      lot: part,
      mark: 'part',
      kept: { as: 'loose' as const },
    }
    book.does((world) => movePortions(world, away, at('2027-01-06 12:00')))
    book.does((world) => portionsGone(world, { lot: blueClip, count: 5, fate: 'lost' }, at('2027-01-07 12:00')))
    book.does((world) => portionsGone(world, { lot: part, count: 3, fate: 'discarded' }, at('2027-01-07 12:01')))
    expect(inPounds(book.world())).toBe('0.403')
  })
  test('are free, or not known, and never nothing', () => {
    expect(cost(story('free').world())).toBe('free')
    expect(cost(story(undefined).world())).toBe('notKnown')
  })
})
