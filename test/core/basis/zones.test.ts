import { Temporal } from 'temporal-polyfill'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { day, isClockTime, isZone, moment, momentAt, wallClock, wallDay, type Zone } from '../../../core/index.ts'

const zone = (name: string): Zone => {
  if (!isZone(name)) throw new Error(`${name} is not a zone`)
  return name
}

/** Northern, southern, half-hour, quarter-hour, a change of half an hour, changes around Ramadan, none at all. */
const zones = [
  { name: 'Europe/London', forward: 4, back: 4, minutes: 60 },
  { name: 'America/New_York', forward: 4, back: 4, minutes: 60 },
  { name: 'America/St_Johns', forward: 4, back: 4, minutes: 60 },
  { name: 'Australia/Lord_Howe', forward: 4, back: 4, minutes: 30 },
  { name: 'Pacific/Auckland', forward: 4, back: 4, minutes: 60 },
  { name: 'Pacific/Chatham', forward: 4, back: 4, minutes: 60 },
  // Ramadan of 2030 begins early in January, so 2029 has three changes.
  { name: 'Africa/Casablanca', forward: 4, back: 5, minutes: 60 },
  { name: 'Asia/Kolkata', forward: 0, back: 0, minutes: 0 },
  { name: 'Asia/Tokyo', forward: 0, back: 0, minutes: 0 },
]

const from = Temporal.Instant.from('2026-01-01T00:00Z')
const until = Temporal.Instant.from('2030-01-01T00:00Z')

const findTransitions = (name: string): Temporal.ZonedDateTime[] => {
  const found: Temporal.ZonedDateTime[] = []
  let at = from.toZonedDateTimeISO(name).getTimeZoneTransition('next')
  while (at && Temporal.Instant.compare(at.toInstant(), until) < 0) {
    found.push(at)
    at = at.getTimeZoneTransition('next')
  }
  return found
}
/** Found while the tests are gathered: the finder asks the clock how far to look, and later there is none. */
const found = new Map(zones.map(({ name }) => [name, findTransitions(name)]))
const transitions = (name: string) => found.get(name) ?? []
/** Where a zone has no transition, two ordinary days still have to read right. */
const turns = (name: string) => {
  const changes = transitions(name)
  return changes.length > 0 ? changes : [from.add({ hours: 4_000 }).toZonedDateTimeISO(name)]
}

/** The phone need not be where the tank is; JavaScript's own dates follow the phone. */
describe.each(['UTC', 'Europe/London', 'America/New_York', 'Australia/Lord_Howe'])('on a phone set to %s', (phone) => {
  const before = process.env.TZ
  beforeEach(() => {
    process.env.TZ = phone
  })
  afterEach(() => {
    if (before === undefined) delete process.env.TZ
    else process.env.TZ = before
  })

  test('the phone is really there', () => {
    const ahead = from.toZonedDateTimeISO(phone).offsetNanoseconds / 60e9
    expect(new Date(Date.UTC(2026, 0, 1)).getTimezoneOffset() + ahead).toBe(0)
  })

  test.each(zones)(
    'the wall clock of $name is right every half hour for a day around every clock change',
    ({ name }) => {
      for (const turn of turns(name))
        for (let halfHour = -48; halfHour <= 48; halfHour += 1) {
          const at = turn.add({ minutes: 30 * halfHour })
          const shown = wallClock(moment(at.epochMilliseconds), zone(name))
          expect(shown, at.toString()).toEqual({ day: at.toPlainDate().toString(), minutes: at.hour * 60 + at.minute })
        }
    },
  )

  test.each(zones)('a time on the wall of $name is found again, skipped and repeated times included', (tank) => {
    let skipped = 0
    let repeated = 0
    for (const turn of turns(tank.name))
      for (const date of [-1, 0, 1].map((days) => turn.toPlainDate().add({ days })))
        for (let minutes = 0; minutes < 1440; minutes += 15) {
          const local = date.toPlainDateTime({ hour: Math.floor(minutes / 60), minute: minutes % 60 })
          const earlier = local.toZonedDateTime(tank.name, { disambiguation: 'earlier' })
          const twoReadings = !earlier.equals(local.toZonedDateTime(tank.name, { disambiguation: 'later' }))
          if (twoReadings && earlier.toPlainDateTime().equals(local)) repeated += 1
          else if (twoReadings) skipped += 1
          const meant = local.toZonedDateTime(tank.name, { disambiguation: 'compatible' }).epochMilliseconds
          const found = momentAt(day(date.toString()), minutes, zone(tank.name))
          expect(found - meant, `${local} ${tank.name}`).toBe(0)
        }
    const quarters = tank.minutes / 15
    expect({ skipped, repeated }).toEqual({ skipped: tank.forward * quarters, repeated: tank.back * quarters })
  })
})

test('a day is the one on the tank wall, not the one in Greenwich', () => {
  const at = moment(Date.UTC(2026, 5, 1, 23, 30))
  expect(wallDay(at, zone('America/New_York'))).toBe('2026-06-01')
  expect(wallDay(at, zone('Asia/Tokyo'))).toBe('2026-06-02')
})

test('moments before 1970 and years of another century still have a day', () => {
  expect(wallClock(moment(-1), zone('UTC'))).toEqual({ day: '1969-12-31', minutes: 1439 })
})

test.each([
  'Europe/London',
  'America/Argentina/Buenos_Aires',
  'America/Port-au-Prince',
  'Etc/GMT+5',
  'Etc/GMT-14',
  'UTC',
])('%s is a zone', (name) => expect(isZone(name)).toBe(true))
test.each([
  '',
  '+05:00',
  'UTC+05:00',
  'Etc/GMT+99',
  'Moon/Tycho',
  'Europe/London ',
  'constructor',
  'toString',
  '__proto__',
  'x'.repeat(80),
])('“%s” is not a zone', (name) => expect(isZone(name)).toBe(false))

test('a clock time has two digits on either side', () => {
  expect(['00:00', '09:05', '19:59', '23:59'].filter(isClockTime)).toHaveLength(4)
  expect(['24:00', '9:05', '12:60', '12:5', '12.30', '', '12:30:00'].filter(isClockTime)).toEqual([])
})
