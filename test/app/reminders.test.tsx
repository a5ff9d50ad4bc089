/** The truth about reminders: every probe of the browser, flipped, changes what is said; and her own hours hold at once. */
import 'fake-indexeddb/auto'
import { render, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { WishFields } from '../../app/screens/Reminders/WishFields.tsx'
import { device, matter, setMatter } from '../../app/state/device.ts'
import { type Probes, probe } from '../../app/state/probes.ts'
import type { CalendarTaken } from '../../app/storage/device.ts'
import { claimNudge, lastShown } from '../../app/storage/nudges.ts'
import {
  badgeChannel,
  type Channels,
  calendarChannel,
  closedSentence,
  homeScreenChannel,
  lastShownWords,
  nudgeChannel,
  openSentence,
  wakeChannel,
} from '../../app/words/channels.ts'
import { day } from '../../core/index.ts'
import { at, done, given, london } from '../support/given.ts'
import { lab } from '../support/givenLab.ts'

const plain = (text: string) => text.replace(/\u00a0/g, ' ')
const today = { today: day('2026-11-25'), zone: london }
const none: Probes = {
  notifications: 'unsupported',
  installed: false,
  homeScreenFirst: false,
  wakes: 'unsupported',
  badge: false,
  screenLock: false,
  lastShown: undefined,
}
const taken = (until: string): CalendarTaken => ({
  series: 'series1',
  sequence: 0,
  takenAt: at('2026-11-01 12:00'),
  events: [{ key: 'last', night: day(until), at: at(`${until} 21:20`) }],
})
const channels = (more: Partial<Channels> = {}, probes: Partial<Probes> = {}): Channels => ({
  standing: 'on',
  calendar: undefined,
  ...more,
  probes: { ...none, ...probes },
})

describe('the one sentence', () => {
  const says = (more: Partial<Channels>, probes: Partial<Probes> = {}) =>
    plain(closedSentence(channels(more, probes), today))

  test('never promises what this phone does not do', () => {
    expect(says({})).toMatch(/^While Smallhours is closed, nothing will ring\./)
    expect(says({ calendar: taken('2027-02-17') })).toBe(
      'While Smallhours is closed, only your calendar will ring, until 17 February 2027.',
    )
    expect(says({}, { wakes: 'asked' })).toMatch(/nothing is sure to ring: this browser may look/)
    expect(says({ calendar: taken('2027-02-17') }, { wakes: 'asked' })).toMatch(
      /^While .* calendar will ring until .*may look/,
    )
  })

  test('does not count a calendar that has run out, a wake that was refused, or one without nudges', () => {
    expect(says({ calendar: taken('2026-11-24') })).toMatch(/nothing will ring/)
    expect(says({ calendar: taken('2026-11-25') })).toMatch(/only your calendar/)
    for (const wakes of ['unsupported', 'refused', 'notAsked'] as const)
      expect(says({}, { wakes })).toMatch(/nothing will ring/)
    for (const standing of ['off', 'denied', 'lost', 'unsupported'] as const)
      expect(says({ standing }, { wakes: 'asked' })).toMatch(/nothing will ring/)
  })

  test('and while it is open, only a nudge that is on comes', () => {
    expect(openSentence(channels())).toContain('comes at its minute')
    for (const standing of ['off', 'denied', 'lost', 'unsupported'] as const)
      expect(openSentence(channels({ standing }))).toContain('does not nudge')
  })
})

describe('each way', () => {
  test('says its state, and how it is mended where it can be', () => {
    const nudge = (standing: Channels['standing']) => nudgeChannel(channels({ standing }))
    expect(nudge('on').mend).toBeUndefined()
    const states = (['on', 'off', 'unsupported', 'denied', 'lost'] as const).map((standing) => nudge(standing).state)
    expect(new Set(states).size).toBe(5)
    for (const standing of ['off', 'unsupported', 'denied', 'lost'] as const) expect(nudge(standing).mend).toBeTruthy()
    expect(nudgeChannel(channels({ standing: 'unsupported' }, { homeScreenFirst: true })).mend).toContain('Home Screen')
    expect(homeScreenChannel(channels({}, { installed: true }))).toMatchObject({ state: 'yes' })
    expect(homeScreenChannel(channels())).toMatchObject({ state: 'no', mend: expect.stringContaining('home screen') })
    expect(wakeChannel(channels({}, { wakes: 'asked' })).state).toBe('allowed')
    expect(wakeChannel(channels({ standing: 'off' }, { wakes: 'asked' })).state).toContain('nudges are off')
    expect(wakeChannel(channels({}, { wakes: 'refused' })).mend).toContain('home screen')
    expect(wakeChannel(channels({}, { wakes: 'refused', installed: true })).mend).toContain('settings')
    expect(badgeChannel(channels({}, { badge: true, installed: true })).state).toBe('yes')
    expect(badgeChannel(channels({}, { badge: true })).state).toContain('home screen')
    expect(badgeChannel(channels()).state).toBe('not in this browser')
    expect(calendarChannel(channels(), today).state).toBe('not taken')
    expect(calendarChannel(channels({ calendar: taken('2026-11-24') }), today).state).toBe('run out')
    expect(plain(calendarChannel(channels({ calendar: taken('2026-12-24') }), today).state)).toBe('until 24 December')
  })

  test('tells the last nudge and what woke it, and passes over a word it does not know', () => {
    const last = (via: string) =>
      plain(lastShownWords({ ...none, lastShown: { shownAt: at('2026-11-23 21:20'), via } }, today))
    expect(lastShownWords(none, today)).toContain('No nudge has been shown')
    expect(last('page')).toBe('Last nudge: 23 November, 21:20, while Smallhours was open.')
    expect(last('browser')).toContain('when the browser woke it')
    expect(last('push')).toContain('by a call from outside')
    expect(last('notification')).toBe('Last nudge: 23 November, 21:20.')
  })
})

describe('the probes', () => {
  type Browser = {
    permission?: NotificationPermission
    standalone?: boolean
    display?: boolean
    wakes?: { readonly tags: readonly string[]; readonly state: PermissionState }
    badge?: boolean
    lock?: boolean
  }
  const extra: string[] = []
  const set = (name: string, value: unknown) => {
    Object.defineProperty(navigator, name, { configurable: true, value })
    extra.push(name)
  }
  const browser = ({ permission, standalone, display = false, wakes, badge, lock }: Browser) => {
    if (permission) {
      vi.stubGlobal('Notification', { permission })
      const periodicSync = wakes && { getTags: async () => wakes.tags }
      set('serviceWorker', { getRegistration: async () => (periodicSync ? { periodicSync } : {}) })
    }
    if (wakes) set('permissions', { query: async () => ({ state: wakes.state }) })
    if (standalone !== undefined) set('standalone', standalone)
    if (badge) set('setAppBadge', async () => {})
    if (lock) set('wakeLock', {})
    vi.stubGlobal('matchMedia', () => ({ matches: display }))
  }
  afterEach(() => {
    vi.unstubAllGlobals()
    for (const name of extra.splice(0)) Reflect.deleteProperty(navigator, name)
  })

  test('find nothing where there is nothing', async () => {
    browser({})
    expect(await probe()).toMatchObject({ ...none, lastShown: undefined })
  })

  test.each([
    ['notifications', { permission: 'granted' }, { notifications: 'granted' }],
    ['refused', { permission: 'denied' }, { notifications: 'denied' }],
    ['an app of its own', { display: true }, { installed: true }],
    ['the home screen', { standalone: true }, { installed: true, homeScreenFirst: false }],
    ['a tab that must go to the home screen first', { standalone: false }, { installed: false, homeScreenFirst: true }],
    ['a tab that need not', { standalone: false, permission: 'default' }, { homeScreenFirst: false }],
    [
      'wakes that are asked for',
      { permission: 'granted', wakes: { tags: ['evening'], state: 'granted' } },
      { wakes: 'asked' },
    ],
    [
      'wakes not asked for',
      { permission: 'granted', wakes: { tags: ['other'], state: 'granted' } },
      { wakes: 'notAsked' },
    ],
    ['wakes refused', { permission: 'granted', wakes: { tags: ['evening'], state: 'denied' } }, { wakes: 'refused' }],
    ['a number on the icon', { badge: true }, { badge: true }],
    ['a screen that stays on', { lock: true }, { screenLock: true }],
  ] as const satisfies readonly (readonly [string, Browser, Partial<Probes>])[])(
    'flip with %s',
    async (_, given, found) => {
      browser(given)
      expect(await probe()).toMatchObject(found)
    },
  )

  test('know the last nudge that was shown', async () => {
    browser({})
    const shown = (when: string, via: string) => ({ plannedAt: at(when), shownAt: at(when), via })
    await claimNudge(device, ['evening/2026-11-21/Europe/London'], shown('2026-11-21 21:20', 'page'))
    await claimNudge(
      device,
      ['evening/2026-11-23/Europe/London', 'backup/2026-11'],
      shown('2026-11-23 22:00', 'browser'),
    )
    expect(done(await lastShown(device))).toMatchObject({ shownAt: at('2026-11-23 22:00'), via: 'browser' })
    expect((await probe()).lastShown?.via).toBe('browser')
  })
})

describe('her own hours', () => {
  const world = given(lab).world()
  const reading = { world, now: at('2026-11-25 12:00'), ...today } as Parameters<typeof WishFields>[0]['reading']
  const radio = (name: string | RegExp) => screen.getByRole('radio', { name })

  test('hold with the touch, and what was chosen before stays', async () => {
    render(<WishFields reading={reading} />)
    expect(radio(/^20 minutes after/)).toHaveProperty('checked', true)
    await userEvent.click(radio(/^Before I go to bed/))
    await waitFor(() => expect(matter('wishes')).toMatchObject({ when: 'beforeBed', bed: '22:30' }))
    await userEvent.click(radio(/^Show nothing between/))
    await waitFor(() =>
      expect(matter('wishes')).toMatchObject({ when: 'beforeBed', quiet: { from: '22:30', until: '07:00' } }),
    )
    await userEvent.click(radio(/^At an hour of its own/))
    await waitFor(() => expect(matter('wishes')).toMatchObject({ shakeAt: '18:00', quiet: { from: '22:30' } }))
    await userEvent.click(radio(/^One for each tank/))
    await waitFor(() => expect(matter('wishes')).toMatchObject({ split: true }))
    await userEvent.click(radio('None'))
    await waitFor(() => expect(matter('wishes')).not.toHaveProperty('quiet'))
    expect(matter('wishes')).toMatchObject({ shakeAt: '18:00', split: true, when: 'beforeBed' })
    await userEvent.click(radio('No reminder'))
    await waitFor(() => expect(matter('wishes')).not.toHaveProperty('shakeAt'))
    expect(matter('wishes')).not.toHaveProperty('zone')
  })

  test('a change says that the calendar still has the nights as they were', async () => {
    await setMatter('calendar', taken('2027-02-17'))
    render(<WishFields reading={reading} />)
    expect(screen.queryByText(/take a new file/)).toBeNull()
    await userEvent.click(radio(/^20 minutes after/))
    await screen.findByText(/take a new file/)
  })
})
