/** Money in words: one figure looks the same everywhere. */
import { expect, test } from 'vitest'
import { cost, minorDigits, price, yearCost } from '../../app/words/money.ts'

const pounds = (minor: number) => ({ minor, currency: 'GBP' })

test('a dose has one decimal more than its coins, round or not; a price and a year have none more', () => {
  expect(cost(pounds(37.5))).toBe('£0.375')
  // 43.50 / 108 = 0.40277…
  expect(cost(pounds(4350 / 108))).toBe('£0.403')
  expect(cost(pounds(40))).toBe('£0.400')
  expect(price(pounds(4350))).toBe('£43.50')
  // 0.375 × 182.5 = 68.4375
  expect(yearCost(pounds(6843.75))).toBe('£68.44')
})

test('coins without decimals, and a code that no country has', () => {
  expect(minorDigits('JPY')).toBe(0)
  expect(cost({ minor: 54.31, currency: 'JPY' })).toBe('JP¥54.3')
  expect(price({ minor: 120_000, currency: 'QQQ' })).toMatch(/1,200\.00/)
  expect(minorDigits('no code')).toBe(2)
  expect(price({ minor: 1250, currency: 'no code' })).toBe('12.50 no code')
})

test('unknown is said, and free is free', () => {
  expect([price(undefined), cost('notKnown'), yearCost('notKnown')]).toEqual(['not known', 'not known', 'not known'])
  expect([price('free'), cost('free')]).toEqual(['free', 'nothing'])
})
