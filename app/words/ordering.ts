/** When to order, in the same words wherever it is said. */
import {
  type Day,
  type FoodId,
  foodAt,
  type Lasts,
  type Moment,
  type Ordered,
  orderBy,
  orderedOf,
  type World,
} from '../../core/index.ts'
import { dayWords, weekday } from './dates.ts'

/** "Monday, 16 November": a parcel and a shop know days of the week. */
export const dayNamed = (day: Day, today: Day): string => `${weekday(day)}, ${dayWords(day, today)}`

/** A date, and the same one on every day: once it has passed, "now" comes before it. */
export const orderByWords = (
  name: string,
  { day, bareNight }: { readonly day: Day; readonly bareNight: Day },
  today: Day,
): string => {
  const bare = `the first night without food is ${dayWords(bareNight, today)}.`
  if (day >= today) return `Order ${name} by ${dayNamed(day, today)}: ${bare}`
  const was = `Order ${name} now: the day for it was ${dayNamed(day, today)}`
  return bareNight >= today ? `${was}, and ${bare}` : `${was}, and nothing is left for a dose.`
}
export const hasItComeWords = (name: string, comes: Day, today: Day): string =>
  `Has ${name} come? It was to come on ${dayNamed(comes, today)}.`
export const orderedWords = (name: string, { comes, about }: Ordered, today: Day): string =>
  `${name} is ordered, to come ${about ? 'about' : 'on'} ${dayNamed(comes, today)}.`

type At = { readonly now: Moment; readonly today: Day; readonly lasting?: Lasts | undefined }
export type OrderLine = {
  readonly says: string
  /** Something is to be done today. */
  readonly due: boolean
}

/** How a food stands: on its way, late, or to be ordered. Undefined where no plan feeds it and none is ordered. */
export const orderLine = (world: World, food: FoodId, { now, today, lasting }: At): OrderLine | undefined => {
  const name = foodAt(world, food, now)?.name
  if (name === undefined) return undefined
  const ordered = orderedOf(world, food, today, now)
  if (ordered?.late) return { says: hasItComeWords(name, ordered.comes, today), due: true }
  if (ordered) return { says: orderedWords(name, ordered, today), due: false }
  const by = orderBy(world, food, now, lasting)
  return by && { says: orderByWords(name, by, today), due: by.day <= today }
}
