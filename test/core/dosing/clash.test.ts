/** Two foods for one tank, every two and every three nights: the nights they meet, counted by hand on a calendar. */
import { expect, test } from 'vitest'
import { clashNights, day, holdPlan, mayAlternate, type PlanId, plansAt } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import { amberFood, foodOf, greenPlan, lab, planOf } from '../../support/givenLab.ts'

const now = at('2027-04-01 20:00')
const amberPlan = 'amberplan' as PlanId
const both = (everyAmber: number, firstAmber = '2027-04-01') =>
  given(
    lab,
    foodOf(amberFood),
    planOf({ first: '2027-04-01', amount: 1 }),
    planOf({ first: firstAmber, amount: 1, every: everyAmber, food: amberFood, plan: amberPlan }),
  )
const inApril = (book: ReturnType<typeof both>) => {
  const world = book.world()
  return clashNights(world, plansAt(world, now), day('2027-04-30'), now).map((night) => Number(night.slice(8)))
}

test('every two and every three nights from 1 April meet on 1, 7, 13, 19 and 25 April', () => {
  expect(inApril(both(3))).toEqual([1, 7, 13, 19, 25])
  expect(mayAlternate({ everyNights: 2 }, { everyNights: 3 })).toBe(false)
})

test('every two nights each, begun a night apart, they never meet', () => {
  expect(mayAlternate({ everyNights: 2 }, { everyNights: 2 })).toBe(true)
  expect(mayAlternate({ everyNights: 2 }, { everyNights: 4 })).toBe(true)
  expect(inApril(both(2, '2027-04-02'))).toEqual([])
})

test('a food on hold meets the other only once the hold is over', () => {
  const book = both(3)
  book.does((world) => holdPlan(world, { plan: greenPlan, until: day('2027-04-10') }, now))
  // Green then goes 10, 12, 14 ...; amber 1, 4, 7, 10 ...
  expect(inApril(book)).toEqual([10, 16, 22, 28])
})
