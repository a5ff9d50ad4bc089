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

const zones = [
  'Europe/London',
  'America/New_York',
  'Australia/Lord_Howe',
  'Asia/Kolkata',
  'America/St_Johns',
  'Pacific/Auckland',
  'Africa/Casablanca',
  'Asia/Tokyo',
]
const begins = Date.UTC(2027, 0, 1)

test('the lamp of a dose’s night goes out within twelve hours of it, thirteen where the clocks change', () => {
  const cases = tally('before lights-out', 'after midnight', 'more than twelve hours away')
  const when = fc.record({
    where: fc.constantFrom(...zones.map(zone)),
    lightsOut: fc.constantFrom('21:00', '21:30', '00:30', '05:00', '11:00', '23:59'),
    minutes: fc.oneof(
      fc.nat(525_600),
      fc.nat(4_320).map((minutes) => 121_000 + minutes),
    ),
  })
  const law = fc.property(when, ({ where, lightsOut, minutes }) => {
    const at = moment(begins + minutes * 60_000)
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
  holds(law, 2_000)
  cases.expectAtLeast(3)
})
