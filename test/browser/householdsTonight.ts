/** Households on evenings that are not the usual one: nights without an entry, holds, too much, several tanks and foods. */
import { type DeviceId, day, type Entry, type Fact, giveDose, holdPlan, type PlanId } from '../../core/index.ts'
import { at, type Book, bookOf, given, kitchenPhone } from '../support/given.ts'
import {
  amberFood,
  blueClip,
  bottleOf,
  cockle,
  cocklePlan,
  doors,
  dose,
  foodOf,
  greenFood,
  greenPlan,
  longGallery,
  mL,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const amberPlan = 'amberplan' as PlanId
const tonight = '2026-11-25'

const lab = (gallons = 200): readonly Fact[] => [
  ...tankOf(longGallery, usGal(gallons), { name: 'Long Gallery' }),
  ...foodOf(greenFood, { name: 'Green food' }),
  ...doors,
]
const both: readonly Fact[] = [...lab(), ...tankOf(cockle, usGal(60), { name: 'Cockle' })]
const bag = onHand({ portions: 40, each: 1, frozen: '2026-09-04' })
const halfBag = onHand({ portions: 30, each: 0.5, frozen: '2026-09-20', lot: redClip })
const plan = planOf({ first: '2026-11-09', amount: 1 })
const forCockle = planOf({ first: '2026-11-09', amount: 0.5, tank: cockle, plan: cocklePlan })

/** Fed on 9 November, and nothing written down since. */
const lastOn = (book: Book, ...plans: readonly PlanId[]): Book => {
  for (const id of plans) book.does(dose(at('2026-11-09 21:20'), { plan: id }))
  return book
}
const fortnight = () => lastOn(given(lab(), bag, plan), greenPlan)
const fortnightTwoTanks = () => lastOn(given(both, bag, halfBag, plan, forCockle), greenPlan, cocklePlan)

const held = (until: string): Book => {
  const book = given(lab(), bag, planOf({ first: '2026-11-23', amount: 1 }))
  book.does(dose(at('2026-11-23 21:20')))
  book.does((world) => holdPlan(world, { plan: greenPlan, until: day(until), why: 'hazy' }, at('2026-11-24 08:10')))
  return book
}

const smallTank = (): Book => given(lab(100), bag, planOf({ first: tonight, amount: 1 }))
const rich = (): Book => {
  const book = smallTank()
  const now = at(`${tonight} 20:20`)
  const two = { taken: [{ from: 'portions', lot: blueClip, count: 2 }], amount: mL(2) } as const
  book.does((world) => giveDose(world, { plan: greenPlan, ...two, at: now, sure: true, why: 'stuck' }, now))
  return book
}

const twoFoods = (): Book =>
  given(
    lab(),
    foodOf(amberFood, { name: 'Amber food' }),
    bag,
    onHand({ portions: 30, each: 0.5, frozen: '2026-09-20', lot: redClip, food: amberFood }),
    planOf({ first: tonight, amount: 1 }),
    planOf({ first: tonight, amount: 0.5, food: amberFood, plan: amberPlan }),
  )

const dueInBoth = (): Book =>
  given(
    both,
    bag,
    halfBag,
    bottleOf({ holds: 96, received: '2026-11-02', opened: '2026-11-02' }),
    planOf({ first: tonight, amount: 1 }),
    planOf({ first: tonight, amount: 0.5, tank: cockle, plan: cocklePlan }),
  )

/** The kitchen phone noted one of the two. */
const oneDone = (...plans: readonly PlanId[]): readonly Entry<Fact>[] => {
  const ours = dueInBoth()
  const theirs = bookOf(kitchenPhone, ours.entries())
  const phone = kitchenPhone as DeviceId
  theirs.note({ kind: 'phoneNamed', at: at('2026-11-20 18:00'), device: phone, name: 'kitchen phone' })
  for (const id of plans) theirs.does(dose(at(`${tonight} 20:11`), { plan: id }))
  return theirs.entries()
}

const longPast = (): Book =>
  given(
    lab(),
    bottleOf({ holds: 96, received: '2026-08-20', opened: '2026-08-20' }),
    planOf({ first: tonight, amount: 1 }),
  )

export const householdsTonight = {
  fortnight: () => fortnight().entries(),
  fortnightTwoTanks: () => fortnightTwoTanks().entries(),
  onHold: () => held('2026-12-05').entries(),
  holdOver: () => held(tonight).entries(),
  smallTank: () => smallTank().entries(),
  rich: () => rich().entries(),
  twoFoods: () => twoFoods().entries(),
  dueInBoth: () => dueInBoth().entries(),
  oneDone: () => oneDone(greenPlan),
  bothDone: () => oneDone(greenPlan, cocklePlan),
  longPast: () => longPast().entries(),
} satisfies Record<string, () => readonly Entry<Fact>[]>
