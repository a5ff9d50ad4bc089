/** A note as it is typed, and the moment it is about. */
import {
  clockMinutes,
  isClockTime,
  isDay,
  type Moment,
  momentAt,
  momentOn,
  type NoteWritten,
  type TankId,
  wallClock,
} from '../../../core/index.ts'
import { clock } from '../../words/dates.ts'
import type { Reading } from '../useReading.ts'

/** An empty clock: now, or that day without a time. An empty tank: none of them. */
export type NoteFields = { readonly text: string; readonly day: string; readonly clock: string; readonly tank: string }

export const newNote = (day: string): NoteFields => ({ text: '', day, clock: '', tank: '' })

const noon = 720
export const asFields = ({ text, at, tank }: NoteWritten, { zone }: Reading): NoteFields => {
  const { day, minutes } = wallClock(at, zone)
  const timeless = minutes === noon && at % 60_000 === 0
  return { text, day, clock: timeless ? '' : clock(at, zone), tank: tank ?? '' }
}

export const momentOf = ({ day, clock: time }: NoteFields, { today, zone }: Reading, now: Moment): Moment => {
  const meant = isDay(day) ? day : today
  return isClockTime(time) ? momentAt(meant, clockMinutes(time), zone) : momentOn(meant, { now, zone })
}

/** Nobody changes a day or a clock to the one it has: what is left alone keeps its second. */
export const momentAgain = (fields: NoteFields, note: NoteWritten, reading: Reading, now: Moment): Moment => {
  const before = asFields(note, reading)
  return fields.day === before.day && fields.clock === before.clock ? note.at : momentOf(fields, reading, now)
}

export const told = ({ text, tank }: NoteFields, at: Moment) => ({
  text,
  at,
  ...(tank ? { tank: tank as TankId } : {}),
})
