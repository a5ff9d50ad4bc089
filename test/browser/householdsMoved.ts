/** Households whose food has moved about, whose tanks and foods have come and gone, and whose plans meet or wait. */
import {
  countPortions,
  cutTray,
  type Day,
  day,
  describePlace,
  type Entry,
  type Fact,
  fillTrays,
  holdPlan,
  type LotId,
  movePortions,
  type PlanId,
  retireFood,
  retirePlace,
  retireTank,
  strikeOut,
  touchWell,
} from '../../core/index.ts'
import { at, type Book, given, london } from '../support/given.ts'
import {
  amberFood,
  blueClip,
  boathouseFreezer,
  bottleOf,
  cockle,
  dose,
  foodOf,
  greenFood,
  greenPlan,
  kitchenFreezer,
  kitchenFridge,
  longGallery,
  moveIn,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const now = at('2026-11-25 20:10')
const amberPlan = 'amberplan' as PlanId
const part = 'part2' as LotId

const lab: readonly Fact[] = [
  ...tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
  ...foodOf(greenFood, { name: 'Green food' }),
  ...describePlace({ place: kitchenFridge, name: 'kitchen fridge', door: 'fridge' }, moveIn),
  ...describePlace({ place: kitchenFreezer, name: 'kitchen freezer', door: 'freezer' }, moveIn),
  ...describePlace({ place: boathouseFreezer, name: 'boathouse freezer', door: 'freezer' }, moveIn),
]
const amber: readonly Fact[] = [
  ...tankOf(cockle, usGal(60), { name: 'Cockle' }),
  ...foodOf(amberFood, { name: 'Amber food' }),
]
const tonight = planOf({ first: '2026-11-25', amount: 1 })
const amberBag = onHand({ portions: 12, each: 0.5, frozen: '2026-10-01', lot: redClip, food: amberFood })

/** 22 in the kitchen, 31 in the boathouse. */
const twoFreezers = (): Book =>
  given(
    lab,
    tonight,
    onHand({ portions: 22, each: 1, frozen: '2026-10-01', lot: redClip }),
    onHand({ portions: 31, each: 1, frozen: '2026-10-01', place: boathouseFreezer }),
  )

const partMoved = (): Book => {
  const book = twoFreezers()
  const mark = 'blue clip, part 2'
  book.does((world) =>
    movePortions(world, { from: blueClip, to: kitchenFreezer, count: 5, lot: part, mark, kept: { as: 'loose' } }, now),
  )
  return book
}

const wellsTouched = (): Book => {
  const kept = { as: 'trays', trays: fillTrays(105, 3, 5) } as const
  const book = given(lab, tonight, onHand({ portions: 105, each: 1, frozen: '2026-09-04', kept }))
  book.does((world) => countPortions(world, { lot: blueClip, counted: 88 }, at('2026-11-24 19:00')))
  for (const well of [0, 6, 7]) book.does((world) => touchWell(world, { lot: blueClip, tray: 5, well }, now))
  book.does((world) => cutTray(world, { lot: blueClip, tray: 5, after: [2] }, now))
  return book
}

const twoFoods = (everyAmber: number): Book =>
  given(
    lab,
    amber,
    onHand({ portions: 40, each: 1, frozen: '2026-10-01' }),
    amberBag,
    tonight,
    planOf({ first: '2026-11-25', amount: 0.5, every: everyAmber, food: amberFood, plan: amberPlan }),
  )

const comeAndGone = (): Book => {
  const book = given(lab, amber, onHand({ portions: 40, each: 1, frozen: '2026-10-01' }), amberBag, tonight)
  book.does((world) => retireTank(world, { tank: cockle, why: 'takenDown' }, now))
  book.does((world) => retireFood(world, { food: amberFood, why: 'notSold' }, now))
  book.does((world) => retirePlace(world, { place: boathouseFreezer, why: 'brokenDown' }, { now, zone: london }))
  return book
}

const foodCrossedOut = (): Book => {
  const book = given(lab, amber, onHand({ portions: 40, each: 1, frozen: '2026-10-01' }), amberBag, tonight)
  book.note(...bottleOf({ holds: 96, food: amberFood, received: '2026-11-02', opened: '2026-11-02' })(book.world()))
  const described = book.entries().find(({ fact }) => fact.kind === 'foodDescribed' && fact.food === amberFood)
  if (described) book.does((world) => strikeOut(world, { target: described.id, why: 'mistake' }, now))
  return book
}

const onHold = (): Book => {
  const fixed: Fact = { ...planOf({ first: '2026-11-21', amount: 1 }), rhythm: 'fixedNights' }
  const book = given(lab, onHand({ portions: 40, each: 1, frozen: '2026-10-01' }), fixed)
  book.does(dose(at('2026-11-23 21:20')))
  const until: Day = day('2026-12-04')
  book.does((world) => holdPlan(world, { plan: greenPlan, until, why: 'away' }, now))
  return book
}

export const householdsMoved = {
  twoFreezers: () => twoFreezers().entries(),
  partMoved: () => partMoved().entries(),
  wellsTouched: () => wellsTouched().entries(),
  foodsThatMeet: () => twoFoods(3).entries(),
  foodsInStep: () => twoFoods(2).entries(),
  comeAndGone: () => comeAndGone().entries(),
  foodCrossedOut: () => foodCrossedOut().entries(),
  planOnHold: () => onHold().entries(),
} satisfies Record<string, () => readonly Entry<Fact>[]>
