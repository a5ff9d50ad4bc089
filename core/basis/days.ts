/**
 * Calendar days, apart from any moment. A day is text, `yyyy-MM-dd`, so that it sorts, compares and survives a file; long
 * walks step whole day numbers. Neither ever passes through a local midnight, which some days in some places do not have.
 */
import type { Branded } from './brand.ts'

export type Day = Branded<string, 'Day'>
const dayLength = 86_400_000

/** Days since 1970-01-01. */
export const dayNumber = (day: Day): number =>
  Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / dayLength

export const dayFromNumber = (number: number): Day => new Date(number * dayLength).toISOString().slice(0, 10) as Day

/** True for a day that exists, in the years 1900 to 2199: outside them a typed year is a slip. */
export const isDay = (text: string): text is Day =>
  /^(19|20|21)\d\d-\d\d-\d\d$/.test(text) &&
  !Number.isNaN(dayNumber(text as Day)) &&
  dayFromNumber(dayNumber(text as Day)) === text

/** For days written in code and tests. Throws on one that does not exist. */
export const day = (text: string): Day => {
  if (!isDay(text)) throw new Error(`${text} is not a day`)
  return text
}

export const addDays = (from: Day, days: number): Day => dayFromNumber(dayNumber(from) + days)

/** Whole days from one to the other, negative if `to` is earlier. */
export const daysBetween = (from: Day, to: Day): number => dayNumber(to) - dayNumber(from)

/**
 * Calendar months, clamped to the end of a shorter month: 31 December and two months is 28 (or 29) February. Reckoned on the
 * UTC calendar, where every day exists: a Date of the phone's zone, or one that carries a zone, has skipped days of its own.
 */
export const addMonths = (from: Day, months: number): Day => {
  const [year = 0, month = 1, date = 1] = from.split('-').map(Number)
  const lastOfMonth = new Date(Date.UTC(year, month + months, 0)).getUTCDate()
  return dayFromNumber(Date.UTC(year, month - 1 + months, Math.min(date, lastOfMonth)) / dayLength)
}

/** A length of time as a label gives it. */
export type Span = { readonly count: number; readonly unit: 'days' | 'months' }
export const addSpan = (from: Day, { count, unit }: Span): Day =>
  unit === 'months' ? addMonths(from, count) : addDays(from, count)

export const earlier = (a: Day, b: Day): Day => (b < a ? b : a)
export const later = (a: Day, b: Day): Day => (b > a ? b : a)
