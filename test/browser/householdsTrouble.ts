/** Households in which something went wrong. */
import {
  type BottleId,
  day,
  describePlace,
  type Entry,
  type Fact,
  type FoodContents,
  freezerThawed,
  fridgeTroubled,
  giveDose,
  type LotId,
  smellFood,
} from '../../core/index.ts'
import { at, type Book, given, london } from '../support/given.ts'
import {
  blueClip,
  bottleOf,
  doors,
  dose,
  firstBottle,
  foodOf,
  greenFood,
  greenPlan,
  kitchenFreezer,
  kitchenFridge,
  longGallery,
  mL,
  moveIn,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const lab = (contents?: FoodContents): readonly Fact[] => [
  ...tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
  ...foodOf(greenFood, { name: 'Green food', ...(contents ? { contents } : {}) }),
  ...doors,
  ...describePlace({ place: kitchenFridge, name: 'kitchen fridge', door: 'fridge' }, moveIn),
  ...describePlace({ place: kitchenFreezer, name: 'kitchen freezer', door: 'freezer' }, moveIn),
]
const noon = at('2026-11-25 12:00')
const here = { now: noon, zone: london }
const plan = planOf({ first: '2026-11-19', amount: 1 })
const secondBottle = 'bottle2' as BottleId

/** Two bags in one freezer and a bottle smelt at when it was opened; fed from the bottle on two nights. */
const twoBags = (): Book => {
  const book = given(
    lab({ dry: 0.1, nitrogen: 0.06, phosphorus: 0.009 }),
    plan,
    bottleOf({ holds: 120, received: '2026-11-12', opened: '2026-11-12' }),
    onHand({ portions: 31, each: 1, frozen: '2026-06-03' }),
    onHand({ portions: 22, each: 1, frozen: '2026-09-04', lot: redClip }),
  )
  const words = 'sharp, like low tide'
  book.does((world) =>
    smellFood(world, { thing: { bottle: firstBottle }, found: 'first', words }, at('2026-11-12 18:00')),
  )
  for (const night of ['19', '21', '23']) book.does(dose(at(`2026-11-${night} 21:20`)))
  return book
}

/** All at once: a bag that thawed, one set aside, a bottle that smells off, one frozen to a block. */
const inDoubt = (): Book => {
  const book = twoBags()
  book.note(
    ...onHand({ portions: 9, each: 1, frozen: '2026-10-05', lot: 'greyclip' as LotId })(book.world()),
    ...bottleOf({ holds: 60, received: '2026-11-20', opened: '2026-11-20', bottle: secondBottle })(book.world()),
  )
  book.does((world) =>
    freezerThawed(
      world,
      {
        place: kitchenFreezer,
        on: day('2026-11-25'),
        lots: [
          { lot: blueClip, found: 'cold' },
          { lot: redClip, found: 'warm' },
        ],
        minutesOff: 1_800,
      },
      here,
    ),
  )
  const off = { thing: { bottle: firstBottle }, found: 'off', words: 'like drains, and in clumps' } as const
  book.does((world) => smellFood(world, off, noon))
  book.does((world) =>
    fridgeTroubled(
      world,
      { place: kitchenFridge, on: day('2026-11-25'), bottles: [{ bottle: secondBottle, found: 'frozen' }] },
      here,
    ),
  )
  return book
}

/** 60 mL, noted with a word of why. */
const knockedIn = (): Book => {
  const book = twoBags()
  const now = at('2026-11-25 20:10')
  const taken = [{ from: 'bottle' as const, bottle: firstBottle, amount: mL(60) }]
  book.does((world) =>
    giveDose(world, { plan: greenPlan, taken, amount: mL(60), at: now, sure: true, why: 'knockedIn' }, now),
  )
  return book
}

export const householdsTrouble = {
  twoBags: () => twoBags().entries(),
  inDoubt: () => inDoubt().entries(),
  knockedIn: () => knockedIn().entries(),
} satisfies Record<string, () => readonly Entry<Fact>[]>
