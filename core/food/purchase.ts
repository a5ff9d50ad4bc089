/** What came in one parcel, what was paid for it, and how she shares that. */
import type { Day } from '../basis/days.ts'
import { type Here, today } from '../basis/here.ts'
import type { BottleId, PurchaseId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Price, PurchaseRecorded } from './facts.ts'
import type { FoodState } from './state.ts'

export type Thing = PurchaseRecorded['things'][number]
type Money = Exclude<Price, 'free'>

export type PurchaseAsked = {
  readonly purchase: PurchaseId
  readonly on?: Day | undefined
  readonly paid?: Price | undefined
  readonly postage?: Price | undefined
  readonly things: readonly Thing[]
}
/** Sums of one purchase are in one currency: no rate is known here. */
export type TwoCurrencies = { readonly why: 'twoCurrencies'; readonly currencies: readonly string[] }
export type PurchaseRefusal =
  | TwoCurrencies
  | { readonly why: 'nothingInIt' }
  /** Place in the list. */
  | { readonly why: 'thingUnnamed' | 'bottleTwice' | 'noSuchBottle'; readonly thing: number }
  | { readonly why: 'thingsNotCounted'; readonly thing: number; readonly most: number }
  /** More shared out than was paid. */
  | { readonly why: 'sharedTooMuch'; readonly over: Money }
  | { readonly why: 'boughtNotYet'; readonly day: Day }

/** More of one thing than any parcel holds. */
const mostThings = 1000

/** Adds what is known, in one currency; free adds nothing. Undefined where nothing in it is money. */
export const sumPrices = (prices: readonly (Price | undefined)[]): Result<Money | undefined, TwoCurrencies> => {
  const known = prices.filter((price): price is Money => typeof price === 'object')
  const currencies = [...new Set(known.map(({ currency }) => currency))]
  const [currency] = currencies
  if (currency === undefined) return ok(undefined)
  if (currencies.length > 1) return refuse({ why: 'twoCurrencies', currencies })
  return ok({ minor: known.reduce((sum, { minor }) => sum + minor, 0), currency })
}

/** Price and postage. Undefined where the price is not known; free only where the postage was too. */
export const paidInAll = ({
  paid,
  postage,
}: Pick<PurchaseAsked, 'paid' | 'postage'>): Result<Price | undefined, TwoCurrencies> => {
  if (paid === undefined) return ok(undefined)
  const whole = sumPrices([paid, postage])
  return whole.ok ? ok(whole.value ?? 'free') : whole
}

export type Sharing = {
  /** All of it with postage; undefined where the price is not known. */
  readonly whole: Price | undefined
  /** What has been shared out; undefined while nothing has. */
  readonly shared: Money | undefined
  /** What is still to be shared, below zero where too much was; undefined where there is nothing to share. */
  readonly rest: Money | undefined
  /** Things without a share. */
  readonly unshared: number
}
/** How far a parcel has been shared out, while it is typed. */
export const sharingOf = (
  asked: Pick<PurchaseAsked, 'paid' | 'postage' | 'things'>,
): Result<Sharing, TwoCurrencies> => {
  const whole = paidInAll(asked)
  if (!whole.ok) return whole
  const shared = sumPrices(asked.things.map(({ share }) => share))
  if (!shared.ok) return shared
  const both = sumPrices([whole.value, shared.value])
  if (!both.ok) return both
  const rest =
    typeof whole.value === 'object'
      ? { ...whole.value, minor: whole.value.minor - (shared.value?.minor ?? 0) }
      : whole.value === 'free' && shared.value
        ? { ...shared.value, minor: -shared.value.minor }
        : undefined
  const unshared = asked.things.filter(({ share }) => share === undefined).length
  return ok({ whole: whole.value, shared: shared.value, rest, unshared })
}

export type ShareOffers = {
  /** As each costs alone goes to all it costs alone; one thing without such a price has the rest. */
  readonly byAlone: readonly Price[] | undefined
  /** One thing as much as another. */
  readonly equally: readonly Price[] | undefined
  /** The food bears all of it, one bottle as much as another. */
  readonly allOnFood: readonly Price[] | undefined
}
/** Ways to share a parcel, each with a share for every thing in order; every one sums to exactly what was paid. */
export const shareOffers = (asked: Pick<PurchaseAsked, 'paid' | 'postage' | 'things'>): ShareOffers => {
  const whole = paidInAll(asked)
  const none = { byAlone: undefined, equally: undefined, allOnFood: undefined }
  if (!whole.ok || typeof whole.value !== 'object' || asked.things.length < 2) return none
  const { things } = asked
  const split = (weights: readonly number[]) => splitBy(whole.value as Money, weights)
  return {
    byAlone: byAlone(whole.value, things),
    equally: split(things.map(({ count }) => count ?? 1)),
    allOnFood: things.some(isFood) ? split(things.map((thing) => (isFood(thing) ? 1 : 0))) : undefined,
  }
}
const isFood = ({ bottle }: Thing): boolean => bottle !== undefined

const byAlone = (whole: Money, things: readonly Thing[]): readonly Price[] | undefined => {
  const alone = things.map((thing) => thing.alone)
  const known = sumPrices(alone)
  if (!known.ok || !known.value || known.value.currency !== whole.currency) return undefined
  const weights = alone.map((price) => (price === 'free' ? 0 : price?.minor))
  const without = weights.filter((weight) => weight === undefined).length
  if (without === 0) return splitBy(whole, weights as number[])
  const rest = whole.minor - known.value.minor
  if (without > 1 || rest < 0) return undefined
  return weights.map((weight) => priceOf(weight ?? rest, whole.currency))
}

const priceOf = (minor: number, currency: string): Price => (minor === 0 ? 'free' : { minor, currency })

/** Whole minor units by weight; those that do not come out even go to the largest remainders, the first listed first. */
export const splitBy = ({ minor, currency }: Money, weights: readonly number[]): readonly Price[] | undefined => {
  const all = weights.reduce((sum, weight) => sum + weight, 0)
  if (!(all > 0)) return undefined
  const exact = weights.map((weight) => (minor * weight) / all)
  const shares = exact.map(Math.floor)
  const order = exact
    .map((value, place) => ({ place, over: value - Math.floor(value) }))
    .sort((a, b) => b.over - a.over || a.place - b.place)
  let left = minor - shares.reduce((sum, share) => sum + share, 0)
  for (const { place } of order) {
    if (left <= 0) break
    shares[place] = (shares[place] ?? 0) + 1
    left -= 1
  }
  return shares.map((share) => priceOf(share, currency))
}

/** All that is wrong with it, so that it can be said at once. */
export const purchaseTroubles = (state: FoodState, asked: PurchaseAsked, here: Here): readonly PurchaseRefusal[] => {
  const wrong: PurchaseRefusal[] = []
  if (asked.on !== undefined && asked.on > today(here)) wrong.push({ why: 'boughtNotYet', day: asked.on })
  if (asked.things.length === 0) wrong.push({ why: 'nothingInIt' })
  asked.things.forEach(({ bottle, what, count }, thing) => {
    if (bottle !== undefined) {
      if (!state.bottles.has(bottle)) wrong.push({ why: 'noSuchBottle', thing })
      else if (firstPlace(asked.things, bottle) < thing) wrong.push({ why: 'bottleTwice', thing })
    } else if (!what?.trim()) wrong.push({ why: 'thingUnnamed', thing })
    if (count !== undefined && !(Number.isInteger(count) && count > 0 && count <= mostThings))
      wrong.push({ why: 'thingsNotCounted', thing, most: mostThings })
  })
  const sharing = sharingOf(asked)
  if (!sharing.ok) wrong.push(sharing.refusal)
  else if (sharing.value.rest && sharing.value.rest.minor < 0)
    wrong.push({ why: 'sharedTooMuch', over: { ...sharing.value.rest, minor: -sharing.value.rest.minor } })
  return wrong
}
const firstPlace = (things: readonly Thing[], bottle: BottleId): number =>
  things.findIndex((thing) => thing.bottle === bottle)

/** A whole snapshot: recorded again under its id it is corrected, and what it was before stays in the diary. */
export const recordPurchase = (
  state: FoodState,
  asked: PurchaseAsked,
  here: Here,
): Result<readonly [PurchaseRecorded], PurchaseRefusal> => {
  const [wrong] = purchaseTroubles(state, asked, here)
  if (wrong) return refuse(wrong)
  const { purchase, on, paid, postage } = asked
  return ok([
    {
      kind: 'purchaseRecorded',
      at: here.now,
      purchase,
      ...(on ? { on } : {}),
      ...(paid ? { paid } : {}),
      ...(postage ? { postage } : {}),
      things: asked.things.map(({ bottle, what, count, share, alone }) => ({
        ...(bottle ? { bottle } : {}),
        ...(what?.trim() ? { what: what.trim() } : {}),
        ...(count === undefined ? {} : { count }),
        ...(share ? { share } : {}),
        ...(alone ? { alone } : {}),
      })),
    },
  ])
}
