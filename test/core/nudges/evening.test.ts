/**
 * One nudge an evening and what rides along with it, by her own wishes. Our own rules: nothing outside the project says how a
 * reminder for a tank should come, so these are worked evenings; the moments are read off the wall clock.
 */
import { describe, expect, test } from 'vitest'
import {
  addDays,
  type ClockTime,
  day,
  doNotKnow,
  type EveningNudge,
  isClockTime,
  type Moment,
  nextNudge,
  nextShaking,
  nudges,
  type Phone,
  type PlanId,
  shakeBottles,
  skipNight,
  usualWishes,
  type Wishes,
  type World,
} from '../../../core/index.ts'
import { at, given, london, zone } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  cockle,
  dose,
  firstBottle,
  greenFood,
  greenPlan,
  lab,
  longGallery,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const time = (text: string): ClockTime => {
  if (!isClockTime(text)) throw new Error(`${text} is no time`)
  return text
}
const wishes = (more: Partial<Wishes> = {}): Wishes => ({ ...usualWishes(london), ...more })
type More = { shown?: ReadonlySet<string>; wishes?: Wishes; phone?: Phone }
const asked = ({ shown = new Set(), phone = {}, ...more }: More) => ({ shown, phone, wishes: more.wishes ?? wishes() })
const at2 = (world: World, now: Moment, more: More = {}) => nudges(world, now, asked(more))
const evenings = (world: World, now: Moment, more: More = {}): readonly EveningNudge[] =>
  at2(world, now, more).flatMap((nudge) => (nudge.is === 'evening' ? [nudge] : []))
const abouts = (world: World, now: Moment, more: More = {}) =>
  evenings(world, now, more).flatMap(({ notices }) => notices.map(({ about }) => about))

const backedUp: Phone = { lastBackup: at('2026-11-24 12:00') }
const trays = onHand({ portions: 90, each: 1, frozen: '2026-10-01' })
const plan = planOf({ first: '2026-11-25', amount: 1 })
const cocklePlan = planOf({ first: '2026-11-25', amount: 1, tank: cockle, plan: 'cockleplan' as PlanId })
const two = (lamp = '21:00') => given(lab, tankOf(cockle, usGal(200), { lightsOut: lamp }), trays, plan, cocklePlan)

describe('two tanks in one evening', () => {
  test('are one nudge, and apart two', () => {
    const world = two().world()
    const [one, ...more] = evenings(world, at('2026-11-25 21:20'), { phone: backedUp })
    expect(more).toEqual([])
    expect(one?.tanks.map(({ tank }) => tank)).toEqual([longGallery, cockle])
    const apart = evenings(world, at('2026-11-25 21:20'), { phone: backedUp, wishes: wishes({ split: true }) })
    expect(apart.map(({ tanks }) => tanks.map(({ tank }) => tank))).toEqual([[longGallery], [cockle]])
  })

  test('wait for the later lamp, and the one done by then is left out', () => {
    const book = two('23:00')
    expect(evenings(book.world(), at('2026-11-25 21:20'))).toEqual([])
    expect(nextNudge(book.world(), at('2026-11-25 21:00'), asked({}))?.plannedAt).toBe(at('2026-11-25 23:20'))
    expect(evenings(book.world(), at('2026-11-25 23:20'))[0]?.lines).toHaveLength(2)
    book.does(dose(at('2026-11-25 22:00')))
    const [later] = evenings(book.world(), at('2026-11-25 23:20'))
    expect(later?.tanks.map(({ tank }) => tank)).toEqual([cockle])
    // The later one skipped, there is no reason to wait any longer.
    const other = two('23:00')
    other.does((world) => skipNight(world, { plan: 'cockleplan' as PlanId }, at('2026-11-25 21:30')))
    expect(evenings(other.world(), at('2026-11-25 21:31'))[0]?.tanks.map(({ tank }) => tank)).toEqual([longGallery])
  })

  test('shown together or apart, neither is shown again when she changes her mind', () => {
    const world = two().world()
    const now = at('2026-11-25 21:20')
    const [together] = evenings(world, now)
    expect(evenings(world, now, { shown: new Set(together?.claims), wishes: wishes({ split: true }) })).toEqual([])
    const apart = evenings(world, now, { wishes: wishes({ split: true }) })
    const claims = new Set(apart.flatMap((nudge) => nudge.claims))
    expect(evenings(world, now, { shown: claims })).toEqual([])
    const first = new Set(apart[0]?.claims)
    expect(evenings(world, now, { shown: first })[0]?.tanks.map(({ tank }) => tank)).toEqual([cockle])
  })

  test('in two zones are two evenings', () => {
    const book = given(lab, tankOf(cockle, usGal(200), { zone: 'America/New_York' }), trays, plan, cocklePlan)
    const far = zone('America/New_York')
    expect(evenings(book.world(), at('2026-11-25 21:20'))[0]?.tanks.map(({ tank }) => tank)).toEqual([longGallery])
    expect(evenings(book.world(), at('2026-11-25 21:20', far))[0]?.tanks.map(({ tank }) => tank)).toEqual([cockle])
  })
})

describe('her own hours', () => {
  const late = () => given(tankOf(longGallery, usGal(200), { lightsOut: '23:30' }), lab.slice(1), trays, plan).world()

  test('before bed, where the lamp goes out later; after lights-out, where it does not', () => {
    const bed = wishes({ when: 'beforeBed', bed: time('22:30') })
    expect(nextNudge(late(), at('2026-11-25 12:00'), asked({ wishes: bed }))?.plannedAt).toBe(at('2026-11-25 22:30'))
    expect(evenings(late(), at('2026-11-25 22:29'), { wishes: bed })).toEqual([])
    expect(evenings(late(), at('2026-11-25 22:30'), { wishes: bed })).toHaveLength(1)
    const early = given(lab, trays, plan).world()
    expect(nextNudge(early, at('2026-11-25 12:00'), asked({ wishes: bed }))?.plannedAt).toBe(at('2026-11-25 21:20'))
    const turned = given(tankOf(longGallery, usGal(200), { lightsOut: '09:00' }), lab.slice(1), trays, plan).world()
    expect(nextNudge(turned, at('2026-11-25 05:00'), asked({ wishes: bed }))?.plannedAt).toBe(at('2026-11-25 09:20'))
  })

  test('a bed after midnight is the same evening’s', () => {
    const bed = wishes({ when: 'beforeBed', bed: time('00:45') })
    const world = given(tankOf(longGallery, usGal(200), { lightsOut: '02:00' }), lab.slice(1), trays, plan).world()
    expect(nextNudge(world, at('2026-11-25 12:00'), asked({ wishes: bed }))?.plannedAt).toBe(at('2026-11-26 00:45'))
    expect(nextNudge(world, at('2026-11-25 12:00'), asked({ wishes: bed }))?.night).toBe('2026-11-25')
  })

  test('in quiet hours nothing is shown, and after them only what still helps', () => {
    const short = wishes({ quiet: { from: time('21:00'), until: time('22:15') } })
    const world = given(lab, trays, plan).world()
    expect(evenings(world, at('2026-11-25 21:20'), { wishes: short })).toEqual([])
    expect(evenings(world, at('2026-11-25 22:14:59'), { wishes: short })).toEqual([])
    expect(evenings(world, at('2026-11-25 22:15'), { wishes: short })).toHaveLength(1)
    expect(nextNudge(world, at('2026-11-25 12:00'), asked({ wishes: short }))?.plannedAt).toBe(at('2026-11-25 22:15'))
    const allNight = wishes({ quiet: { from: time('21:00'), until: time('07:00') } })
    for (const now of ['2026-11-25 21:20', '2026-11-25 23:59', '2026-11-26 00:30', '2026-11-26 07:00'])
      expect(evenings(world, at(now), { wishes: allNight })).toEqual([])
    expect(nextNudge(world, at('2026-11-25 12:00'), asked({ wishes: allNight }))).toBeUndefined()
    const before = wishes({ ...allNight, quiet: { from: time('22:00'), until: time('07:00') } })
    expect(nextNudge(world, at('2026-11-25 12:00'), asked({ wishes: before }))?.plannedAt).toBe(at('2026-11-25 21:20'))
  })
})

describe('shaking', () => {
  const withBottle = () =>
    given(
      lab,
      bottleOf({ holds: 100, received: '2026-11-20', opened: '2026-11-20' }),
      planOf({ first: '2027-06-01', amount: 1 }),
    )
  const six = wishes({ shakeAt: time('18:00') })

  test('comes at her own hour, only if she chose one, and while a bottle wants it', () => {
    const book = withBottle()
    const shaken = (now: string, chosen = six) =>
      at2(book.world(), at(now), { wishes: chosen, phone: backedUp }).flatMap((nudge) =>
        nudge.is === 'shake' ? [nudge] : [],
      )
    expect(shaken('2026-11-25 17:59')).toEqual([])
    expect(shaken('2026-11-25 18:00')[0]?.shakes.map(({ bottle }) => bottle.id)).toEqual([firstBottle])
    expect(shaken('2026-11-25 18:00', wishes())).toEqual([])
    expect(nextShaking(at('2026-11-25 12:00'), six)).toBe(at('2026-11-25 18:00'))
    book.note(...shakeBottles([firstBottle], at('2026-11-25 09:00')))
    expect(shaken('2026-11-25 18:00')).toEqual([])
    expect(shaken('2026-11-26 18:00')).toHaveLength(1)
  })

  test('is said once a day', () => {
    const [nudge] = at2(withBottle().world(), at('2026-11-25 18:00'), { wishes: six, phone: backedUp })
    if (!nudge) throw new Error('nothing')
    expect(
      at2(withBottle().world(), at('2026-11-25 18:01'), { wishes: six, phone: backedUp, shown: new Set(nudge.claims) }),
    ).toEqual([])
  })
})

describe('what else there is to say', () => {
  const now = at('2026-11-25 21:20')
  const enough = onHand({ portions: 40, each: 1, frozen: '2026-10-01' })

  test('is nothing while all is well', () => {
    expect(abouts(given(lab, enough, plan).world(), now, { phone: backedUp })).toEqual([])
  })

  test('a bottle that will not be used up in time: a fortnight before its last day, and three days before', () => {
    // In the fridge since 28 September: good until 28 November, by two calendar months.
    const book = given(
      lab,
      bottleOf({ holds: 200, received: '2026-09-28', opened: '2026-09-28' }),
      planOf({ first: '2026-11-25', amount: 1 }),
    )
    const on = (date: string) =>
      evenings(book.world(), at(`${date} 21:20`), { phone: backedUp }).flatMap(({ notices }) =>
        notices.filter(({ about }) => about === 'freezeBy'),
      )
    expect(on('2026-11-13')).toEqual([])
    expect(on('2026-11-14')[0]).toMatchObject({ bottle: firstBottle, until: '2026-11-28' })
    expect(on('2026-11-25')[0]?.key).not.toBe(on('2026-11-14')[0]?.key)
    expect(on('2026-11-24')[0]?.key).toBe(on('2026-11-14')[0]?.key)
    expect(on('2026-11-29')).toEqual([])
  })

  test('portions that will not all be used by their last good day', () => {
    const old = onHand({ portions: 60, each: 1, frozen: '2025-01-10', seen: at('2026-10-01 12:00') })
    const [nudge] = evenings(given(lab, old, plan).world(), now, { phone: backedUp })
    // Good until 10 January 2027: 24 dose nights from 25 November on, so 36 are left.
    expect(nudge?.notices[0]).toMatchObject({ about: 'useSoon', lot: blueClip, until: '2027-01-10', unused: 36 })
  })

  test('food to order: two weeks before the first night without any', () => {
    const six = onHand({ portions: 6, each: 1, frozen: '2026-10-01' })
    const few = given(lab, six, plan).world()
    // Six doses from 25 November on: the first night without one is 7 December.
    expect(evenings(few, now, { phone: backedUp })[0]?.notices).toMatchObject([
      { about: 'orderBy', food: greenFood, orderBy: '2026-11-23', bareNight: '2026-12-07' },
    ])
    const eight = given(lab, onHand({ portions: 8, each: 1, frozen: '2026-10-01' }), plan).world()
    expect(abouts(eight, now, { phone: backedUp })).toEqual([])
  })

  test('a backup that is a month old, and a calendar that ends within a week', () => {
    const world = given(lab, enough, plan).world()
    expect(abouts(world, now, { phone: { lastBackup: at('2026-10-24 12:00') } })).toEqual(['backup'])
    expect(abouts(world, now, { phone: { ...backedUp, calendarUntil: day('2026-12-02') } })).toEqual(['calendarEnds'])
    expect(abouts(world, now, { phone: { ...backedUp, calendarUntil: day('2026-12-03') } })).toEqual([])
  })

  test('clocks that change within three days, where a lamp does not know', () => {
    const dial = given(
      tankOf(longGallery, usGal(200), { lamp: 'dial' }),
      lab.slice(1),
      onHand({ portions: 200, each: 1, frozen: '2026-10-01' }),
      planOf({ first: '2027-03-24', amount: 1, every: 1 }),
    ).world()
    const phone = { lastBackup: at('2027-03-20 12:00') }
    expect(abouts(dial, at('2027-03-24 21:20'), { phone })).toEqual([])
    expect(abouts(dial, at('2027-03-25 21:20'), { phone })).toEqual(['clocks'])
  })

  test('rides along with the dose, each thing once, and goes alone where no dose is due', () => {
    const book = given(lab, enough, planOf({ first: '2026-11-25', amount: 1 }))
    const phone = { lastBackup: at('2026-10-20 12:00') }
    const [first] = evenings(book.world(), now, { phone })
    expect(first?.lines).toHaveLength(1)
    expect(first?.notices.map(({ about }) => about)).toEqual(['backup'])
    book.does(dose(at('2026-11-25 21:30')))
    const resting = at('2026-11-26 21:20')
    expect(evenings(book.world(), resting, { phone, shown: new Set(first?.claims) })).toEqual([])
    const [alone] = evenings(book.world(), resting, { phone })
    expect(alone).toMatchObject({ lines: [], tanks: [], notices: [{ about: 'backup' }] })
  })
})

describe('a month of all well', () => {
  const noted = (nights: number, gap?: number) => {
    const book = given(
      lab,
      onHand({ portions: 100, each: 1, frozen: '2026-10-01' }),
      planOf({ first: '2026-10-20', amount: 1 }),
    )
    for (let i = 0; i < nights; i++) {
      const now = at(`${addDays(day('2026-10-20'), 2 * i)} 21:30`)
      if (i === gap) book.does((world) => doNotKnow(world, { plan: greenPlan }, now))
      else book.does(dose(now))
    }
    return evenings(book.world(), at(`${addDays(day('2026-10-20'), 2 * nights)} 21:20`), { phone: backedUp })[0]?.calm
  }

  test('says less, and a doubt among the nights says it in full again', () => {
    expect(noted(20)).toBe(true)
    expect(noted(20, 19)).toBe(false)
    expect(noted(20, 2)).toBe(true)
  })

  test('is not had by a plan that is younger than that', () => {
    const young = given(
      lab.map((fact) => fact),
      trays,
      { ...planOf({ first: '2026-11-01', amount: 1 }), at: at('2026-11-01 12:00') },
    )
    for (let i = 0; i < 8; i++) young.does(dose(at(`${addDays(day('2026-11-01'), 2 * i)} 21:30`)))
    expect(evenings(young.world(), at('2026-11-17 21:20'), { phone: backedUp })[0]?.calm).toBe(false)
  })
})
