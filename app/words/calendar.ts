/** What stands in her calendar, and what is said of it. */
import { type EveningAhead, type Moment, wallDay, type Zone } from '../../core/index.ts'
import type { CalendarTaken } from '../storage/device.ts'
import { clock, dayOfMonth, dayWords, nightWords, weekday } from './dates.ts'
import { list } from './list.ts'
import { millilitres, plural } from './numbers.ts'
import type { Reading } from './reading.ts'

/** "Dose: Long Gallery and Cockle". */
export const eveningSummary = ({ tanks }: EveningAhead): string => `Dose: ${list(tanks.map(({ name }) => name))}`
export const trialSummary = 'Smallhours: a trial, nothing is due'
export const trialTaken = 'Add the event to your calendar and wait two minutes. If it rings, the nights will.'
export const cancelledSummary = 'No dose this night'

/** What holds on every phone: which portion to take, the app says on the evening. */
export const eveningDescription = ({ night, tanks, plans, lightsOut, zone }: EveningAhead): string => {
  const amounts = tanks.map(({ tank, name }) => {
    const total = plans.reduce((sum, plan) => sum + (plan.tank === tank ? plan.amount : 0), 0)
    return `${name}: ${millilitres(total)}.`
  })
  return [
    ...amounts,
    `For ${nightWords(night)}; the lights go out at ${clock(lightsOut, zone)}.`,
    'Open Smallhours to see what to take, and to note it.',
  ].join('\n')
}

const reach = (taken: CalendarTaken, today: Reading['today']): string | undefined => {
  const last = taken.events.at(-1)
  return last && dayWords(last.night, today)
}

/** How far her calendar reaches. */
export const calendarReach = (taken: CalendarTaken | undefined, { today }: Pick<Reading, 'today'>): string => {
  const until = taken && reach(taken, today)
  return until ? `The file you took reaches until ${until}.` : 'You have taken no calendar file yet.'
}

/** After it was handed over. */
export const calendarTakenWords = (
  { taken, cancelled }: { readonly taken: CalendarTaken; readonly cancelled: number },
  how: 'shared' | 'downloaded',
  { today }: Pick<Reading, 'today'>,
): string => {
  const where = how === 'shared' ? 'handed to the app you chose' : 'among this phone’s downloads: open it there'
  const off =
    cancelled > 0
      ? ` It takes ${plural(cancelled, 'night', 'nights')} back that ${cancelled === 1 ? 'is' : 'are'} no longer due.`
      : ''
  return `${plural(taken.events.length, 'night', 'nights')} until ${reach(taken, today)}, ${where}.${off} Then open one in your calendar and look whether it says “at time of event”: some calendars drop the alarm.`
}

export const oldSeriesWords =
  'If your calendar shows a night twice after a new file, delete the older “Dose” entries: not every calendar takes a new file for an update.'

export const nothingAhead =
  'No dose night is ahead that would ring: there is no plan, or your quiet hours hold back every one.'

/** For the phone's own alarm, by hand: fourteen evenings are as many as anybody sets. */
const alarms = 14
export const alarmText = (evenings: readonly EveningAhead[]): string => {
  const several = new Set(evenings.flatMap(({ tanks }) => tanks.map(({ tank }) => tank))).size > 1
  return evenings
    .slice(0, alarms)
    .map(({ at, zone, tanks }) => `${when(at, zone)}${several ? `: ${list(tanks.map(({ name }) => name))}` : ''}`)
    .join('\n')
}
const when = (at: Moment, zone: Zone): string => {
  const day = wallDay(at, zone)
  return `${weekday(day)}, ${dayOfMonth(day)}, ${clock(at, zone)}`
}
