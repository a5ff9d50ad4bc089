/** Households whose food lasts: from one bag, from a dozen, from sixty, for one tank and for three. */
import {
  addDays,
  type Day,
  day,
  describePlace,
  type Entry,
  type Fact,
  type LotId,
  type PlanId,
} from '../../core/index.ts'
import { at, type Book, given } from '../support/given.ts'
import {
  bottleOf,
  cockle,
  foodOf,
  greenFood,
  kitchenFreezer,
  kitchenFridge,
  limpetShelf,
  longGallery,
  moveIn,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const lab: readonly Fact[] = [
  ...tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
  ...foodOf(greenFood, { name: 'Green food' }),
  ...describePlace({ place: kitchenFridge, name: 'kitchen fridge', door: 'fridge' }, moveIn),
  ...describePlace({ place: kitchenFreezer, name: 'kitchen freezer', door: 'freezer' }, moveIn),
]
const twoMore: readonly Fact[] = [
  ...tankOf(cockle, usGal(60), { name: 'Cockle' }),
  ...tankOf(limpetShelf, usGal(400), { name: 'Limpet Shelf' }),
]
const tonight = day('2026-11-25')

/** So many bags, each filled three days after the one before, the last of them in this month. */
const bags = (book: Book, many: number, portions: (at: number) => number): Book => {
  for (let made = 0; made < many; made += 1) {
    const frozen: Day = addDays(tonight, -3 * (many - made))
    book.note(
      ...onHand({
        portions: portions(made),
        each: 1,
        frozen,
        lot: `bag${made + 1}` as LotId,
        seen: at('2026-11-24 18:00'),
      })(book.world()),
    )
  }
  return book
}

const oneBag = (): Book => bags(given(lab, planOf({ first: '2026-11-25', amount: 1 })), 1, () => 22)

/** A bottle that will not be used up in time, a dozen bags, and three tanks of which one needs larger doses. */
const twelveBags = (): Book =>
  bags(
    given(
      lab,
      twoMore,
      bottleOf({ holds: 60, received: '2026-10-20', opened: '2026-10-20' }),
      planOf({ first: '2026-11-25', amount: 1 }),
      planOf({ first: '2026-11-26', amount: 0.5, every: 3, tank: cockle, plan: 'cockleplan' as PlanId }),
      planOf({ first: '2026-11-25', amount: 2, every: 4, tank: limpetShelf, plan: 'limpetplan' as PlanId }),
    ),
    12,
    (at) => 4 + (at % 5),
  )

const sixtyBags = (): Book =>
  bags(given(lab, twoMore, planOf({ first: '2026-11-25', amount: 1, every: 1 })), 60, (at) => 2 + (at % 3))

export const householdsLasts = {
  oneBag: () => oneBag().entries(),
  twelveBags: () => twelveBags().entries(),
  sixtyBags: () => sixtyBags().entries(),
} satisfies Record<string, () => readonly Entry<Fact>[]>
