/** What to take first, when a bottle is open, what a dose costs. Checked only against our own worked examples. */
import { expect, test } from 'vitest'
import {
  type BottleId,
  costPerDose,
  day,
  type LotId,
  lasts,
  stock,
  type Taken,
  type World,
} from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  dose,
  firstBottle,
  foodOf,
  greenFood,
  lab,
  lineOf,
  mL,
  onHand,
  planOf,
  redClip,
} from '../../support/givenLab.ts'

const _poured = foodOf(greenFood, { residueShare: 0 })
const _lastsAt = (world: World, now: string) => {
  const answer = lasts(world, greenFood, at(now))
  if (!answer) throw new Error('nothing is planned')
  return answer
}
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

test('43.50 for 120 mL less what stays on the walls is 37.5 pence a dose, 68.44 a year', () => {
  const priced = (price: { minor: number; currency: string } | 'free' | undefined) => {
    const book = given(lab, bottleOf({ holds: 120, received: '2027-01-05', price }))
    const bottle = book.world().bottles.get(firstBottle)
    const [food] = book.world().foods.get(greenFood) ?? []
    return bottle && food && costPerDose(bottle, food, mL(1))
  }
  const cost = priced({ minor: 3400 + 950, currency: 'GBP' })
  expect(cost).toEqual({ minor: 37.5, currency: 'GBP' })
  expect(typeof cost === 'object' && Math.round(cost.minor * 182.5)).toBe(6844)
  expect(priced('free')).toBe('free')
  expect(priced(undefined)).toBe('notKnown')
})
