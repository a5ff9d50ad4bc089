/** Moments, and what the wall clock of a zone shows at them. */
import { TZDate, tzOffset } from '@date-fns/tz'
import type { Branded } from './brand.ts'
import { type Day, dayFromNumber, dayNumber } from './days.ts'

/** Milliseconds since 1970 in UTC. */
export type Moment = Branded<number, 'Moment'>
export const moment = (milliseconds: number): Moment => milliseconds as Moment

/** An IANA zone name. */
export type Zone = Branded<string, 'Zone'>
/** True for a zone this machine knows. A bare offset is not a zone: it has no clock changes. */
export const isZone = (text: string): text is Zone =>
  /^[A-Za-z]/.test(text) && text.length < 65 && !Number.isNaN(tzOffset(text, new Date(0)))

/** A time on the wall clock, `HH:mm`. */
export type ClockTime = Branded<string, 'ClockTime'>
export const isClockTime = (text: string): text is ClockTime => /^([01]\d|2[0-3]):[0-5]\d$/.test(text)
/** Minutes after midnight, 0 to 1439. */
export const clockMinutes = (time: ClockTime): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3))

export type WallClock = { readonly day: Day; readonly minutes: number }

/** What the wall clock shows. */
export const wallClock = (at: Moment, zone: Zone): WallClock => {
  const local = at + tzOffset(zone, new Date(at)) * 60_000
  const number = Math.floor(local / 86_400_000)
  return { day: dayFromNumber(number), minutes: Math.floor((local - number * 86_400_000) / 60_000) }
}
export const wallDay = (at: Moment, zone: Zone): Day => wallClock(at, zone).day

/**
 * When the wall clock shows this. A time that a clock change skips is read as that much later; one that comes twice, as
 * the first: the "compatible" reading of ECMAScript's Temporal and of RFC 5545.
 */
export const momentAt = (day: Day, minutes: number, zone: Zone): Moment => {
  const date = new Date(dayNumber(day) * 86_400_000)
  return moment(new TZDate(date.getUTCFullYear(), date.getUTCMonth(), date.getUTCDate(), 0, minutes, zone).getTime())
}
