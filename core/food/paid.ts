/** What is paid for food that might be bought, and which comes cheapest. Unknown is unknown, never zero. */
import type { Cost } from './cost.ts'
import type { Price } from './facts.ts'

/**
 * Price and postage together, in minor units of one currency; a gift that is posted costs its postage.
 * @param postage minor units, 0 where there is none
 */
export const withPostage = (
  price: Price | undefined,
  postage: { readonly minor: number; readonly currency: string } | undefined,
): Price | undefined => {
  if (price === undefined || postage === undefined || postage.minor === 0) return price
  return price === 'free' ? postage : { ...price, minor: price.minor + postage.minor }
}

/** Shared over so many doses; undefined where there is no dose to share it over. */
export const costEach = (paid: Price | undefined, doses: number): Cost | undefined => {
  if (doses <= 0) return undefined
  if (paid === undefined) return 'notKnown'
  return paid === 'free' ? 'free' : { ...paid, minor: paid.minor / doses }
}
/** So many times a cost: a year of doses. */
export const costTimes = (cost: Cost, times: number): Cost =>
  typeof cost === 'object' ? { ...cost, minor: cost.minor * times } : cost

export type Cheapest =
  /** Places in the list, cheapest first; what is not known stands in no order and is left out. */
  | { readonly is: 'ranked'; readonly order: readonly number[] }
  /** Money of two kinds is never compared: rates change by the day, and none is known here. */
  | { readonly is: 'currencies'; readonly currencies: readonly string[] }

/** Of one cost each, the cheapest first; of two alike the one listed first. */
export const cheapest = (costs: readonly (Cost | undefined)[]): Cheapest => {
  const currencies = [...new Set(costs.flatMap((cost) => (typeof cost === 'object' ? [cost.currency] : [])))]
  if (currencies.length > 1) return { is: 'currencies', currencies }
  const known = costs.flatMap((cost, place) =>
    cost === 'free' ? [{ place, minor: 0 }] : typeof cost === 'object' ? [{ place, minor: cost.minor }] : [],
  )
  return { is: 'ranked', order: known.sort((a, b) => a.minor - b.minor).map(({ place }) => place) }
}
