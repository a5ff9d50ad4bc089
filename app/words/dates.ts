/** Days and times in words. Days never pass through the phone's own zone. */
import {
  addMonths,
  type Day,
  dayNumber,
  daysBetween,
  isDay,
  type Moment,
  wallClock,
  type Zone,
} from '../../core/index.ts'
import { inWords } from './numbers.ts'

// Names of our own: a date formatter takes longer to make on a slow phone than a screen to draw, and one language needs none.
const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]
/** 1970 began on a Thursday. */
const weekdays = ['Thursday', 'Friday', 'Saturday', 'Sunday', 'Monday', 'Tuesday', 'Wednesday']
const monthOf = (day: Day): string => months[Number(day.slice(5, 7)) - 1] ?? ''
const yearOf = (day: Day): string => day.slice(0, 4)

/** "5 March", whatever the year; the number stays with its month at the end of a line. */
export const dayOfMonth = (day: Day): string => `${Number(day.slice(8))}\u00a0${monthOf(day)}`
/** "5 January 2027": for an echo, where the year is half of what is being checked. */
export const dayInFull = (day: Day): string => `${dayOfMonth(day)} ${yearOf(day)}`
/** Beneath a field of digits, which two countries read in two orders; undefined while no day stands there. */
export const dayEcho = (typed: string): string | undefined =>
  isDay(typed) ? `${weekday(typed)}, ${dayInFull(typed)}` : undefined
/** "5 March", with the year where it is not this one. */
export const dayWords = (day: Day, today: Day): string =>
  yearOf(day) === yearOf(today) ? dayOfMonth(day) : dayInFull(day)
export const weekday = (day: Day): string => weekdays[((dayNumber(day) % 7) + 7) % 7] ?? ''
/** "Saturday night". */
export const nightWords = (night: Day): string => `${weekday(night)} night`

/** "tonight", "tomorrow night", "Friday night", "Friday night, 18 November". */
export const nightFrom = (night: Day, tonight: Day): string => {
  const away = daysBetween(tonight, night)
  if (away === 0) return 'tonight'
  if (away === 1) return 'tomorrow night'
  if (away === -1) return 'last night'
  return away > 1 && away < 7 ? nightWords(night) : `${nightWords(night)}, ${dayWords(night, tonight)}`
}

/** "21:34" on the wall there. */
export const clock = (at: Moment, zone: Zone): string => {
  const { minutes } = wallClock(at, zone)
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`
}
/** "about six months", for a number of nights long enough to lose count of. */
export const aboutHowLong = (nights: number): string | undefined => {
  if (nights < 14) return undefined
  if (nights < 60) return `about ${Math.round(nights / 7)} weeks`
  const whole = Math.round(nights / 30.44)
  return whole < 24 ? `about ${inWords(whole)} months` : `about ${inWords(Math.round(whole / 12))} years`
}
/** "June 2026", of any day in it. */
export const monthWords = (month: Day): string => `${monthOf(month)} ${yearOf(month)}`

/** The first days of this month and of the ones before it, newest first, as a list offers them. */
export const monthsBack = (today: Day, count: number): readonly { readonly value: Day; readonly label: string }[] =>
  Array.from({ length: count }, (_, back) => {
    const first = addMonths(`${today.slice(0, 7)}-01` as Day, -back)
    return { value: first, label: monthWords(first) }
  })
