/** Lamps that know no summer time, and a keeper far away. Checked only against our own worked examples. */
import { expect, test } from 'vitest'
import {
  day,
  giveDose,
  nextNudge,
  nightOf,
  tankAt,
  tonight,
  usualWishes,
  wallClock,
  wallDay,
} from '../../../core/index.ts'
import { at, done, given, london, zone } from '../../support/given.ts'
import {
  blueClip,
  greenPlan,
  lab,
  longGallery,
  onHand,
  planOf,
  portionOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const trays = onHand({ portions: 300, each: 1, frozen: '2027-01-05' })

test('the clocks go forward: a dial set in winter nudges an hour later by the wall, a lamp that follows them does not', () => {
  const nightly = planOf({ first: '2027-03-20', amount: 1, every: 1 })
  const nudged = (lamp: 'dial' | 'followsClocks', night: string) => {
    const book = given(tankOf(longGallery, usGal(200), { lamp }), lab.slice(1), trays, nightly)
    const asked = { shown: new Set<string>(), wishes: usualWishes(london) }
    const next = nextNudge(book.world(), at(`${night} 12:00`), asked)
    return next && wallClock(next.plannedAt, london)
  }
  expect(nudged('dial', '2027-03-27')).toEqual({ day: '2027-03-27', minutes: 21 * 60 + 20 })
  expect(nudged('dial', '2027-03-28')).toEqual({ day: '2027-03-28', minutes: 22 * 60 + 20 })
  expect(nudged('followsClocks', '2027-03-27')).toEqual({ day: '2027-03-27', minutes: 21 * 60 + 20 })
  expect(nudged('followsClocks', '2027-03-28')).toEqual({ day: '2027-03-28', minutes: 21 * 60 + 20 })
})

test('five on Sunday morning in Tokyo is Saturday night at the tank', () => {
  const tokyo = zone('Asia/Tokyo')
  const book = given(lab, trays, planOf({ first: '2027-08-14', amount: 1 }))
  const now = at('2027-08-15 05:10', tokyo)
  const [line] = tonight(book.world(), now)
  expect(line?.night).toBe('2027-08-14')
  expect(line && wallClock(line.lightsOut, london)).toEqual({ day: '2027-08-14', minutes: 21 * 60 })
  expect(line && wallClock(line.lightsOut, tokyo)).toEqual({ day: '2027-08-15', minutes: 5 * 60 })
  book.note(...done(giveDose(book.world(), { plan: greenPlan, ...portionOf(blueClip, 1), at: now }, now)))
  expect([...(book.world().nights.get(greenPlan)?.keys() ?? [])]).toEqual([day('2027-08-14')])
  const tank = tankAt(book.world(), longGallery, now)
  expect(tank && nightOf(now, tank)).toBe('2027-08-14')
  expect(wallDay(now, tokyo)).toBe('2027-08-15')
})
