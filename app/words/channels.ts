/** The truth about reminders on this phone: what will ring, what may, what will not, and how each is mended. */
import { wallDay } from '../../core/index.ts'
import type { NudgeStanding } from '../reminders/channel.ts'
import type { Probes } from '../state/probes.ts'
import type { CalendarTaken } from '../storage/device.ts'
import { clock, dayWords } from './dates.ts'
import type { Reading } from './reading.ts'

export type Channels = {
  readonly standing: NudgeStanding
  readonly probes: Probes
  readonly calendar: CalendarTaken | undefined
}
type Today = Pick<Reading, 'today' | 'zone'>

/** The calendar still has nights ahead. */
const calendarUntil = ({ calendar }: Channels, { today }: Today): string | undefined => {
  const last = calendar?.events.at(-1)
  return last && last.night >= today ? dayWords(last.night, today) : undefined
}

/** One sentence for what happens while the app is closed. */
export const closedSentence = (channels: Channels, today: Today): string => {
  const until = calendarUntil(channels, today)
  const wakes = channels.probes.wakes === 'asked' && channels.standing === 'on'
  const mayLook = 'this browser may look once or twice a day, at an hour it picks'
  if (until && wakes) return `While Smallhours is closed, your calendar will ring until ${until}; ${mayLook}.`
  if (until) return `While Smallhours is closed, only your calendar will ring, until ${until}.`
  if (wakes) return `While Smallhours is closed, nothing is sure to ring: ${mayLook}.`
  return 'While Smallhours is closed, nothing will ring. Take the calendar file, or set the phone’s own alarm.'
}

/** One for what happens while it is open. */
export const openSentence = ({ standing }: Channels): string =>
  standing === 'on'
    ? 'While it is open, the nudge comes at its minute.'
    : 'While it is open, it shows what is due and does not nudge.'

export type ChannelWords = {
  readonly name: string
  readonly state: string
  /** What it can be relied on for. */
  readonly promise: string
  /** How it is mended; absent where there is nothing to mend. */
  readonly mend?: string
}

const install =
  'Put Smallhours on the home screen (in the browser’s menu: install, or add to home screen) and open it from there.'

export const nudgeChannel = ({ standing, probes }: Channels): ChannelWords => {
  const name = 'Nudge from this app'
  const promise = 'At its minute while Smallhours is open; not while it is closed.'
  if (probes.homeScreenFirst)
    return {
      name,
      state: 'not in this tab',
      promise,
      mend: 'This phone lets only an app on the Home Screen show nudges: Share, then Add to Home Screen, and open it from there. Do it before you write much here: what is in this tab does not follow; a backup file brings it over.',
    }
  switch (standing) {
    case 'on':
      return { name, state: 'on', promise }
    case 'off':
      return { name, state: 'off', promise, mend: 'Choose Yes above.' }
    case 'unsupported':
      return { name, state: 'not in this browser', promise, mend: 'The calendar works without it.' }
    case 'denied':
      return {
        name,
        state: 'forbidden',
        promise,
        mend: 'Allow notifications for this site in the browser’s settings, then choose Yes above. It cannot ask again by itself; the calendar needs no leave.',
      }
    case 'lost':
      return {
        name,
        state: 'taken back by the browser',
        promise,
        mend: 'Choose Yes above once more, and it will ask you.',
      }
  }
}

export const homeScreenChannel = ({ probes }: Channels): ChannelWords => ({
  name: 'On the home screen',
  state: probes.installed ? 'yes' : 'no',
  promise: 'Keeps what is here safer, and lets some browsers wake the app.',
  ...(probes.installed ? {} : { mend: install }),
})

export const wakeChannel = ({ standing, probes: { wakes, installed } }: Channels): ChannelWords => {
  const name = 'The browser wakes it'
  const promise = 'Once or twice a day at most, at an hour the browser picks: for catching up, never for an hour.'
  switch (wakes) {
    case 'asked':
      return { name, state: standing === 'on' ? 'allowed' : 'allowed, and nudges are off', promise }
    case 'notAsked':
      return { name, state: 'not asked for', promise, mend: 'Choose Yes above.' }
    case 'refused':
      return installed
        ? {
            name,
            state: 'not allowed',
            promise,
            mend: 'Allow background sync for this site in the browser’s settings.',
          }
        : { name, state: 'not allowed', promise, mend: install }
    case 'unsupported':
      return { name, state: 'not in this browser', promise }
  }
}

export const badgeChannel = ({ probes }: Channels): ChannelWords => ({
  name: 'A number on the icon',
  state: probes.badge ? (probes.installed ? 'yes' : 'only on the home screen') : 'not in this browser',
  promise: 'How many tanks wait for tonight’s dose, as of the last look.',
  ...(probes.badge && !probes.installed ? { mend: install } : {}),
})

export const calendarChannel = (channels: Channels, today: Today): ChannelWords => {
  const until = calendarUntil(channels, today)
  return {
    name: 'Your calendar',
    state: until ? `until ${until}` : channels.calendar ? 'run out' : 'not taken',
    promise: 'Rings whether Smallhours is open or not, without a network, if your calendar keeps the alarms.',
    ...(until ? {} : { mend: 'Take a calendar file.' }),
  }
}

const vias: Readonly<Record<string, string>> = {
  page: 'while Smallhours was open',
  browser: 'when the browser woke it',
  push: 'by a call from outside',
}

/** The last nudge this phone showed, and how. A word an older version wrote is passed over. */
export const lastShownWords = ({ lastShown }: Probes, { today, zone }: Today): string => {
  if (!lastShown) return 'No nudge has been shown on this phone yet.'
  const { shownAt, via } = lastShown
  const how = vias[via]
  return `Last nudge: ${dayWords(wallDay(shownAt, zone), today)}, ${clock(shownAt, zone)}${how ? `, ${how}` : ''}.`
}

export const wakeTried = 'Done: the worker looked. What is due and not shown yet is shown; otherwise nothing is.'
export const badgeTried = 'A 1 stands on the icon for ten seconds, if this phone shows one.'
export const staleCalendarWords = 'Your calendar still has the nights as they were: take a new file.'
export const copiedWords = 'Copied.'
export const notCopiedWords = 'This browser did not let it be copied: mark the lines and copy them.'
