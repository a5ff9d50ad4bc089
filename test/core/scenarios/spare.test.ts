/** What can be given away, and what it is for a friend's tank. Checked only against our own worked examples. */
import { describe, expect, test } from 'vitest'
import {
  addDays,
  day,
  describeOrdering,
  friendDose,
  type LotId,
  lasts,
  type PlanId,
  spareOf,
  type World,
} from '../../../core/index.ts'
import { at, done, given } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  foodOf,
  greenFood,
  lab,
  mL,
  onHand,
  planOf,
  redClip,
  usGal,
} from '../../support/givenLab.ts'

const tonight = planOf({ first: '2026-11-25', amount: 1 })
const today = day('2026-11-25')
const evening = at('2026-11-25 20:00')
const spareIn = (world: World) => spareOf(world, greenFood, today, evening)
const counts = (world: World) => spareIn(world).lots.map(({ lot, count }) => [lot, count])
const orderingTakes = (leadDays: number, cushionDays: number) =>
  done(describeOrdering({ leadDays, cushionDays }, at('2026-11-01 12:00')))

describe('portions to spare', () => {
  test('are those beyond the nights an order takes, and the days to spare', () => {
    // Until 9 December: dose nights 25, 27, 29 November and 1, 3, 5, 7 December.
    const world = given(
      lab,
      tonight,
      onHand({ portions: 19, each: 1, frozen: '2026-10-01' }),
      orderingTakes(9, 5),
    ).world()
    expect(spareIn(world)).toEqual({
      lots: [{ lot: blueClip, each: 1000, count: 12, unused: 0 }],
      until: '2026-12-09',
      short: false,
    })
    expect(addDays(today, 14)).toBe('2026-12-09')
  })

  test('are none where an order would come too late already', () => {
    const world = given(lab, tonight, onHand({ portions: 5, each: 1, frozen: '2026-10-01' })).world()
    expect(spareIn(world)).toMatchObject({ lots: [], until: '2026-12-05', short: true })
  })

  test('are what would go unused first, then what keeps longest', () => {
    // Good until 10 January 2027: 24 dose nights, and 60 portions.
    const old = onHand({ portions: 60, each: 1, frozen: '2025-01-10', seen: at('2026-10-01 12:00') })
    const fresh = onHand({ portions: 30, each: 1, frozen: '2026-10-01', lot: redClip })
    const world = given(lab, tonight, old, fresh).world()
    expect(lasts(world, greenFood, evening)?.wasted).toMatchObject([{ lot: blueClip, left: 36 }])
    expect(spareIn(world).lots).toMatchObject([
      { lot: blueClip, count: 53, unused: 36 },
      { lot: redClip, count: 30, unused: 0 },
    ])
  })

  test('are what would go unused even where the food ends before an order could come', () => {
    const old = onHand({ portions: 60, each: 1, frozen: '2024-12-01', seen: at('2026-10-01 12:00') })
    // Good until 1 December: four dose nights, 25, 27, 29 November and 1 December.
    const spare = spareIn(given(lab, tonight, old).world())
    expect(spare).toEqual({
      lots: [{ lot: blueClip, each: 1000, count: 56, unused: 56 }],
      until: '2026-12-03',
      short: true,
    })
  })

  test('leave no dose half a portion short', () => {
    // A dose is two halves: seven doses are fourteen, and the odd one is left.
    const world = given(lab, tonight, onHand({ portions: 20, each: 0.5, frozen: '2026-10-01' })).world()
    expect(counts(world)).toEqual([[blueClip, 6]])
  })

  test('count every tank that shares the food, and the bottle that feeds them', () => {
    const daily = planOf({ first: '2026-11-25', amount: 1, every: 1, plan: 'dailyplan' as PlanId })
    expect(counts(given(lab, daily, onHand({ portions: 19, each: 1, frozen: '2026-10-01' })).world())).toEqual([
      [blueClip, 5],
    ])
    const bottle = bottleOf({ holds: 120, received: '2026-11-20', opened: '2026-11-20' })
    const both = given(lab, tonight, bottle, onHand({ portions: 19, each: 1, frozen: '2026-10-01' }))
    expect(counts(both.world())).toEqual([[blueClip, 19]])
  })

  test('are all there are where no plan feeds the food, and never what is past its day or set aside', () => {
    const some = onHand({ portions: 19, each: 1, frozen: '2026-10-01' })
    expect(counts(given(lab, some).world())).toEqual([[blueClip, 19]])
    const past = onHand({ portions: 8, each: 1, frozen: '2024-10-01', lot: 'pastlot' as LotId })
    const aside = {
      kind: 'foodSetAside' as const,
      at: at('2026-11-24 20:00'),
      thing: { lot: blueClip },
    }
    expect(counts(given(lab, some, past, aside).world())).toEqual([])
  })
})

describe('one portion for a friend’s tank', () => {
  const label = foodOf(greenFood)[0]
  const band = label?.kind === 'foodDescribed' ? label.band : undefined
  const forTank = (each: number, gallons: number) => {
    if (!band) throw new Error('no label')
    return friendDose(mL(each), band, usGal(gallons))
  }

  test('of 200 US gallons is one millilitre, as whole portions', () => {
    expect(forTank(1, 200)).toMatchObject({ is: 'whole', portions: 1, amount: 1000 })
    expect(forTank(0.5, 200)).toMatchObject({ is: 'whole', portions: 2, amount: 1000 })
  })

  test('too small for a whole one is a half, a third or a quarter of it, inside the range', () => {
    // 1 to 2 mL for 200: for 60 US gallons 0.3 to 0.6.
    expect(forTank(1, 60)).toMatchObject({ is: 'part', of: 2, amount: 500 })
    expect(forTank(1, 40)).toMatchObject({ is: 'part', of: 3 })
    expect(forTank(1, 25)).toMatchObject({ is: 'part', of: 4, amount: 250 })
  })

  test('of a few gallons is measured, and of a cupful cannot be', () => {
    expect(forTank(1, 10)).toMatchObject({ is: 'measure', low: 50, high: 100 })
    expect(forTank(1, 2)).toMatchObject({ is: 'tooSmall' })
  })
})
