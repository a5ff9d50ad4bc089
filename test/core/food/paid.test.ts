/** Prices, postage, and which comes cheapest. Sums by hand. */
import { expect, test } from 'vitest'
import { cheapest, costEach, costTimes, withPostage } from '../../../core/index.ts'

const pounds = (minor: number) => ({ minor, currency: 'GBP' })
const euros = (minor: number) => ({ minor, currency: 'EUR' })

test('postage is part of the price, and of a gift it is all of it', () => {
  expect(withPostage(pounds(3400), pounds(950))).toEqual(pounds(4350))
  expect(withPostage(pounds(3400), undefined)).toEqual(pounds(3400))
  expect(withPostage('free', undefined)).toBe('free')
  expect(withPostage('free', pounds(950))).toEqual(pounds(950))
})

test('a price nobody knows stays unknown, postage or not', () => {
  expect(withPostage(undefined, pounds(950))).toBeUndefined()
  expect(costEach(undefined, 116)).toBe('notKnown')
  expect(costTimes('notKnown', 182.5)).toBe('notKnown')
})

test('free stays free, and no dose at all has no cost', () => {
  expect(costEach('free', 116)).toBe('free')
  expect(costTimes('free', 182.5)).toBe('free')
  expect(costEach(pounds(4350), 0)).toBeUndefined()
})

test('the cheapest comes first; free is cheaper than any, unknown is in no order', () => {
  expect(cheapest([pounds(40), 'notKnown', pounds(37.5), 'free', undefined])).toEqual({
    is: 'ranked',
    order: [3, 2, 0],
  })
  expect(cheapest([pounds(40), pounds(40)])).toEqual({ is: 'ranked', order: [0, 1] })
  expect(cheapest(['notKnown'])).toEqual({ is: 'ranked', order: [] })
})

test('pounds and euros are not compared', () => {
  expect(cheapest([pounds(40), euros(35), 'free'])).toEqual({ is: 'currencies', currencies: ['GBP', 'EUR'] })
})
