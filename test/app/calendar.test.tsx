/**
 * The calendar file, read by a calendar library that shares no code with the one that writes it: ical.js 2 (RFC 5545), its
 * moments against ECMAScript's Temporal. Octets, line ends and escapes are checked against the RFC itself: section 3.1 (lines
 * of at most 75 octets, folded, CRLF) and 3.3.11 (escaped text); sequence numbers against section 3.8.7.4.
 */
// @vitest-environment node
import ICAL from 'ical.js'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, test } from 'vitest'
import { calendarFile, trialFile } from '../../app/reminders/calendarFile.ts'
import { alarmText, calendarReach, calendarTakenWords } from '../../app/words/calendar.ts'
import {
  type ClockTime,
  day,
  daysAhead,
  eveningsAhead,
  holdPlan,
  type LampClock,
  type Moment,
  type PlanId,
  skipNight,
  usualWishes,
  type Wishes,
  type World,
} from '../../core/index.ts'
import { at, given, london, zone } from '../support/given.ts'
import { cockle, dose, greenPlan, lab, longGallery, onHand, planOf, tankOf, usGal } from '../support/givenLab.ts'

const wishes = usualWishes(london)
const trays = onHand({ portions: 900, each: 1, frozen: '2026-10-01' })
const plan = planOf({ first: '2026-11-25', amount: 1 })
const now = at('2026-11-25 12:00')
const made = (world: World, more: { last?: Parameters<typeof calendarFile>[1]; at?: Moment; wishes?: Wishes } = {}) => {
  const when = more.at ?? now
  return calendarFile(eveningsAhead(world, when, more.wishes ?? wishes), more.last, { now: when, series: 'series1' })
}

const parsed = (text: string) => {
  const calendar = new ICAL.Component(ICAL.parse(text))
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component)
    const alarm = component.getFirstSubcomponent('valarm')
    const trigger = alarm?.getFirstPropertyValue('trigger')
    return {
      uid: event.uid,
      sequence: event.sequence,
      start: event.startDate.toJSDate().getTime(),
      utc: event.startDate.zone.tzid,
      summary: event.summary,
      description: event.description,
      status: component.getFirstPropertyValue('status'),
      stamp: component.getFirstPropertyValue('dtstamp')?.toString(),
      action: alarm?.getFirstPropertyValue('action'),
      trigger: trigger instanceof ICAL.Duration ? trigger.toSeconds() : undefined,
    }
  })
}
const wall = (moment: number, where: string) =>
  Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(where).toString().slice(0, 16)

describe('the file', () => {
  const world = given(lab, trays, plan).world()
  const { text, taken } = made(world)
  const events = parsed(text)

  test('has one event a due night, for twelve weeks, each with an alarm at its own minute', () => {
    expect(daysAhead).toBeGreaterThanOrEqual(60)
    expect(daysAhead).toBeLessThanOrEqual(90)
    expect(events).toHaveLength(daysAhead / 2 + 1)
    let night = Temporal.PlainDate.from('2026-11-25')
    for (const event of events) {
      const meant = night.toZonedDateTime({ timeZone: 'Europe/London', plainTime: '21:20' }).epochMilliseconds
      expect(event).toMatchObject({
        start: meant,
        utc: 'UTC',
        action: 'DISPLAY',
        trigger: 0,
        sequence: 0,
        status: null,
      })
      night = night.add({ days: 2 })
    }
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length)
    expect(taken.events.at(-1)?.night).toBe('2027-02-17')
    expect(events[0]).toMatchObject({ summary: 'Dose: longgallery', stamp: '2026-11-25T12:00:00Z' })
    expect(events[0]?.description.replace(/\u00a0/g, ' ')).toBe(
      'longgallery: 1 mL.\nFor Wednesday night; the lights go out at 21:00.\nOpen Smallhours to see what to take, and to note it.',
    )
  })

  test('is made of lines of at most 75 octets that end in CRLF, whatever the tank is called', () => {
    const name = `${'珊瑚礁の小さな海🪸'.repeat(12)}, back\\slash; comma, and\nline`
    const odd = made(given(tankOf(longGallery, usGal(200), { name }), lab.slice(1), trays, plan).world()).text
    expect(odd.endsWith('\r\n')).toBe(true)
    expect(odd.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    const lines = odd.split('\r\n')
    const octets = lines.map((line) => new TextEncoder().encode(line).length)
    expect(Math.max(...octets)).toBeLessThanOrEqual(75)
    expect(octets.filter((length) => length > 70).length).toBeGreaterThan(40)
    // No character is cut in two: each line decodes by itself.
    for (const line of lines) expect(line).not.toContain('\ufffd')
    expect(parsed(odd)[0]?.summary).toBe(`Dose: ${name}`)
    expect(odd).toContain('back\\\\slash\\;')
  })

  test('says nothing that makes a calendar subscribe to it', () => {
    expect(text).not.toMatch(/^(METHOD|X-WR-|REFRESH-INTERVAL|X-PUBLISHED)/m)
  })
})

describe('the next file', () => {
  const book = given(lab, trays, plan)
  const first = made(book.world())

  test('takes the place of the one before, night by night', () => {
    const later = made(book.world(), { last: first.taken, at: at('2026-11-26 12:00') })
    const [before, after] = [parsed(first.text), parsed(later.text)]
    expect(after.every(({ sequence }) => sequence === 1)).toBe(true)
    const same = after.filter(({ uid }) => before.some((event) => event.uid === uid))
    expect(same.length).toBeGreaterThan(35)
    expect(later.taken.series).toBe('series1')
  })

  test('cancels what is no longer due, and what is past it leaves alone', () => {
    const held = given(lab, trays, plan)
    held.does(dose(at('2026-11-25 21:30')))
    held.does((world) => holdPlan(world, { plan: greenPlan, until: day('2026-12-10') }, at('2026-11-26 10:00')))
    const later = made(held.world(), { last: first.taken, at: at('2026-11-26 12:00') })
    const events = parsed(later.text)
    const cancelled = events.filter(({ status }) => status === 'CANCELLED')
    const standing = events.filter(({ status }) => status !== 'CANCELLED')
    expect(wall(standing[0]?.start ?? 0, 'Europe/London')).toBe('2026-12-10T21:20')
    // The old nights were odd dates, the new ones are even: from 27 November on all of them go.
    expect(wall(cancelled[0]?.start ?? 0, 'Europe/London')).toBe('2026-11-27T21:20')
    expect(cancelled).toHaveLength(first.taken.events.length - 1)
    expect(cancelled.every(({ action, sequence }) => action === undefined && sequence === 1)).toBe(true)
    expect(later.cancelled).toHaveLength(cancelled.length)
  })

  test('moves an event to its new minute under its old name', () => {
    const lamp = tankOf(longGallery, usGal(200), { lightsOut: '22:30' }).map((fact) => ({
      ...fact,
      at: at('2026-11-25 12:30'),
    }))
    const later = made(given(lab, trays, plan, lamp).world(), { last: first.taken, at: at('2026-11-25 13:00') })
    expect(later.cancelled).toEqual([])
    expect(parsed(later.text)[0]?.uid).toBe(parsed(first.text)[0]?.uid)
    expect(wall(parsed(later.text)[0]?.start ?? 0, 'Europe/London')).toBe('2026-11-25T22:50')
  })
})

describe('two tanks', () => {
  const both = () =>
    given(
      lab,
      tankOf(cockle, usGal(200), { lightsOut: '22:00' }),
      trays,
      plan,
      planOf({ first: '2026-11-26', amount: 2, tank: cockle, plan: 'cockleplan' as PlanId, every: 3 }),
    )

  test('share an evening, after the later lamp; apart they have one each', () => {
    const events = parsed(made(both().world()).text)
    const titles = events.map(({ start, summary }) => `${wall(start, 'Europe/London').slice(5)} ${summary}`)
    expect(titles.slice(0, 5)).toEqual([
      '11-25T21:20 Dose: longgallery',
      '11-26T22:20 Dose: cockle',
      '11-27T21:20 Dose: longgallery',
      '11-29T22:20 Dose: longgallery and cockle',
      '12-01T21:20 Dose: longgallery',
    ])
    const apart = parsed(made(both().world(), { wishes: { ...wishes, split: true } }).text)
    expect(
      apart.filter(({ start }) => wall(start, 'Europe/London').startsWith('2026-11-29')).map(({ summary }) => summary),
    ).toEqual(['Dose: longgallery', 'Dose: cockle'])
    expect(new Set(apart.map(({ uid }) => uid)).size).toBe(apart.length)
  })
})

/** Zones with changes of an hour and of half an hour, north and south, and one with none. */
const zones = [
  'Europe/London',
  'America/New_York',
  'Australia/Lord_Howe',
  'America/St_Johns',
  'Pacific/Auckland',
  'Africa/Casablanca',
  'Asia/Kolkata',
  'America/Santiago',
].map(zone)

test.each(zones)(
  'every due night of three years in %s has one event, after its lights-out, at the minute meant',
  (where) => {
    for (const lamp of ['followsClocks', 'dial'] as const satisfies readonly LampClock[]) {
      const set = '2026-01-02T11:11'
      const book = given(
        tankOf(longGallery, usGal(200), { zone: where, lamp, lightsOut: '01:45' }),
        lab.slice(1),
        onHand({ portions: 9_000, each: 1, frozen: '2025-12-20' }),
        planOf({ first: '2026-01-05', amount: 1, every: 1 }),
      )
      const world = book.world()
      const rung = new Map<string, number>()
      let from = at('2026-01-05 12:00', where)
      // File after file, as she takes them.
      while (rung.size < 1_096) {
        const file = made(world, { at: from, wishes: usualWishes(where) })
        for (const { night, at: moment } of file.taken.events) {
          expect(rung.get(night) ?? moment).toBe(moment)
          rung.set(night, moment)
        }
        expect(parsed(file.text).map(({ start }) => start)).toEqual(file.taken.events.map(({ at: moment }) => moment))
        from = (from + 80 * 86_400_000) as Moment
      }
      const offset = Temporal.PlainDateTime.from(set)
        .toZonedDateTime('Europe/London')
        .toInstant()
        .toZonedDateTimeISO(where).offset
      let night = Temporal.PlainDate.from('2026-01-05')
      for (const [on, moment] of [...rung].slice(0, 1_096)) {
        expect(on).toBe(night.toString())
        const morning = night.add({ days: 1 }).toPlainDateTime('01:45')
        const out = morning.toZonedDateTime(lamp === 'dial' ? offset : where, { disambiguation: 'compatible' })
        expect(moment).toBe(out.add({ minutes: 20 }).epochMilliseconds)
        night = night.add({ days: 1 })
      }
    }
  },
  60_000,
)

describe('in words', () => {
  const world = given(lab, trays, plan).world()
  const { taken } = made(world)
  const today = day('2026-11-25')

  test('until when it reaches, and what to look at once', () => {
    const plain = (text: string) => text.replace(/\u00a0/g, ' ')
    expect(plain(calendarReach(taken, { today }))).toBe('The file you took reaches until 17 February 2027.')
    expect(calendarReach(undefined, { today })).toBe('You have taken no calendar file yet.')
    expect(plain(calendarTakenWords({ taken, cancelled: 1 }, 'downloaded', { today }))).toContain(
      '43 nights until 17 February 2027, among this phone’s downloads: open it there. It takes 1 night back that is no longer due.',
    )
  })

  test('fourteen evenings for the phone’s own alarm', () => {
    const lines = alarmText(eveningsAhead(world, now, wishes))
      .replace(/\u00a0/g, ' ')
      .split('\n')
    expect(lines).toHaveLength(14)
    expect(lines[0]).toBe('Wednesday, 25 November, 21:20')
  })
})

test('what is noted already, skipped, or swallowed by quiet hours has no event', () => {
  const book = given(lab, trays, plan)
  book.does((world) => skipNight(world, { plan: greenPlan }, at('2026-11-25 11:00')))
  expect(eveningsAhead(book.world(), now, wishes)[0]?.night).toBe('2026-11-27')
  const quiet = { from: '21:00' as ClockTime, until: '07:00' as ClockTime }
  expect(eveningsAhead(book.world(), now, { ...wishes, quiet })).toEqual([])
})

test('the trial is one event, two minutes ahead, and says that nothing is due', () => {
  const [event, ...more] = parsed(trialFile(at('2026-11-25 12:00:30')))
  expect(more).toEqual([])
  expect(event).toMatchObject({ action: 'DISPLAY', trigger: 0, start: at('2026-11-25 12:03') })
  expect(event?.summary).toContain('nothing is due')
})
