/** Where and when a request is made: the moment, and the zone whose calendar its days are in. */
import { type Day, isDay } from './days.ts'
import { type Moment, moment, momentAt, wallDay, type Zone } from './zones.ts'

export type Here = { readonly now: Moment; readonly zone: Zone }

export const today = ({ now, zone }: Here): Day => wallDay(now, zone)

/** The moment meant by a bare day: now if it is today, else its noon. Moments begin with 1970; a bottle is no older. */
export const momentOn = (day: Day, here: Here): Moment =>
  day === today(here) ? here.now : moment(Math.max(0, momentAt(day, 720, here.zone)))

/** The same digits with month and day changed about, if that is another day: 2027-08-04 for 2027-04-08. */
export const monthAndDaySwapped = (day: Day): Day | undefined => {
  const swapped = `${day.slice(0, 5)}${day.slice(8)}-${day.slice(5, 7)}`
  return swapped !== day && isDay(swapped) ? swapped : undefined
}
