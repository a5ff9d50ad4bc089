/** One portion over two tanks, one food behind two doors. Checked only against our own worked examples: counts by hand. */
import { describe, expect, test } from 'vitest'
import {
  day,
  giveShared,
  type LotId,
  movePortions,
  onHand as onHandOf,
  type PlanId,
  shareByVolume,
  stock,
  type TankId,
  tankAt,
  type World,
} from '../../../core/index.ts'
import { at, type Book, given } from '../../support/given.ts'
import {
  blueClip,
  boathouseFreezer,
  greenFood,
  kitchenFreezer,
  lab,
  lineOf,
  mL,
  onHand,
  planOf,
  portionOf,
  redClip,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const fivePortions = 'fiveportions' as LotId
const loose = { as: 'loose' as const }
const later = at('2027-06-10 23:00')
const left = (book: Book) => book.world().lots.get(blueClip)?.left

describe('22 portions in the kitchen freezer and 31 in the boathouse', () => {
  const book = () =>
    given(
      lab,
      onHand({ portions: 22, each: 1, frozen: '2027-01-05' }),
      onHand({ portions: 31, each: 1, frozen: '2027-01-09', lot: redClip, place: boathouseFreezer }),
    )
  const shown = (world: World) => {
    const behind = stock(world, later, day('2027-06-10')).filter(({ lots }) => lots.length > 0)
    const total = (lots: (typeof behind)[number]['lots']) => lots.reduce((sum, lot) => sum + lot.left, 0)
    return Object.fromEntries(behind.map(({ place, lots }) => [place?.name, total(lots)]))
  }

  test('are 53, shown per place', () => {
    const world = book().world()
    expect(shown(world)).toEqual({ kitchen: 22, boathouse: 31 })
    const shelves = stock(world, later, day('2027-06-10'))
    expect(onHandOf(shelves, greenFood, day('2027-06-10')).portions).toEqual([{ each: 1000, count: 53 }])
  })

  test('are 27 and 26 once five have moved, still 53, and no newer for it', () => {
    const moved = book()
    const five = { from: redClip, to: kitchenFreezer, count: 5, lot: fivePortions, mark: 'red clip 2', kept: loose }
    moved.does((world) => movePortions(world, five, at('2027-06-10 18:00')))
    const world = moved.world()
    expect(shown(world)).toEqual({ kitchen: 27, boathouse: 26 })
    const shelves = stock(world, later, day('2027-06-10'))
    expect(onHandOf(shelves, greenFood, day('2027-06-10')).portions).toEqual([{ each: 1000, count: 53 }])
    expect(world.lots.get(fivePortions)?.made).toMatchObject({ frozenOn: '2027-01-09', mark: 'red clip 2' })
    expect(world.fed.size).toBe(0)
  })
})

test('one portion of 1 mL shared over 130 and 70 US gal is one entry, two doses and one portion less', () => {
  const [large, small] = ['largetank' as TankId, 'smalltank' as TankId]
  const [largePlan, smallPlan] = ['largeplan' as PlanId, 'smallplan' as PlanId]
  const book = given(
    lab,
    tankOf(large, usGal(130)),
    tankOf(small, usGal(70)),
    planOf({ first: '2027-06-10', amount: 0.65, tank: large, plan: largePlan }),
    planOf({ first: '2027-06-10', amount: 0.35, tank: small, plan: smallPlan }),
    onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
  )
  const tanks = [large, small].flatMap((tank) => tankAt(book.world(), tank, later) ?? [])
  const shares = shareByVolume(mL(1), tanks) ?? []
  expect(shares).toEqual([
    { tank: large, amount: 650 },
    { tank: small, amount: 350 },
  ])
  const parts = shares.map(({ tank, amount }) => ({ tank, amount, plan: tank === large ? largePlan : smallPlan }))
  const shared = { food: greenFood, parts, taken: portionOf(blueClip, 1).taken, at: later }
  expect(book.does((world) => giveShared(world, shared, later))).toHaveLength(1)
  expect(left(book)).toBe(39)
  expect(book.world().fed.get(greenFood)).toEqual({ doses: 2, amount: 1000 })
  for (const plan of [largePlan, smallPlan])
    expect(lineOf(book.world(), later, plan).state).toMatchObject({ is: 'done', next: '2027-06-12' })
})
