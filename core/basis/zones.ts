/** Moments, and what the wall clock of a zone shows at them. */
import { tzOffset } from '@date-fns/tz'
import type { Branded } from './brand.ts'
import { type Day, dayFromNumber, dayNumber } from './days.ts'

const dayLength = 86_400_000

/** Milliseconds since 1970 in UTC. */
export type Moment = Branded<number, 'Moment'>
export const moment = (milliseconds: number): Moment => milliseconds as Moment

/** An IANA zone name. */
export type Zone = Branded<string, 'Zone'>
/**
 * True for a zone this machine knows. A bare offset is not a zone: it has no clock changes. `tzOffset` alone says yes to
 * "UTC+05:00", where it falls back to reading the offset, and to "constructor", which its cache inherits.
 */
export const isZone = (text: string): text is Zone =>
  /^[A-Z]\w*([/-][A-Za-z]\w*)*$|^Etc\/GMT[+-](\d|1[0-4])$/.test(text) &&
  text.length < 65 &&
  !Number.isNaN(tzOffset(text, new Date(0)))

type NativeTime = {
  readonly Instant: {
    readonly fromEpochMilliseconds: (at: number) => {
      readonly toZonedDateTimeISO: (zone: string) => { readonly offsetNanoseconds: number }
    }
  }
}
/** ECMAScript's own calendar, in engines that have it. */
const native = (globalThis as { readonly Temporal?: NativeTime }).Temporal

/**
 * Minutes east of Greenwich. The engine's own calendar is asked first: the formatter that `tzOffset` needs takes 30 to 60 ms
 * to make (Chromium 156, a desk machine), several times that on a phone, and Tonight waits for it.
 */
export const offsetMinutes = (zone: string, at: number): number => {
  if (native === undefined) return tzOffset(zone, new Date(at))
  try {
    return (
      native.Instant.fromEpochMilliseconds(Math.floor(at)).toZonedDateTimeISO(zone).offsetNanoseconds / 60_000_000_000
    )
  } catch {
    // A zone that only the formatters know, or a moment beyond the calendar.
    return tzOffset(zone, new Date(at))
  }
}

/** A time on the wall clock, `HH:mm`. */
export type ClockTime = Branded<string, 'ClockTime'>
export const isClockTime = (text: string): text is ClockTime => /^([01]\d|2[0-3]):[0-5]\d$/.test(text)
/** @param minutes after midnight, 0 to 1439 */
export const clockTime = (minutes: number): ClockTime =>
  `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}` as ClockTime
/** Minutes after midnight, 0 to 1439. */
export const clockMinutes = (time: ClockTime): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3))

export type WallClock = { readonly day: Day; readonly minutes: number }

/** What the wall clock shows. */
export const wallClock = (at: Moment, zone: Zone): WallClock => {
  const local = at + offsetMinutes(zone, at) * 60_000
  const number = Math.floor(local / dayLength)
  return { day: dayFromNumber(number), minutes: Math.floor((local - number * dayLength) / 60_000) }
}
export const wallDay = (at: Moment, zone: Zone): Day => wallClock(at, zone).day

/**
 * When the wall clock shows this. A time that a clock change skips is read as that much later; one that comes twice, as
 * the first: the "compatible" reading of ECMAScript's Temporal and of RFC 5545. TZDate is not asked: it goes by way of the
 * phone's own zone, and misses the first of two where phone and tank change their clocks on the same day.
 */
export const momentAt = (day: Day, minutes: number, zone: Zone): Moment => {
  const local = dayNumber(day) * dayLength + minutes * 60_000
  const offsetAt = (at: number) => offsetMinutes(zone, at) * 60_000
  // No zone changes its clock twice within two days, so these are the offsets on either side of a change, if there is one.
  const before = offsetAt(local - dayLength)
  const after = offsetAt(local + dayLength)
  const fits = (offset: number) => offsetAt(local - offset) === offset
  return moment(local - (fits(before) || !fits(after) ? before : after))
}
