/** One portion over two tanks, one food behind two doors. Checked only against our own worked examples: counts by hand. */
import { expect, test } from 'vitest'
import {
  bandOf,
  type DoseGiven,
  day,
  foodAt,
  type PlanId,
  stock,
  type TankId,
  tankAt,
  union,
} from '../../../core/index.ts'
import { at, type Book, bookOf, given, labPhone } from '../../support/given.ts'
import {
  blueClip,
  boathouseFreezer,
  greenFood,
  lab,
  lineOf,
  onHand,
  planOf,
  portionOf,
  redClip,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const _begun = () =>
  given(lab, planOf({ first: '2027-06-10', amount: 1 }), onHand({ portions: 40, each: 1, frozen: '2027-01-05' }))
const later = at('2027-06-10 23:00')
const _merged = (a: Book, b: Book) => bookOf(labPhone, union(a.entries(), b.entries()).entries)
const left = (book: Book) => book.world().lots.get(blueClip)?.left

test('two freezers are shown apart', () => {
  const world = given(
    lab,
    onHand({ portions: 22, each: 1, frozen: '2027-01-05' }),
    onHand({ portions: 31, each: 1, frozen: '2027-01-09', lot: redClip, place: boathouseFreezer }),
  ).world()
  const shelves = stock(world, later, day('2027-06-10')).filter(({ lots }) => lots.length > 0)
  expect(shelves.map(({ place, lots }) => [place?.name, lots.map((lot) => lot.left)])).toEqual([
    ['kitchen', [22]],
    ['boathouse', [31]],
  ])
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
  const low = (tank: TankId) => {
    const [described, food] = [tankAt(book.world(), tank, later), foodAt(book.world(), greenFood, later)]
    const band = described && food && bandOf(described, food)
    if (!band || band.shown === 'tooSmall') throw new Error('no band')
    return band.shown.low
  }
  const night = day('2027-06-10')
  const shared: DoseGiven = {
    kind: 'doseGiven',
    at: later,
    food: greenFood,
    served: [
      { tank: large, plan: largePlan, night, amount: low(large) },
      { tank: small, plan: smallPlan, night, amount: low(small) },
    ],
    taken: portionOf(blueClip, 1).taken,
  }
  expect(shared.served.map(({ amount }) => amount)).toEqual([650, 350])
  book.note(shared)
  expect(left(book)).toBe(39)
  expect(book.world().fed.get(greenFood)).toEqual({ doses: 2, amount: 1000 })
  for (const plan of [largePlan, smallPlan])
    expect(lineOf(book.world(), later, plan).state).toMatchObject({ is: 'done', next: '2027-06-12' })
})
