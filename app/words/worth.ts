/** What is said of freezing on one day or another, and of bottles that might be bought. */
import type {
  Cheapest,
  Cost,
  Day,
  FreshUse,
  IfFrozen,
  IfNot,
  Microlitres,
  OfferAhead,
  Price,
} from '../../core/index.ts'
import { dayWords, nightFrom, weekday } from './dates.ts'
import { dosesWords } from './entries.ts'
import { list } from './list.ts'
import { cost, price, yearCost } from './money.ts'
import { capital, inWords, millilitres, number, portions, trays } from './numbers.ts'

/** "Friday, 25 December": said by the slider, for eyes and for ears. */
export const sliderDay = (day: Day, today: Day): string => `${weekday(day)}, ${dayWords(day, today)}`

/** "15 doses, 8.25 mL". */
export const freshWords = ({ doses, amount }: FreshUse): string =>
  doses === 0 ? 'none' : `${dosesWords(doses)}, ${millilitres(amount)}`

/** "195 of 0.55 mL". */
export const madeWords = ({ portions: made }: IfFrozen, each: Microlitres): string =>
  made === 0 ? 'none: nothing is left by then' : `${number(made)} of ${millilitres(each)}`

/** "12 portions and 0.3 mL". */
export const unusedWords = ({ strands, over }: IfFrozen): string => {
  const parts = [...(strands > 0 ? [portions(strands)] : []), ...(over > 0 ? [millilitres(over)] : [])]
  return parts.length > 0 ? list(parts) : 'nothing'
}

/** "Never frozen: 30 doses from the bottle, 15 mL, and 45 mL won’t get used in time." */
export const ifNotWords = ({ fresh, wasted }: IfNot): string => {
  const given = fresh.doses === 0 ? 'no dose from the bottle' : `${freshWords(fresh)}, from the bottle`
  return `Never frozen: ${given}, and ${wasted > 0 ? `${millilitres(wasted)} won’t get used in time` : 'all of it is used'}.`
}

export const openedOnTheWay = (until: Day, today: Day): string =>
  `Still sealed. Opened for its first dose it is good in the fridge until ${dayWords(until, today)}.`

/** "£68.44 for a year of doses". */
export const yearWords = (of: Cost): string | undefined =>
  typeof of === 'object' ? `${yearCost(of)} for a year of doses` : undefined

const places = ['first', 'second', 'third', 'fourth'] as const
/** "First bottle": which of those typed. */
export const placeWords = (place: number): string => `${capital(places[place] ?? number(place + 1))} bottle`

export type OfferNamed = { readonly bottles: number; readonly size: string; readonly paid: Price | undefined }
/** "the 120 mL bottle", "the pack of two 60 mL bottles". */
export const offerName = ({ bottles, size }: OfferNamed): string =>
  bottles === 1 ? `the ${size} bottle` : `the pack of ${inWords(bottles)} ${size} bottles`

/** "120 mL bottle, £43.50 with postage". */
export const offerWords = (offer: OfferNamed, posted: boolean): string => {
  const paid = offer.paid === undefined ? 'price not known' : price(offer.paid)
  return `${capital(offerName(offer).slice(4))}, ${paid}${posted && offer.paid !== undefined ? ' with postage' : ''}`
}

/** "£0.375 a dose". */
export const offerCost = (each: Cost | undefined): string => {
  if (each === undefined) return 'no dose'
  return each === 'notKnown' ? 'not known' : `${cost(each)} a dose`
}

/** What it comes to: doses, nights, trays, and what won’t get used. */
export const offerLines = (
  { planned, doses, begins, lastNight, portions: made, trays: needed, lastGood, wasted }: OfferAhead,
  { year, wells, today }: { readonly year: Cost | undefined; readonly wells: number; readonly today: Day },
): readonly string[] => {
  const from = begins && lastNight ? `, from ${dayWords(begins, today)} to ${dayWords(lastNight, today)}` : ''
  const given = planned
    ? doses > 0
      ? `${capital(dosesWords(doses))} that you would use${from}.`
      : 'None of it would be used in time: what you have lasts longer than this would keep.'
    : `${capital(dosesWords(doses))} in all.`
  const room =
    made > 0
      ? `${capital(portions(made))} fill ${trays(needed)} of ${number(wells)} wells${lastGood ? `, good until ${dayWords(lastGood, today)}` : ''}.`
      : `No promise for the freezer${lastGood ? `: good in the fridge until ${dayWords(lastGood, today)}` : ''}.`
  const unused = wasted > 0 ? `${millilitres(wasted)} won’t get used${planned ? ' in time' : ''}.` : ''
  return [given, room, unused, year && yearWords(year) ? `${capital(yearWords(year) ?? '')}.` : ''].filter(Boolean)
}

export type OfferSaid = OfferNamed & { readonly each: Cost | undefined; readonly doses: number }

const eachWords = (each: Cost | undefined): string =>
  each === 'free' ? 'free' : `${offerCost(each)}${each === undefined ? '' : ' that you would use'}`

/** Which to buy, in a sentence. */
export const bestWords = (offers: readonly OfferSaid[], ranked: Cheapest): string => {
  const [only] = offers
  if (!only)
    return 'Type the bottles you have seen: the one that costs least for each dose you would use is named here.'
  if (offers.every(({ doses }) => doses === 0))
    return 'You have enough: none of these would be used before its last good day.'
  if (ranked.is === 'currencies')
    return `Prices in ${list(ranked.currencies)} cannot be compared: rates change by the day. Type them in one currency.`
  const [best, next] = ranked.order.flatMap((place) => offers[place] ?? [])
  if (!best) return 'No price is known yet, so none can be called the cheapest.'
  const says = `${capital(offerName(best))}: ${eachWords(best.each)}`
  if (!next) return `${says}.`
  if (same(best.each, next.each)) return `${says}, and ${offerName(next)} costs the same.`
  return `${says}, against ${offerCost(next.each)} for ${offerName(next)}.`
}
const same = (a: Cost | undefined, b: Cost | undefined): boolean =>
  a === b || (typeof a === 'object' && typeof b === 'object' && cost(a) === cost(b))

/** "You have 41 portions; what you buy now would begin on Sunday night, 28 March." */
export const homeWords = (has: string, food: string, begins: Day | undefined, tonight: Day): string | undefined => {
  if (has === '') return undefined
  const then = begins ? `; what you buy now would begin ${onNight(begins, tonight)}` : ', and it is used first'
  return `You have ${has} of ${food}${then}.`
}
const onNight = (night: Day, tonight: Day): string => {
  const words = nightFrom(night, tonight)
  return / night/.test(words) && !words.startsWith('tomorrow') ? `on ${words}` : words
}

/** "One bottle, GBP": what is folded away of an offer. */
export const packWords = (bottles: number | null, paid: 'price' | 'free' | 'notKnown', currency: string): string => {
  const pack = bottles === null || bottles === 1 ? 'One bottle' : `Pack of ${inWords(bottles)}`
  const how = { price: `price in ${currency}`, free: 'free', notKnown: 'price not known' }[paid]
  return `${pack}, ${how}`
}

/** "Portions of 0.55 mL, trays of 15 wells, and when it comes". */
export const howWords = (each: Microlitres | undefined, wells: number): string =>
  each === undefined
    ? 'When it would come'
    : `Portions of ${millilitres(each)}, trays of ${number(wells)} wells, and when it would come`
