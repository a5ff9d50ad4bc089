/** Bottles she has been offered: what is typed of each, and what is read from it. */
import {
  type BottleUnit,
  bottleAmount,
  type Day,
  type FoodDescribed,
  foodsAt,
  type Microlitres,
  type Moment,
  type Price,
  readPrice,
  readSize,
  type World,
  withPostage,
} from '../../../../core/index.ts'
import type { FieldRefusal } from '../../../words/foodRefusals.ts'
import { minorDigits, usualCurrency } from '../../../words/money.ts'
import { bottleUnits, number } from '../../../words/numbers.ts'
import type { OfferNamed } from '../../../words/worth.ts'
import { asLastOf } from '../bottleFields.ts'
import { type TrayFields, trayFields } from '../trays.ts'

export type OfferFields = {
  /** Null: what stands there is no count. */
  readonly bottles: number | null
  readonly size: string
  readonly unit: BottleUnit
  readonly paid: 'price' | 'free' | 'notKnown'
  readonly price: string
  readonly postage: string
  readonly currency: string
}
export type OffersFields = TrayFields & {
  readonly food: string
  readonly offers: readonly OfferFields[]
  readonly arrives: string
  /** Undefined: as proposed. */
  readonly portion: string | undefined
}

export const mostOffers = 4
export const mostInPack = 24

export const blankOffer = (currency: string): OfferFields => ({
  bottles: 1,
  size: '',
  unit: 'mL',
  paid: 'price',
  price: '',
  postage: '',
  currency,
})

/** The last bottle she had stands there to be compared with. */
export const offersFields = (world: World, today: Day, now: Moment): OffersFields => {
  const foods = foodsAt(world, now)
  const last = [...world.bottles.values()].findLast(({ recorded }) => foods.some(({ food }) => food === recorded.food))
  const food = last?.recorded.food ?? foods[0]?.food ?? ''
  const paid = [...world.bottles.values()].findLast(({ recorded }) => typeof recorded.price === 'object')?.recorded
    .price
  const blank = blankOffer(typeof paid === 'object' ? paid.currency : usualCurrency(navigator.language))
  const { size, unit, paid: how, price, currency } = { ...blank, ...asLastOf(world, food) }
  // A price nobody wrote down is asked for, like the others.
  const first: OfferFields = { ...blank, size, unit, paid: how === 'free' ? how : 'price', price, currency }
  return { ...trayFields(world), food, offers: [first, blank], arrives: today, portion: undefined }
}

export type OfferRead = OfferNamed & { readonly amount: Microlitres; readonly posted: boolean }
export type OfferTroubles = Partial<Record<keyof OfferFields, FieldRefusal>>

/** Nothing is wrong with what has not been typed yet; undefined until there is a size. */
export const readOffer = (
  fields: OfferFields,
): { readonly offer: OfferRead | undefined; readonly wrong: OfferTroubles } => {
  const { unit, paid, currency, bottles } = fields
  const size = readSize(fields.size, unit)
  const digits = minorDigits(currency)
  const price = paid === 'price' ? readPrice(fields.price, currency, digits) : undefined
  const postage = readPrice(fields.postage, currency, digits)
  const isBlank = (typed: string) => typed.trim() === ''
  const code = [price, postage].find((read) => read && !read.ok && read.refusal.why === 'currencyUnknown')
  const wrong: OfferTroubles = {
    ...(size.ok || isBlank(fields.size) ? {} : { size: size.refusal }),
    ...(bottles === null ? { bottles: { why: 'howMany' } as const } : {}),
    ...(price && !price.ok && !isBlank(fields.price) && price.refusal.why !== 'currencyUnknown'
      ? { price: price.refusal }
      : {}),
    ...(postage.ok || isBlank(fields.postage) || isNothing(fields.postage) || postage.refusal.why === 'currencyUnknown'
      ? {}
      : { postage: postage.refusal }),
    ...(code && !code.ok ? { currency: code.refusal } : {}),
  }
  if (!size.ok || Object.keys(wrong).length > 0) return { offer: undefined, wrong }
  const asked: Price | undefined = paid === 'free' ? 'free' : price?.ok ? price.value : undefined
  const posting = postage.ok && typeof postage.value === 'object' ? postage.value : undefined
  return {
    offer: {
      bottles: bottles ?? 1,
      size: `${number(size.value.value)}\u00a0${bottleUnits[unit]}`,
      paid: withPostage(asked, posting),
      posted: posting !== undefined,
      amount: bottleAmount(size.value.value, unit),
    },
    wrong,
  }
}
/** "0": no postage, said in a number. */
const isNothing = (typed: string): boolean => /^\s*0+([.,]0*)?\s*$/.test(typed)

export const foodOffered = (world: World, fields: OffersFields, now: Moment): FoodDescribed | undefined => {
  const foods = foodsAt(world, now)
  return foods.find(({ food }) => food === fields.food) ?? foods[0]
}
