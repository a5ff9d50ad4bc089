/**
 * The coming evenings as a file any calendar takes in (RFC 5545): one event a night at its own moment in UTC, which is right
 * for every kind of lamp and wherever the phone is, with an alarm at that moment. Written by ical-generator.
 */
import ical, { ICalAlarmType, type ICalCalendar, ICalEventStatus, ICalEventTransparency } from 'ical-generator'
import { type EveningAhead, type Moment, moment } from '../../core/index.ts'
import type { CalendarEvent, CalendarTaken } from '../storage/device.ts'
import { cancelledSummary, eveningDescription, eveningSummary, trialSummary } from '../words/calendar.ts'

export type Calendar = {
  readonly text: string
  readonly taken: CalendarTaken
  /** In the last file, and no longer due: cancelled in this one. */
  readonly cancelled: readonly CalendarEvent[]
}

const minutes = 60_000
const duration = 5 * minutes

/**
 * The next file of a series. A calendar that knows the series takes the higher sequence for the newer word on each event.
 * @param last undefined: this phone's first
 * @param series for the first; the same for ever after
 */
export const calendarFile = (
  evenings: readonly EveningAhead[],
  last: CalendarTaken | undefined,
  { now, series }: { readonly now: Moment; readonly series: string },
): Calendar => {
  const name = last?.series ?? series
  const sequence = last ? last.sequence + 1 : 0
  const keys = new Set(evenings.map(({ key }) => key))
  const cancelled = (last?.events ?? []).filter(({ key, at }) => at > now && !keys.has(key))
  const calendar = empty()
  const common = ({ key, at }: Pick<CalendarEvent, 'key' | 'at'>) => ({
    id: `${name}-${key}@smallhours.invalid`,
    sequence,
    stamp: new Date(now),
    start: new Date(at),
    end: new Date(at + duration),
    transparency: ICalEventTransparency.TRANSPARENT,
  })
  for (const evening of evenings) {
    const summary = eveningSummary(evening)
    calendar
      .createEvent({ ...common(evening), summary, description: eveningDescription(evening) })
      .createAlarm({ type: ICalAlarmType.display, trigger: 0, description: summary })
  }
  for (const event of cancelled)
    calendar.createEvent({ ...common(event), summary: cancelledSummary, status: ICalEventStatus.CANCELLED })
  const events = evenings.map(({ key, night, at }) => ({ key, night, at }))
  return {
    text: textOf(calendar),
    taken: { series: name, sequence, takenAt: now, events },
    cancelled,
  }
}

/** One event, two minutes ahead, to hear whether her calendar rings at all. */
export const trialFile = (now: Moment): string => {
  const at = Math.ceil(now / minutes) * minutes + 2 * minutes
  return alarmsFile([{ key: `trial-${at}`, at: moment(at), summary: trialSummary }], now)
}

/** A few moments that must be heard whatever the app does, as one file: an event and an alarm for each. */
export const alarmsFile = (
  alarms: readonly { readonly key: string; readonly at: Moment; readonly summary: string }[],
  now: Moment,
): string => {
  const calendar = empty()
  for (const { key, at, summary } of alarms)
    calendar
      .createEvent({
        id: `${key}@smallhours.invalid`,
        stamp: new Date(now),
        start: new Date(at),
        end: new Date(at + duration),
        summary,
        transparency: ICalEventTransparency.TRANSPARENT,
      })
      .createAlarm({ type: ICalAlarmType.display, trigger: 0, description: summary })
  return textOf(calendar)
}

const empty = (): ICalCalendar => ical({ prodId: { company: 'Smallhours', product: 'evenings', language: 'EN' } })
/** The last line is a line too; the library leaves its end out. */
const textOf = (calendar: ICalCalendar): string => `${calendar.toString().trimEnd()}\r\n`
