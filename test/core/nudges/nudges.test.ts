/**
 * Which nights deserve a nudge, and at which moment: the moment is checked against ECMAScript's Temporal (temporal-polyfill).
 * Twenty minutes after lights-out and three hours of patience are our own figures.
 */
import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, test } from 'vitest'
import {
  addDays,
  type Day,
  day,
  daysBetween,
  holdPlan,
  type Moment,
  moment,
  nextNudge,
  nightOf,
  nudgeAt,
  nudgeDelay,
  nudgeLate,
  nudges,
  type PlanId,
  skipNight,
  type TankDescribed,
  tankAt,
  usualWishes,
  type Wishes,
  type World,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { at, given, london, zone } from '../../support/given.ts'
import {
  amberFood,
  cockle,
  dose,
  foodOf,
  greenPlan,
  lab,
  longGallery,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const none: ReadonlySet<string> = new Set()
const trays = onHand({ portions: 800, each: 1, frozen: '2026-10-01' })
const plan = planOf({ first: '2026-11-25', amount: 1 })
/** Each tank by itself, as the walk over the nights is told. */
const apart: Wishes = { ...usualWishes(london), split: true }
const askedWith = (shown: ReadonlySet<string>, wishes: Wishes = apart) => ({ shown, wishes, phone: {} })
/** The evenings with a dose in them; what else there is to say has tests of its own. */
const dosesAt = (world: World, now: Moment, shown = none, wishes = apart) =>
  nudges(world, now, askedWith(shown, wishes)).flatMap((nudge) =>
    nudge.is === 'evening' && nudge.lines.length > 0 ? [nudge] : [],
  )
const keysAt = (world: World, now: Moment, shown = none) => dosesAt(world, now, shown).map(({ key }) => key)
const planned = (world: World, now: Moment, shown = none) => nextNudge(world, now, askedWith(shown))?.plannedAt
const wednesday = `${longGallery}/2026-11-25`

describe('a dose night', () => {
  const { world } = given(lab, trays, plan)

  test('deserves a nudge from twenty minutes after lights-out, for three hours', () => {
    expect(keysAt(world(), at('2026-11-25 21:19:59'))).toEqual([])
    expect(keysAt(world(), at('2026-11-25 21:20'))).toEqual([wednesday])
    expect(keysAt(world(), at('2026-11-26 00:19:59'))).toEqual([wednesday])
    expect(keysAt(world(), at('2026-11-26 00:20'))).toEqual([])
    expect(planned(world(), at('2026-11-25 12:00'))).toBe(at('2026-11-25 21:20'))
  })

  test('is named once: what was shown is not shown again, and the next one is the night after', () => {
    const shown = new Set([wednesday])
    expect(keysAt(world(), at('2026-11-25 21:20'), shown)).toEqual([])
    expect(planned(world(), at('2026-11-25 21:20'), shown)).toBe(at('2026-11-26 21:20'))
  })

  test('carries what to take, for each food with something left to take', () => {
    const amber = given(
      lab,
      trays,
      plan,
      foodOf(amberFood),
      onHand({ portions: 9, each: 1, frozen: '2026-10-01', lot: redClip, food: amberFood }),
      planOf({ first: '2026-11-25', amount: 1, food: amberFood, plan: 'amberplan' as PlanId }),
    )
    const [nudge, ...more] = dosesAt(amber.world(), at('2026-11-25 21:20'))
    expect(more).toEqual([])
    expect(nudge?.lines.map(({ food }) => food.food).sort()).toEqual([amberFood, 'greenfood'])
    expect(nudge?.lines.every(({ servings }) => servings.length > 0)).toBe(true)
  })
})

describe('no nudge', () => {
  const now = at('2026-11-25 21:20')

  test('for a dose that is given, and the next one is for the next dose night', () => {
    const book = given(lab, trays, plan)
    book.does(dose(at('2026-11-25 20:55')))
    expect(keysAt(book.world(), now)).toEqual([])
    expect(planned(book.world(), now)).toBe(at('2026-11-27 21:20'))
  })

  test('for a night that is skipped, or on hold, or not yet due', () => {
    const skipped = given(lab, trays, plan)
    skipped.does((world) => skipNight(world, { plan: greenPlan }, at('2026-11-25 20:00')))
    expect(keysAt(skipped.world(), now)).toEqual([])
    const held = given(lab, trays, plan)
    held.does((world) => holdPlan(world, { plan: greenPlan, until: day('2027-09-12') }, at('2026-11-25 20:00')))
    expect(keysAt(held.world(), now)).toEqual([])
    expect(planned(held.world(), now)).toBe(at('2027-09-12 21:20'))
    expect(keysAt(given(lab, trays, planOf({ first: '2026-12-01', amount: 1 })).world(), now)).toEqual([])
  })

  test('where nothing usable is left, now or by then', () => {
    expect(keysAt(given(lab, plan).world(), now)).toEqual([])
    expect(planned(given(lab, plan).world(), at('2026-11-25 12:00'))).toBeUndefined()
    const old = onHand({ portions: 5, each: 1, frozen: '2024-11-20', seen: at('2026-10-01 18:00') })
    expect(planned(given(lab, old, plan).world(), at('2026-11-25 12:00'))).toBeUndefined()
  })

  test('without a plan or a tank', () => {
    expect(nextNudge(given(lab, trays).world(), now, askedWith(none))).toBeUndefined()
    expect(nextNudge(given().world(), now, askedWith(none))).toBeUndefined()
  })
})

const zones = [
  'Europe/London',
  'America/New_York',
  'Australia/Lord_Howe',
  'Africa/Cairo',
  'Africa/Casablanca',
  'America/St_Johns',
  'Asia/Kolkata',
  'Pacific/Apia',
].map(zone)
const lamps = ['21:00', '23:30', '00:15', '01:30', '02:30', '05:59', '08:00', '12:00', '18:45']
/** Clocks change in all but one of these zones in these weeks. */
const seasons = [
  { first: day('2026-03-01'), nights: 62 },
  { first: day('2026-09-25'), nights: 45 },
]
const first = day('2026-03-01')

/** Due every night and never noted. */
const neverNoted = (name: (typeof zones)[number], lightsOut: string, from: Day = first): World =>
  given(
    tankOf(longGallery, usGal(200), { zone: name, lightsOut }),
    tankOf(cockle, usGal(60), { zone: name, lightsOut: '20:00' }),
    lab.filter(({ kind }) => kind !== 'tankDescribed'),
    onHand({ portions: 3_000, each: 1, frozen: '2026-02-20' }),
    planOf({ first: from, amount: 1, every: 1 }),
  ).world()

const tankIn = (world: World): TankDescribed => {
  const tank = tankAt(world, longGallery, at('2026-03-01 12:00'))
  if (!tank) throw new Error('There is no tank')
  return tank
}

/** When Temporal's clock says that the lamp is out and the delay is over. */
const byTemporal = (night: Day, { zone: where, lightsOut }: TankDescribed): number => {
  const evening = lightsOut < '06:00' ? addDays(night, 1) : night
  return Temporal.PlainDateTime.from(`${evening}T${lightsOut}`)
    .toZonedDateTime(where, { disambiguation: 'compatible' })
    .add({ minutes: nudgeDelay }).epochMilliseconds
}

describe('whatever the zone and the lamp', () => {
  test('every night has one nudge, at the minute of the wall clock there, one after the other', {
    timeout: 60_000,
  }, () => {
    for (const [i, name] of zones.entries())
      for (const [season, { first, nights }] of seasons.entries()) {
        const lamp = lamps[(2 * i + season) % lamps.length] ?? '21:00'
        const world = neverNoted(name, lamp, first)
        const shown = new Set<string>()
        let now = moment(byTemporal(first, tankIn(world)) - 60_000)
        for (let passed = 0; passed < nights; passed++) {
          const next = nextNudge(world, now, askedWith(shown))
          if (!next) throw new Error(`No nudge after ${passed} nights in ${name}`)
          expect(next.night).toBe(addDays(first, passed))
          expect(next.plannedAt).toBe(byTemporal(next.night, tankIn(world)))
          expect(next.plannedAt).toBeGreaterThan(now)
          now = next.plannedAt
          const key = `${longGallery}/${next.night}`
          expect(keysAt(world, now, shown)).toEqual([key])
          shown.add(key)
          expect(keysAt(world, now, shown)).toEqual([])
        }
      }
  })

  test('whoever looks, and however often, shows each night once, and only in its hours', { timeout: 60_000 }, () => {
    const met = tally('looked twice in one night', 'missed a night', 'looked too early')
    const worlds = zones.flatMap((name) => lamps.slice(0, 4).map((lamp) => neverNoted(name, lamp)))
    const looks = fc.array(fc.integer({ min: 1, max: 2 * 1440 }), { minLength: 10, maxLength: 40 })
    holds(
      fc.property(fc.constantFrom(...worlds), fc.integer({ min: 0, max: 120 }), looks, (world, from, gaps) => {
        const tank = tankIn(world)
        const shown = new Set<string>()
        const due = new Set<string>()
        let now = moment(byTemporal(addDays(first, from), tank))
        for (const gap of gaps) {
          now = moment(now + gap * 60_000)
          const night = nightOf(now, tank)
          const open =
            nudgeAt(world, tank, night, apart) <= now &&
            now < nudgeAt(world, tank, night, apart) + nudgeLate * 3_600_000
          met.note('looked too early', now < nudgeAt(world, tank, night, apart))
          met.note('looked twice in one night', open && due.has(night))
          if (open) due.add(night)
          for (const nudge of dosesAt(world, now, shown)) {
            expect(shown.has(nudge.key)).toBe(false)
            expect(open).toBe(true)
            shown.add(nudge.key)
          }
        }
        expect([...shown]).toEqual([...due].map((night) => `${longGallery}/${night}`))
        met.note('missed a night', due.size < daysBetween(addDays(first, from), nightOf(now, tank)))
      }),
      150,
    )
    met.expectAtLeast(20)
  })
})
