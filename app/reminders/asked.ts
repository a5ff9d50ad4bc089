/** How she wants her nudges, and what this phone knows, as the core asks for them. */
import { type Moment, type Phone, usualWishes, type Wishes, type Zone } from '../../core/index.ts'
import type { CalendarTaken, KeptWishes } from '../storage/device.ts'

/** @param kept undefined: she has not chosen */
export const wishesOf = (kept: KeptWishes | undefined, zone: Zone): Wishes => ({ ...usualWishes(zone), ...kept })

export const phoneKnows = (lastBackup: Moment | undefined, calendar: CalendarTaken | undefined): Phone => ({
  lastBackup,
  calendarUntil: calendar?.events.at(-1)?.night,
})
