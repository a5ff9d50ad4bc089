/** What has a current value is recorded whole; the latest one holds, and history stays. */
import type { Moment } from '../basis/zones.ts'

/** Two phones' clocks differ by minutes; a clock set wrong differs by more. */
export const clockGrace = 600_000

/**
 * The snapshot in force at a moment. One from the future never is, unless there is no other: a phone whose clock fell back
 * years must still know its tanks.
 * @param described in the order they happened, never empty for a thing that exists
 */
export const inForce = <Snapshot extends { readonly at: Moment }>(
  described: readonly Snapshot[],
  now: Moment,
): Snapshot | undefined => described.findLast(({ at }) => at <= now + clockGrace) ?? described[0]

/** The last of a thing's endings comes after the description that holds, and not from the future. */
export const retiredAt = (
  endings: readonly { readonly at: Moment }[] | undefined,
  described: { readonly at: Moment },
  now: Moment,
): boolean => {
  const ended = endings?.findLast(({ at }) => at <= now + clockGrace)
  return ended !== undefined && ended.at >= described.at
}

/** When a thing that had ended was last begun again; undefined if it never ended, or has not come back. */
export const begunAgain = (
  endings: readonly { readonly at: Moment }[] | undefined,
  described: readonly { readonly at: Moment }[] | undefined,
  now: Moment,
): Moment | undefined => {
  const ended = endings?.findLast(({ at }) => at <= now + clockGrace)
  return ended && described?.find(({ at }) => at > ended.at && at <= now + clockGrace)?.at
}
