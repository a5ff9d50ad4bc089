/**
 * An entry's id is the moment it was written, a tick and the phone that wrote it: a hybrid logical clock (Kulkarni et al.
 * 2014) as text that sorts. It gives identity, order of writing and de-duplication in one. Vector clocks would also tell
 * which entries were concurrent, which nobody here asks. Ticks are per millisecond, so they run out only in a bug.
 */
import type { Branded } from '../basis/brand.ts'
import type { DeviceId } from '../basis/ids.ts'
import { type Moment, moment } from '../basis/zones.ts'

export type Stamp = Branded<string, 'Stamp'>
const stampPattern = /^\d{15}-[0-9a-z]{3}-[0-9a-z]{4,32}$/
export const isStamp = (text: string): text is Stamp => stampPattern.test(text)

const text = (instant: number, tick: number, device: DeviceId): Stamp =>
  `${String(instant).padStart(15, '0')}-${tick.toString(36).padStart(3, '0')}-${device}` as Stamp

const zero = '0'.charCodeAt(0)
/** When the entry was written, by its phone's clock. */
export const writtenAt = (stamp: Stamp): Moment => {
  // Digit by digit: every fold asks this of every entry, and a text cut out to be read as a number costs three times that.
  let instant = 0
  for (let at = 0; at < 15; at += 1) instant = instant * 10 + stamp.charCodeAt(at) - zero
  return moment(instant)
}
export const writtenBy = (stamp: Stamp): DeviceId => stamp.slice(20) as DeviceId

/** A clock this far ahead of ours is wrong rather than quick. Our own judgement: no zone mistake is smaller. */
const farAhead = 3_600_000

/**
 * The latest stamp worth following: one written by a clock far ahead is passed over, or every later entry on every phone
 * would bear its wrong date.
 */
export const latestStamp = (stamps: Iterable<Stamp>, now: Moment): Stamp | undefined => {
  const limit = text(Math.max(0, now + farAhead), 0, '' as DeviceId)
  let latest: Stamp | undefined
  for (const stamp of stamps) if (stamp < limit && (latest === undefined || stamp > latest)) latest = stamp
  return latest
}

/** A stamp after `latest`, at `now` if the clock has moved on. */
export const nextStamp = (latest: Stamp | undefined, now: Moment, device: DeviceId): Stamp => {
  if (latest === undefined || writtenAt(latest) < now) return text(now, 0, device)
  const tick = Number.parseInt(latest.slice(16, 19), 36) + 1
  return tick < 36 ** 3 ? text(writtenAt(latest), tick, device) : text(writtenAt(latest) + 1, 0, device)
}
