/** No dose lies outside its night: whenever and wherever it is given, the lamp of its night is at most half a day away. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { lightsOutOf, moment } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { given, zone } from '../../support/given.ts'
import {
  blueClip,
  doors,
  dose,
  foodOf,
  greenFood,
  longGallery,
  planOf,
  portionOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

/** A clock change in 2027 of each zone that has one, as published in the IANA time zone database. */
const zones = [
  { name: 'Europe/London', change: Date.UTC(2027, 9, 31, 1) },
  { name: 'America/New_York', change: Date.UTC(2027, 10, 7, 6) },
  { name: 'Australia/Lord_Howe', change: Date.UTC(2027, 3, 3, 15) },
  { name: 'America/St_Johns', change: Date.UTC(2027, 2, 14, 5, 30) },
  { name: 'Pacific/Auckland', change: Date.UTC(2027, 3, 3, 14) },
  { name: 'Africa/Casablanca', change: Date.UTC(2027, 1, 7, 2) },
  { name: 'Asia/Kolkata', change: undefined },
  { name: 'Asia/Tokyo', change: undefined },
]
const begins = Date.UTC(2027, 0, 1)
const year = fc.nat(525_600).map((minutes) => begins + minutes * 60_000)
/** Any minute of a year, every other one within a day of a clock change. */
const placeAndTime = fc.constantFrom(...zones).chain(({ name, change = begins }) => {
  const nearly = fc.integer({ min: -1_440, max: 1_440 }).map((minutes) => change + minutes * 60_000)
  return fc.tuple(fc.constant(zone(name)), fc.oneof(year, nearly))
})

test('the lamp of a dose’s night goes out within twelve hours of it, thirteen where the clocks change', () => {
  const cases = tally('before lights-out', 'after midnight', 'more than twelve hours away')
  const lamp = fc.constantFrom('21:00', '21:30', '00:30', '05:00', '11:00', '23:59')
  const law = fc.property(placeAndTime, lamp, ([where, instant], lightsOut) => {
    const at = moment(instant)
    const tank = tankOf(longGallery, usGal(200), { zone: where, lightsOut })
    const book = given(tank, foodOf(greenFood), doors, planOf({ first: '2026-12-01', amount: 1 }))
    book.does(dose(at, portionOf(blueClip, 1)))
    const { fact } = book.entries().at(-1) ?? {}
    const [described] = book.world().tanks.get(longGallery) ?? []
    const night = fact?.kind === 'doseGiven' ? fact.served[0]?.night : undefined
    if (!night || !described) throw new Error('no dose')
    const away = (at - lightsOutOf(night, described)) / 3_600_000
    expect(Math.abs(away)).toBeLessThanOrEqual(13)
    cases.note('before lights-out', away < 0)
    cases.note('after midnight', away > 3)
    cases.note('more than twelve hours away', Math.abs(away) > 12)
  })
  holds(law, 1_200)
  cases.expectAtLeast(3)
}, 60_000)
