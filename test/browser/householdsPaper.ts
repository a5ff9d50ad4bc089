/** Households for what is put on paper: bags of every sort, many of them, and two tanks whose food runs out in the month. */
import { countPortions, day, describePlace, type Entry, type Fact, type LotId, type PlanId } from '../../core/index.ts'
import { at, type Book, given } from '../support/given.ts'
import {
  amberFood,
  blueClip,
  boathouseFreezer,
  bottleOf,
  cockle,
  dose,
  foodOf,
  greenFood,
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
const lab: readonly Fact[] = [
  ...tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
  ...foodOf(greenFood, { name: 'Green food' }),
  ...describePlace({ place: kitchenFridge, name: 'kitchen fridge', door: 'fridge' }, moveIn),
  ...describePlace({ place: kitchenFreezer, name: 'kitchen freezer', door: 'freezer' }, moveIn),
  ...describePlace({ place: boathouseFreezer, name: 'boathouse freezer', door: 'freezer' }, moveIn),
]

/** Nine doses until 12 November, and then the phone stays in a drawer: six dose nights go by. */
const ticked = (): Book => {
  const book = given(
    lab,
    onHand({ portions: 40, each: 1, frozen: '2026-10-01' }),
    planOf({ first: '2026-10-27', amount: 1 }),
  )
  for (const date of ['10-27', '10-29', '10-31', '11-02', '11-04', '11-06', '11-08', '11-10', '11-12'])
    book.does(dose(at(`2026-${date} 21:20`)))
  return book
}

/** One in use, one set aside, one thawed, one past its day. */
const doubtful = (): Book => {
  const book = given(
    lab,
    onHand({ portions: 60, each: 1, frozen: '2026-10-01' }),
    onHand({ portions: 12, each: 1, frozen: '2026-09-01', lot: redClip }),
    onHand({ portions: 12, each: 1, frozen: '2026-08-01', lot: 'greypeg' as LotId }),
    onHand({ portions: 5, each: 1, frozen: '2024-08-01', lot: 'oldtin' as LotId }),
    planOf({ first: '2026-11-25', amount: 1 }),
  )
  book.note(
    { kind: 'foodSetAside', at: now, thing: { lot: redClip } },
    {
      kind: 'freezerThawed',
      at: now,
      place: kitchenFreezer,
      on: day('2026-11-25'),
      lots: [{ lot: 'greypeg' as LotId, found: 'cold' }],
    },
  )
  return book
}

/** So many bags, each a little older and fuller than the one before; the largest has more portions than a label has squares. */
const bags = (count: number): Book =>
  given(
    lab,
    ...Array.from({ length: count }, (_, bag) =>
      onHand({
        portions: 12 + ((bag * 17) % 150),
        each: 1,
        frozen: `2026-0${1 + (bag % 9)}-${String(10 + (bag % 19))}`,
        lot: `bag${bag + 1}` as LotId,
        place: bag % 3 === 0 ? boathouseFreezer : kitchenFreezer,
      }),
    ),
    planOf({ first: '2026-11-25', amount: 1 }),
  )

/** Two tanks, two foods, a bottle to shake; the green food ends on the way. */
const month = (): Book => {
  const book = given(
    lab,
    tankOf(cockle, usGal(60), { name: 'Cockle', lightsOut: '21:30' }),
    foodOf(amberFood, { name: 'Amber food' }),
    onHand({ portions: 7, each: 1, frozen: '2026-09-01' }),
    onHand({ portions: 6, each: 0.5, frozen: '2026-10-01', lot: redClip, place: boathouseFreezer }),
    bottleOf({ holds: 120, food: amberFood, received: '2026-11-10', opened: '2026-11-12' }),
    planOf({ first: '2026-11-25', amount: 1 }),
    planOf({ first: '2026-11-26', amount: 0.3, every: 1, tank: cockle, food: amberFood, plan: 'cockleplan' as PlanId }),
  )
  book.does((world) => countPortions(world, { lot: blueClip, counted: 6 }, now))
  return book
}

export const householdsPaper = {
  ticked: () => ticked().entries(),
  doubtfulBags: () => doubtful().entries(),
  twelveBags: () => bags(12).entries(),
  sixtyBags: () => bags(60).entries(),
  monthOnPaper: () => month().entries(),
} satisfies Record<string, () => readonly Entry<Fact>[]>
