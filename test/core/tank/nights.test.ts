/**
 * Which night a moment belongs to, checked against a second reckoning that shares no code with ours: ECMAScript's Temporal
 * (temporal-polyfill) with the zone rules of the machine. The rule itself, a cut opposite lights-out on the wall clock, is
 * our own reading of the trade.
 */
import { Temporal } from 'temporal-polyfill'
import { describe, expect, test } from 'vitest'
import { type ClockTime, isClockTime, lightsOutOf, moment, momentAt, nightOf, wallDay } from '../../../core/index.ts'
import { zone } from '../../support/given.ts'

const zones = [
  { name: 'Europe/London', changes: 8 },
  { name: 'America/New_York', changes: 8 },
  { name: 'Australia/Lord_Howe', changes: 8 },
  { name: 'Asia/Kolkata', changes: 0 },
  { name: 'America/St_Johns', changes: 8 },
  { name: 'Pacific/Auckland', changes: 8 },
  // Ramadan of 2030 begins early in January, so 2029 has three changes.
  { name: 'Africa/Casablanca', changes: 9 },
  { name: 'Asia/Tokyo', changes: 0 },
]
const from = Temporal.Instant.from('2026-01-01T00:00Z')
const until = Temporal.Instant.from('2030-01-01T00:00Z')

/** Found while the tests are gathered: the finder asks the clock how far to look, and later there is none. */
const transitions = new Map(
  zones.map(({ name }) => {
    const found: Temporal.ZonedDateTime[] = []
    let at = from.toZonedDateTimeISO(name).getTimeZoneTransition('next')
    while (at && Temporal.Instant.compare(at.toInstant(), until) < 0) {
      found.push(at)
      at = at.getTimeZoneTransition('next')
    }
    return [name, found] as const
  }),
)
/** Where no clock ever changes, an ordinary day still has to read right. */
const turns = (name: string): readonly Temporal.ZonedDateTime[] => {
  const found = transitions.get(name) ?? []
  return found.length > 0 ? found : [from.add({ hours: 4_000 }).toZonedDateTimeISO(name)]
}

/** Every quarter of an hour for a day and a half on either side of a change, as Temporal reads the wall. */
const quarters = new Map(
  zones.map(({ name }) => [
    name,
    turns(name).flatMap((turn) =>
      Array.from({ length: 289 }, (_, index) => {
        const at = turn.add({ minutes: 15 * (index - 144) })
        const day = at.toPlainDate()
        const days = [-1, 0, 1].map((step) => day.add({ days: step }).toString())
        return { at: moment(at.epochMilliseconds), minutes: at.hour * 60 + at.minute, days, text: at.toString() }
      }),
    ),
  ]),
)

const clock = (text: string): ClockTime => {
  if (!isClockTime(text)) throw new Error(`${text} is no time`)
  return text
}
/**
 * The cut and the days it parts, written out by hand for each lamp: how far the evening that names the night lies from the
 * date on the wall, from the cut on and before it.
 */
const lamps = [
  { lightsOut: '21:00', cut: '09:00', fromCut: 0, beforeCut: -1 },
  { lightsOut: '21:30', cut: '09:30', fromCut: 0, beforeCut: -1 },
  { lightsOut: '23:59', cut: '11:59', fromCut: 0, beforeCut: -1 },
  // Cut at an hour that clock changes skip and repeat.
  { lightsOut: '14:15', cut: '02:15', fromCut: 0, beforeCut: -1 },
  // The lamp goes out after midnight: the night is still called by its evening.
  { lightsOut: '00:30', cut: '12:30', fromCut: 0, beforeCut: -1 },
  { lightsOut: '05:00', cut: '17:00', fromCut: 0, beforeCut: -1 },
  // A tank whose day is turned round sleeps at eleven in the morning.
  { lightsOut: '11:00', cut: '23:00', fromCut: 1, beforeCut: 0 },
]

test.each(zones)('$name changes its clock $changes times in the four years', ({ name, changes }) => {
  expect(transitions.get(name)).toHaveLength(changes)
})

describe.each(lamps)('with lights-out at $lightsOut', ({ lightsOut, cut, fromCut, beforeCut }) => {
  const cutMinutes = Number(cut.slice(0, 2)) * 60 + Number(cut.slice(3))
  const eveningOf = (minutes: number): number => (minutes >= cutMinutes ? fromCut : beforeCut)

  test.each(zones)('nights in $name are those of the wall clock around every clock change', ({ name }) => {
    const nights = { zone: zone(name), lightsOut: clock(lightsOut) }
    const wrong = (quarters.get(name) ?? []).flatMap(({ at, minutes, days, text }) => {
      const [ours, theirs] = [nightOf(at, nights), days[1 + eveningOf(minutes)]]
      return ours === theirs ? [] : [`${text} is ${ours}, not ${theirs}`]
    })
    expect(quarters.get(name)?.length).toBe(289 * turns(name).length)
    expect(wrong).toEqual([])
  })

  test.each(zones)('lights-out lies in its own night in $name, on the days of a clock change too', ({ name }) => {
    const nights = { zone: zone(name), lightsOut: clock(lightsOut) }
    for (const turn of turns(name))
      for (const days of [-2, -1, 0, 1, 2]) {
        const night = wallDay(moment(turn.add({ days }).epochMilliseconds), nights.zone)
        expect(nightOf(lightsOutOf(night, nights), nights), `${night} in ${name}`).toBe(night)
      }
  })

  test.each(zones)('every minute of a day on which $name changes its clock is in the night its wall says', (tank) => {
    const nights = { zone: zone(tank.name), lightsOut: clock(lightsOut) }
    const wrong: string[] = []
    for (const turn of turns(tank.name)) {
      const day = wallDay(moment(turn.epochMilliseconds), nights.zone)
      const days = [-1, 0, 1].map((step) => turn.toPlainDate().add({ days: step }).toString())
      const before = turn.subtract({ seconds: 1 }).offsetNanoseconds
      const skipped = (turn.offsetNanoseconds - before) / 60e9
      const resumes = turn.hour * 60 + turn.minute
      for (let minutes = 0; minutes < 1440; minutes += 1) {
        // A time the change skips is read as that much later.
        const shown = minutes < resumes && minutes >= resumes - skipped ? minutes + skipped : minutes
        const [ours, theirs] = [nightOf(momentAt(day, minutes, nights.zone), nights), days[1 + eveningOf(shown)]]
        if (ours !== theirs) wrong.push(`${day} minute ${minutes} is ${ours}, not ${theirs}`)
      }
    }
    expect(wrong).toEqual([])
  })
})
