/** Days and times in words. Days never pass through the phone's own zone. */
import { addMonths, type Day, dayNumber, daysBetween, type Moment, type Zone } from '../../core/index.ts'

const formats = new Map<string, Intl.DateTimeFormat>()
const format = (options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat => {
  const key = JSON.stringify(options)
  const known = formats.get(key)
  if (known) return known
  const made = new Intl.DateTimeFormat('en-GB', options)
  formats.set(key, made)
  return made
}
const of = (day: Day): Date => new Date(dayNumber(day) * 86_400_000)

/** A day's number stays with its month at the end of a line. */
const heldTogether = (words: string): string => words.replace(' ', '\u00a0')

/** "5 March", with the year where it is not this one. */
export const dayWords = (day: Day, today: Day): string =>
  heldTogether(
    format({
      day: 'numeric',
      month: 'long',
      timeZone: 'UTC',
      ...(day.slice(0, 4) === today.slice(0, 4) ? {} : { year: 'numeric' }),
    }).format(of(day)),
  )
/** "5 March", whatever the year: to tell two things of one shelf apart. */
export const dayOfMonth = (day: Day): string => dayWords(day, day)
/** "5 January 2027": for an echo, where the year is half of what is being checked. */
export const dayInFull = (day: Day): string =>
  heldTogether(format({ day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }).format(of(day)))
export const weekday = (day: Day): string => format({ weekday: 'long', timeZone: 'UTC' }).format(of(day))
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
export const clock = (at: Moment, zone: Zone): string =>
  format({ hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZone: zone }).format(new Date(at))
/** "about six months", for a number of nights long enough to lose count of. */
export const aboutHowLong = (nights: number): string | undefined => {
  if (nights < 14) return undefined
  if (nights < 60) return `about ${Math.round(nights / 7)} weeks`
  const months = Math.round(nights / 30.44)
  return months < 24
    ? `about ${wordsFor[months] ?? months} months`
    : `about ${wordsFor[Math.round(months / 12)] ?? Math.round(months / 12)} years`
}
const wordsFor = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
]

/** "June 2026", of any day in it. */
export const monthWords = (month: Day): string =>
  format({ month: 'long', year: 'numeric', timeZone: 'UTC' }).format(of(month))

/** The first days of this month and of the ones before it, newest first, as a list offers them. */
export const monthsBack = (today: Day, count: number): readonly { readonly value: Day; readonly label: string }[] =>
  Array.from({ length: count }, (_, back) => {
    const first = addMonths(`${today.slice(0, 7)}-01` as Day, -back)
    return { value: first, label: monthWords(first) }
  })
