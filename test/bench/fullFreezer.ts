/** The household of the bench after three years, with a freezer full for three years more: forty bags of three foods. */
import {
  addDays,
  type Day,
  type Entry,
  type Fact,
  type FoodId,
  fold,
  type LotId,
  momentAt,
  type PlanId,
} from '../../core/index.ts'
import { bookOf, kitchenPhone, london } from '../support/given.ts'
import { cockle, foodOf, onHand, planOf } from '../support/givenLab.ts'
import { household } from './household.ts'
import { amber, green } from './larder.ts'

const red = 'redfood' as FoodId
export const threeFoods: readonly FoodId[] = [green, amber, red]

/** A little over three years of nights each: what is eaten a night, in bags. */
const bags = [
  { food: green, many: 20, portions: 168, each: 1 },
  { food: amber, many: 10, portions: 112, each: 1.5 },
  { food: red, many: 10, portions: 112, each: 1 },
] as const
/** Entries of three years, at the pace of the household. */
const threeYears = 6_000

/** Its ledger up to the night before `tonight`. */
export const fullFreezer = (tonight: Day): readonly Entry<Fact>[] => {
  const book = bookOf(kitchenPhone, household(threeYears, tonight))
  const noon = momentAt(addDays(tonight, -1), 720, london)
  // Nothing is to pass its time: a walk cut short would be quicker.
  const long = { freezerLife: { count: 60, unit: 'months' } } as const
  for (const { food } of bags) book.noteAt(noon, ...foodOf(food, long).map((fact) => ({ ...fact, at: noon })))
  book.noteAt(noon, {
    ...planOf({ first: tonight, amount: 1, every: 1 }),
    at: noon,
    plan: 'redplan' as PlanId,
    tank: cockle,
    food: red,
  })
  const world = fold(book.entries())
  for (const { food, many, ...bag } of bags)
    for (let made = 0; made < many; made += 1)
      book.noteAt(
        noon,
        ...onHand({
          ...bag,
          food,
          lot: `${food}bag${made}` as LotId,
          frozen: addDays(tonight, -many - 1 + made),
          seen: noon,
        })(world),
      )
  return book.entries()
}
