/**
 * When a lamp really goes out. What the four kinds of clock do is common practice, no source; what they come to by the
 * wall is checked against ECMAScript's Temporal, which shares no code with ours. The worked evenings are our own.
 */
import { Temporal } from 'temporal-polyfill'
import { describe, expect, test } from 'vitest'
import {
  addDays,
  clockChange,
  type Day,
  day,
  type Fact,
  fold,
  isClockTime,
  type LampClock,
  lampAsk,
  lampNight,
  notePowerCut,
  nudgeAt,
  seeLamp,
  type TankDescribed,
  tankAt,
  usualWishes,
  type World,
} from '../../../core/index.ts'
import { at, given, london, refusalOf, zone } from '../../support/given.ts'
import { lab, longGallery, moveIn, tankOf, usGal } from '../../support/givenLab.ts'

const withLamp = (lamp: LampClock, more: object = {}) => tankOf(longGallery, usGal(200), { lamp, ...more })
const tankIn = (world: World): TankDescribed => {
  const tank = tankAt(world, longGallery, at('2029-01-01 12:00'))
  if (!tank) throw new Error('no tank')
  return tank
}
const wall = (moment: number, where: string) =>
  Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(where).toPlainTime().toString().slice(0, 5)
const goesOut = (world: World, night: string) => wall(lampNight(world, tankIn(world), day(night)).out, 'Europe/London')
const nudged = (world: World, night: string) => nudgeAt(world, tankIn(world), day(night), usualWishes(london))
const cut = (when: string, minutes: number): Fact => ({
  kind: 'powerCut',
  at: at(when),
  minutes,
  tanks: [longGallery],
})
const clockOf = (time: string) => {
  if (!isClockTime(time)) throw new Error(`${time} is no time`)
  return time
}
const seen = (when: string, time: string): Fact => ({
  kind: 'lampSeen',
  at: at(when),
  tank: longGallery,
  goesOut: clockOf(time),
})

describe('a dial, set in winter for 21:00', () => {
  test('is an hour late by the wall once the clocks have gone forward, and the nudge goes along', () => {
    const world = given(withLamp('dial')).world()
    expect(goesOut(world, '2027-03-27')).toBe('21:00')
    expect(goesOut(world, '2027-03-28')).toBe('22:00')
    expect(wall(nudged(world, '2027-03-27'), 'Europe/London')).toBe('21:20')
    expect(wall(nudged(world, '2027-03-28'), 'Europe/London')).toBe('22:20')
    expect(goesOut(world, '2027-10-31')).toBe('21:00')
  })

  test('is later by each power cut as well, and right again once it is turned', () => {
    const world = given(withLamp('dial'), cut('2027-03-20 03:00', 30), cut('2027-04-02 14:00', 20)).world()
    expect(goesOut(world, '2027-03-19')).toBe('21:00')
    expect(goesOut(world, '2027-03-20')).toBe('21:30')
    expect(goesOut(world, '2027-04-02')).toBe('22:50')
    expect(lampNight(world, tankIn(world), day('2027-04-02'))).toMatchObject({ late: 110, unsure: false })
    const turned = given(withLamp('dial'), cut('2027-04-02 14:00', 20), seen('2027-04-03 10:00', '21:00')).world()
    expect(goesOut(turned, '2027-04-02')).toBe('22:20')
    expect(goesOut(turned, '2027-04-03')).toBe('21:00')
    // Set in summer, it is early in winter.
    expect(goesOut(turned, '2027-11-01')).toBe('20:00')
    expect(lampNight(turned, tankIn(turned), day('2027-11-01')).late).toBe(-60)
  })

  test('comes round in a day: twenty hours behind is four ahead', () => {
    const world = given(withLamp('dial'), cut('2027-02-02 14:00', 20 * 60)).world()
    expect(lampNight(world, tankIn(world), day('2027-02-02')).late).toBe(-240)
    expect(goesOut(world, '2027-02-02')).toBe('17:00')
  })

  test('that goes out after midnight keeps its night', () => {
    const world = given(withLamp('dial', { lightsOut: '23:30' }), cut('2027-02-02 14:00', 45)).world()
    expect(lampNight(world, tankIn(world), day('2027-02-02')).out).toBe(at('2027-02-03 00:15'))
  })

  test('another name for its tank does not set it, another time does', () => {
    const renamed = tankOf(longGallery, usGal(200), { lamp: 'dial', name: 'Gallery' }).map((fact) => ({
      ...fact,
      at: at('2027-06-01 12:00'),
    }))
    const reset = tankOf(longGallery, usGal(200), { lamp: 'dial', lightsOut: '21:30' }).map((fact) => ({
      ...fact,
      at: at('2027-06-01 12:00'),
    }))
    expect(goesOut(given(withLamp('dial'), renamed).world(), '2027-06-02')).toBe('22:00')
    expect(goesOut(given(withLamp('dial'), reset).world(), '2027-06-02')).toBe('21:30')
  })

  test('a cut elsewhere, or this evening after it went out, changes nothing tonight', () => {
    const elsewhere: Fact = { kind: 'powerCut', at: at('2027-02-02 14:00'), minutes: 30, tanks: [] }
    expect(goesOut(given(withLamp('dial'), elsewhere).world(), '2027-02-02')).toBe('21:00')
    const after = given(withLamp('dial'), cut('2027-02-02 22:30', 30)).world()
    expect(goesOut(after, '2027-02-02')).toBe('21:00')
    expect(goesOut(after, '2027-02-03')).toBe('21:30')
  })
})

test('a clock of its own knows no summer time, and goes on without power', () => {
  const world = given(withLamp('ownClock'), cut('2027-04-02 14:00', 20)).world()
  expect(goesOut(world, '2027-04-02')).toBe('22:00')
})

test('a clock that forgets is not guessed at after a cut, until she has looked', () => {
  const cutOff = given(withLamp('losesTime'), cut('2027-02-02 14:00', 20))
  expect(lampNight(cutOff.world(), tankIn(cutOff.world()), day('2027-02-02'))).toMatchObject({ late: 0, unsure: true })
  cutOff.note(seen('2027-02-03 23:40', '23:35'))
  const tank = tankIn(cutOff.world())
  expect(lampNight(cutOff.world(), tank, day('2027-02-03'))).toMatchObject({ late: 155, unsure: false })
})

test('a lamp that follows the clocks goes out at the same time on every wall', () => {
  for (const world of [given(withLamp('followsClocks')).world(), given(tankOf(longGallery, usGal(200))).world()]) {
    expect(goesOut(world, '2027-03-27')).toBe('21:00')
    expect(goesOut(world, '2027-03-28')).toBe('21:00')
    expect(lampAsk(world, tankIn(world), at('2027-03-26 12:00'))).toBeUndefined()
  }
})

describe.each([
  'Europe/London',
  'America/New_York',
  'Australia/Lord_Howe',
  'Asia/Kolkata',
  'America/St_Johns',
  'Pacific/Auckland',
  'Africa/Casablanca',
  'Asia/Tokyo',
])('in %s, every night of three years', (where) => {
  test.each(['21:00', '23:45', '02:30'])(
    'a dial set for %s goes out at one and the same moment of every day',
    (set) => {
      const book = given(withLamp('dial', { zone: where, lightsOut: set }))
      const world = book.world()
      const tank = tankIn(world)
      // A clock that never changes again, as Temporal has it: the zone's offset on the day it was set.
      const offset = Temporal.Instant.fromEpochMilliseconds(moveIn).toZonedDateTimeISO(where).offset
      const [hour = 0, minute = 0] = set.split(':').map(Number)
      let night: Day = day('2026-01-02')
      for (let step = 0; step < 1_096; step++) {
        const out = Temporal.PlainDate.from(hour < 6 ? addDays(night, 1) : night).toZonedDateTime({
          timeZone: offset,
          plainTime: { hour, minute },
        }).epochMilliseconds
        expect(lampNight(world, tank, night).out).toBe(out)
        night = addDays(night, 1)
      }
    },
  )

  test('a change of the clocks is told of on the three days before it, and on no other', () => {
    const world = given(withLamp('dial', { zone: where })).world()
    const tank = tankIn(world)
    const noon = (date: Temporal.PlainDate) => date.toZonedDateTime({ timeZone: where, plainTime: '12:00' })
    let date = Temporal.PlainDate.from('2026-01-02')
    for (let step = 0; step < 1_096; step++) {
      const ahead = [1, 2, 3].find(
        (days) => noon(date.add({ days })).offsetNanoseconds !== noon(date.add({ days: days - 1 })).offsetNanoseconds,
      )
      const told = clockChange(tank, at(`${date} 12:00`, zone(where)))
      expect(told?.day).toBe(ahead === undefined ? undefined : date.add({ days: ahead }).toString())
      if (ahead !== undefined) {
        const change = noon(date.add({ days: ahead })).offsetNanoseconds - noon(date).offsetNanoseconds
        expect(told?.forward).toBe(change / 60e9)
      }
      date = date.add({ days: 1 })
    }
  })
})

describe('what she says of a lamp', () => {
  const world = given(lab).world()
  const now = at('2027-04-02 15:00')

  test('is kept as she says it', () => {
    expect(seeLamp(world, { tank: longGallery, goesOut: '22:10' }, now)).toEqual({
      ok: true,
      value: [{ kind: 'lampSeen', at: now, tank: longGallery, goesOut: '22:10' }],
    })
    const minutes = notePowerCut(world, { minutes: '95', tanks: [longGallery], backAt: at('2027-04-02 14:00') }, now)
    expect(minutes).toEqual({
      ok: true,
      value: [{ kind: 'powerCut', at: at('2027-04-02 14:00'), minutes: 95, tanks: [longGallery] }],
    })
  })

  test('is refused with a reason where it cannot be', () => {
    const asked = { minutes: '30', tanks: [longGallery], backAt: now }
    expect(refusalOf(seeLamp(world, { tank: longGallery, goesOut: '25:00' }, now))).toEqual({ why: 'lightsOutMissing' })
    expect(refusalOf(notePowerCut(world, { ...asked, minutes: '0' }, now))).toEqual({ why: 'cutNotWhole' })
    expect(refusalOf(notePowerCut(world, { ...asked, minutes: '1.5' }, now))).toEqual({ why: 'cutNotWhole' })
    expect(refusalOf(notePowerCut(world, { ...asked, minutes: '-3' }, now))).toEqual({ why: 'cutNotWhole' })
    expect(refusalOf(notePowerCut(world, { ...asked, minutes: '30000' }, now)).why).toBe('cutTooLong')
    expect(refusalOf(notePowerCut(world, { ...asked, tanks: [] }, now))).toEqual({ why: 'tankUnknown' })
    const later = at('2027-04-02 16:00')
    expect(refusalOf(notePowerCut(world, { ...asked, backAt: later }, now))).toEqual({ why: 'notYet', at: later })
  })
})

test('what is crossed out was never so', () => {
  const book = given(withLamp('dial'))
  const [entry] = book.note(cut('2027-02-02 14:00', 30))
  if (!entry) throw new Error('nothing written')
  book.note({ kind: 'entryStruckOut', at: at('2027-02-02 15:00'), target: entry })
  expect(goesOut(fold(book.entries()), '2027-02-02')).toBe('21:00')
})
