import { Temporal } from 'temporal-polyfill'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import {
  addDays,
  addMonths,
  addSpan,
  type Day,
  day,
  dayFromNumber,
  dayNumber,
  daysBetween,
  earlier,
  isDay,
  later,
} from '../../../core/index.ts'

const everyDay = (from: string, count: number): Day[] =>
  Array.from({ length: count }, (_, days) => day(Temporal.PlainDate.from(from).add({ days }).toString()))
const fourYears = everyDay('2026-01-01', 1461)

test('four years hold one leap day', () => {
  expect(fourYears.at(-1)).toBe('2029-12-31')
  expect(fourYears).toContain('2028-02-29')
})

test('a day and its number are two names of one thing', () => {
  expect(dayNumber(day('1970-01-01'))).toBe(0)
  for (const [index, each] of fourYears.entries()) {
    expect(dayNumber(each)).toBe(dayNumber(day('2026-01-01')) + index)
    expect(dayFromNumber(dayNumber(each))).toBe(each)
  }
})

// Samoa's phones had no 30 December 2011, London's have days of 23 and 25 hours.
describe.each(['UTC', 'Europe/London', 'Pacific/Apia'])('on a phone set to %s', (phone) => {
  const before = process.env.TZ
  beforeEach(() => {
    process.env.TZ = phone
  })
  afterEach(() => {
    if (before === undefined) delete process.env.TZ
    else process.env.TZ = before
  })

  test('calendar months are added the way a calendar does, clamped to the end of a shorter month', () => {
    let clamped = 0
    for (const each of [...fourYears, ...everyDay('2011-12-20', 40)])
      for (const months of [1, 2, 6, 25, -1]) {
        const expected = Temporal.PlainDate.from(each).add({ months }, { overflow: 'constrain' })
        if (expected.day !== Number(each.slice(8))) clamped += 1
        expect(addMonths(each, months), `${each} + ${months} months`).toBe(expected.toString())
      }
    expect(clamped).toBeGreaterThan(100)
  })

  test('days are stepped by the calendar', () => {
    for (const each of fourYears)
      for (const days of [1, 400, -1]) {
        const stepped = addDays(each, days)
        expect(stepped).toBe(Temporal.PlainDate.from(each).add({ days }).toString())
        expect(daysBetween(each, stepped)).toBe(days)
      }
  })
})

test('a span on a label is counted in its own unit', () => {
  expect(addSpan(day('2026-12-31'), { count: 2, unit: 'months' })).toBe('2027-02-28')
  expect(addSpan(day('2026-12-31'), { count: 60, unit: 'days' })).toBe('2027-03-01')
})

test('the earlier and the later of two days are told apart', () => {
  expect(earlier(day('2026-09-30'), day('2026-10-01'))).toBe('2026-09-30')
  expect(later(day('2026-09-30'), day('2026-10-01'))).toBe('2026-10-01')
})

test('a day that does not exist is not a day', () => {
  const real = ['1900-01-01', '2024-02-29', '2199-12-31']
  const unreal = ['2023-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '2026-1-01', '1899-12-31', '2200-01-01']
  const slips = ['', '2026-01-01T00:00', '2026-01-01\n', ' 2026-01-01', '01/02/2026', '٢٠٢٦-01-01']
  expect(real.filter(isDay)).toEqual(real)
  expect([...unreal, ...slips].filter(isDay)).toEqual([])
  expect(() => day('2026-02-30')).toThrow('2026-02-30 is not a day')
})
