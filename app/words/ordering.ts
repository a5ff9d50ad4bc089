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
const byWords = (name: string, day: Day, today: Day): string =>
  day >= today
    ? `Order ${name} by ${dayNamed(day, today)}`
    : `Order ${name} now: the day for it was ${dayNamed(day, today)}`

/** With what it rests on. */
export const orderByWords = (
  name: string,
  { day, bareNight }: { readonly day: Day; readonly bareNight: Day },
  today: Day,
): string => {
  const by = byWords(name, day, today)
  const bare = `the first night without food is ${dayWords(bareNight, today)}.`
  if (day >= today) return `${by}: ${bare}`
  return bareNight >= today ? `${by}, and ${bare}` : `${by}, and nothing is left for a dose.`
}
export const hasItComeWords = (name: string, comes: Day, today: Day): string =>
  `Has ${name} come? It was to come on ${dayNamed(comes, today)}.`
export const orderedWords = (name: string, { comes, about }: Ordered, today: Day): string =>
  `${name} is ordered, to come ${about ? 'about' : 'on'} ${dayNamed(comes, today)}.`

type At = { readonly now: Moment; readonly today: Day; readonly lasting?: Lasts | undefined }
export type OrderLine = {
  readonly says: string
  /** The same without the first night without food, where that stands above it. */
  readonly short: string
  /** Something is to be done today. */
  readonly due: boolean
}

/** How a food stands: on its way, late, or to be ordered. Undefined where no plan feeds it and none is ordered. */
export const orderLine = (world: World, food: FoodId, { now, today, lasting }: At): OrderLine | undefined => {
  const name = foodAt(world, food, now)?.name
  if (name === undefined) return undefined
  const ordered = orderedOf(world, food, today, now)
  if (ordered) {
    const { late, comes } = ordered
    const says = late ? hasItComeWords(name, comes, today) : orderedWords(name, ordered, today)
    return { says, short: says, due: late }
  }
  const by = orderBy(world, food, now, lasting)
  if (!by) return undefined
  return { says: orderByWords(name, by, today), short: `${byWords(name, by.day, today)}.`, due: by.day <= today }
}
