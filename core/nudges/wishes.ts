/** How she wants to be nudged, on this phone, and what that makes of a planned minute. */
import { addDays } from '../basis/days.ts'
import { type ClockTime, clockMinutes, type Moment, moment, momentAt, wallClock, type Zone } from '../basis/zones.ts'

export type Wishes = {
  /** 'beforeBed': at her own hour, where the lamp goes out later than that. */
  readonly when: 'afterLightsOut' | 'beforeBed'
  readonly bed: ClockTime
  /** Nothing is shown from one time until the other; absent: at any hour. */
  readonly quiet?: { readonly from: ClockTime; readonly until: ClockTime }
  /** Her hour for shaking the bottles; absent: she is not reminded of it. */
  readonly shakeAt?: ClockTime
  /** One nudge for each tank, and one for each thing there is to say; else one an evening. */
  readonly split: boolean
  /** Where she is: bed and quiet hours are hers, not the tank's. */
  readonly zone: Zone
}

/** What holds until she chooses. */
export const usualWishes = (zone: Zone): Wishes => ({
  when: 'afterLightsOut',
  bed: '22:30' as ClockTime,
  split: false,
  zone,
})

const hour = 3_600_000
/** Within these of going to bed she sleeps; a lamp that goes out later does so by day. Our own judgement. */
const asleepHours = 8

/** When her clock shows a time, nearest to a moment. */
const nearTo = (near: Moment, time: ClockTime, zone: Zone): Moment => {
  const { day } = wallClock(near, zone)
  const all = [-1, 0, 1].map((step) => momentAt(addDays(day, step), clockMinutes(time), zone))
  return all.reduce((best, at) => (Math.abs(at - near) < Math.abs(best - near) ? at : best))
}

/** The minute after lights-out, or before bed where that is earlier. */
export const wished = (afterLightsOut: Moment, { when, bed, zone }: Wishes): Moment => {
  if (when === 'afterLightsOut') return afterLightsOut
  const bedtime = nearTo(moment(afterLightsOut - 6 * hour), bed, zone)
  const asleep = afterLightsOut > bedtime && afterLightsOut - bedtime <= asleepHours * hour
  return asleep ? bedtime : afterLightsOut
}

/** In the hours in which nothing is shown. */
export const isQuiet = (at: Moment, { quiet, zone }: Wishes): boolean => {
  if (!quiet) return false
  const { minutes } = wallClock(at, zone)
  const [from, until] = [clockMinutes(quiet.from), clockMinutes(quiet.until)]
  return from <= until ? minutes >= from && minutes < until : minutes >= from || minutes < until
}

/** The first moment from a planned one on that is not quiet. */
export const afterQuiet = (planned: Moment, wishes: Wishes): Moment => {
  if (!wishes.quiet || !isQuiet(planned, wishes)) return planned
  return nearTo(moment(planned + 12 * hour), wishes.quiet.until, wishes.zone)
}
