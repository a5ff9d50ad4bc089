/** What the food room says: what there is, how long it lasts, whether it is too late to freeze. */
import {
  type Bottle,
  type Cost,
  type Day,
  type FoodDescribed,
  type FreezingWindow,
  type InTime,
  type Lasts,
  type Lot,
  type Microlitres,
  type Moment,
  type OnHand,
  type Source,
  smallestDose,
  type TrayNow,
  type World,
  type WouldMake,
} from '../../core/index.ts'
import { aboutHowLong, dayWords, monthWords } from './dates.ts'
import { dosesWords } from './entries.ts'
import { list } from './list.ts'
import { cost } from './money.ts'
import { bottleName, lotName } from './names.ts'
import { capital, inWords, millilitres, nights, number, portions } from './numbers.ts'

/** "41 portions and 96 mL". The size is said only where there are two of them. */
export const onHandWords = ({ portions: heaps, liquid }: OnHand): string => {
  const sized = heaps.length > 1
  const frozen = heaps.map(({ each, count }) => `${portions(count)}${sized ? ` of ${millilitres(each)}` : ''}`)
  return list([...frozen, ...(liquid > 0 ? [millilitres(liquid)] : [])])
}

/** "41 portions and 96 mL of green food, enough until 18 November; first night without food 20 November." */
export const lastsSentence = (food: FoodDescribed, has: OnHand, lasts: Lasts | undefined, today: Day): string => {
  const amount = onHandWords(has)
  const what = amount === '' ? `No ${food.name} that is still good` : `${capital(amount)} of ${food.name}`
  if (!lasts) return `${what}. No plan feeds it to a tank yet.`
  const bare = `irst night without food ${dayWords(lasts.bareNight, today)}.`
  if (lasts.lastNight) return `${what}, enough until ${dayWords(lasts.lastNight, today)}; f${bare}`
  return amount === '' ? `${what}: f${bare}` : `${what}, too little for a dose. F${bare}`
}

/** What passes its last good day on the way; what is too little for a dose is not worth a word. */
export const wastedWords = (wasted: readonly Source[], world: World, now: Moment, today: Day): string | undefined => {
  const said = wasted.flatMap((source) => {
    if (!source.lastGood || source.lastGood < today) return []
    if (source.from === 'portions') return [`${portions(source.left)} from ${lotName(world, source.lot)}`]
    const food = world.bottles.get(source.bottle)?.recorded.food
    if (food && source.left < (smallestDose(world, food, now) ?? 0)) return []
    return [`${millilitres(source.left)} from ${bottleName(world, source.bottle, now)}`]
  })
  return said.length > 0 ? `Won’t get used in time: ${list(said)}.` : undefined
}

/** "Not too late: freeze by 5 March. 96 mL makes 96 portions, about six months." */
export const freezingHeadline = (
  window: FreezingWindow,
  usable: Microlitres,
  makes: WouldMake | undefined,
  today: Day,
): string | undefined => {
  switch (window.is) {
    case 'open': {
      const by = window.days === 0 ? 'freeze today, its last good day' : `freeze by ${dayWords(window.until, today)}`
      return `Not too late: ${by}.${makes ? ` ${millilitres(usable)} makes ${makesWords(makes)}.` : ''}`
    }
    case 'over':
      return `Past its last good day in the fridge, ${dayWords(window.since, today)}. Frozen now it keeps 12 months.`
    case 'unknown':
      return 'No date is known for it, so nobody can say until when it may be frozen.'
    case 'notPromised':
      return undefined
  }
}

const ifShared = (couldBe: boolean): string => (couldBe ? ' if no portion is shared' : '')

/** "96 portions, about six months". */
export const makesWords = ({ portions: count, nights: cover, couldBeShared }: WouldMake): string => {
  const long = cover === undefined ? undefined : (aboutHowLong(cover) ?? nights(cover))
  return long ? `${portions(count)}, ${long}${ifShared(couldBeShared)}` : portions(count)
}

/**
 * "82 nights of food, about three months". Undefined where it is past its last good day: it is food for no night then, and
 * what it was good for is said elsewhere.
 */
export const coverWords = (cover: InTime | undefined, couldBeShared = false): string | undefined => {
  if (cover === undefined) return 'no plan uses it yet'
  if (cover.toLastGood) return cover.nights > 0 ? 'enough to its last good day' : undefined
  const long = aboutHowLong(cover.nights)
  return `${nights(cover.nights)} of food${long ? `, ${long}` : ''}${ifShared(couldBeShared)}`
}

/** "421 portions left, enough to its last good day; good until 7 March 2028." */
export const leftWords = (left: number, cover: string | undefined, lastGood: Day | undefined, today: Day): string => {
  const until = lastGood && `${lastGood < today ? 'past since' : 'good until'} ${dayWords(lastGood, today)}`
  return `${[`${capital(portions(left))} left${cover ? `, ${cover}` : ''}`, until].filter(Boolean).join('; ')}.`
}

/** "62 doses, 62 mL, since 3 June". */
export const soFarWords = (doses: number, amount: number, since: Day | undefined, today: Day): string =>
  `${dosesWords(doses)}, ${millilitres(amount)}${since ? `, since ${dayWords(since, today)}` : ''}`

export const costWords = (of: Cost): string => (of === 'notKnown' ? 'price not known' : `${cost(of)} a dose`)

/** The day it came and the day printed on it need no order: old stock is sold. It is said, in case one is a slip. */
export const printedWords = (useBy: Day, receivedOn: Day | undefined): string | undefined =>
  receivedOn && useBy < receivedOn ? 'printed date already past when it came' : undefined

/** "frozen 3 June", "frozen about June 2026". */
export const frozenWords = ({ made }: Lot, today: Day): string =>
  made.kind === 'portionsOnHand' && made.about
    ? `frozen about ${monthWords(made.frozenOn)}`
    : `frozen ${dayWords(made.frozenOn, today)}${made.kind === 'portionsFrozen' && made.late ? ', late' : ''}`

/** Beside a few that are drawn: "And 8 more full trays." */
export const moreTraysWords = (more: readonly TrayNow[]): string => {
  const full = more.every(({ holds, rows, columns }) => holds === rows * columns)
  return `And ${number(more.length)} more ${full ? 'full ' : ''}${more.length === 1 ? 'tray' : 'trays'}.`
}

/** What a count by hand changes, before it is saved. */
export const gapWords = (counted: number, book: number): string => {
  if (counted === book) return `${capital(portions(counted))}, as the book said.`
  const gap = Math.abs(counted - book)
  return `${capital(portions(counted))}: ${number(gap)} ${counted < book ? 'fewer' : 'more'} than the book said.`
}

/** "Two months from the day it came": where its last good day comes from. */
export const lifeWords = ({ recorded, openedOn }: Bottle, { fridgeLife, countsFrom }: FoodDescribed): string => {
  const { count, unit } = fridgeLife
  const long = capital(`${inWords(count)} ${count === 1 ? unit.slice(0, -1) : unit}`)
  if (countsFrom === 'bottling' && recorded.bottledOn) return `${long} from the day it was bottled.`
  if (countsFrom !== 'opening' && recorded.receivedOn) return `${long} from the day it came.`
  return openedOn ? `${long} from the day it was opened.` : `${long} once it is opened.`
}
