/** A parcel's form: its fields, and what stands in them before anything is typed. */
import {
  type BottleId,
  type Day,
  type Moment,
  type Price,
  type PurchaseId,
  type PurchaseRecorded,
  purchasesAt,
  type World,
} from '../../../../core/index.ts'
import { newId } from '../../../state/ids.ts'
import { minorDigits, usualCurrency } from '../../../words/money.ts'
import { asTyped } from '../../../words/numbers.ts'

export type ThingFields = {
  readonly key: string
  /** A bottle on record; empty for anything else. */
  readonly bottle: string
  readonly what: string
  readonly count: string
  readonly share: string
  readonly alone: string
}
export type PurchaseFields = {
  readonly purchase: PurchaseId
  readonly on: string
  readonly paid: 'price' | 'free' | 'notKnown'
  readonly price: string
  readonly currency: string
  readonly postage: string
  /** Empty: as the price. */
  readonly postageCurrency: string
  readonly things: readonly ThingFields[]
}

const typedPrice = (price: Price | undefined): string => {
  if (price === undefined) return ''
  return price === 'free' ? '0' : asTyped(price.minor / 10 ** minorDigits(price.currency))
}

/** A bottle's own price is what it costs alone, as far as anybody said. */
export const bottleThing = (world: World, bottle: BottleId, currency: string): ThingFields => {
  const own = world.bottles.get(bottle)?.recorded.price
  const alone = typeof own === 'object' && own.currency === currency ? typedPrice(own) : ''
  return { key: bottle, bottle, what: '', count: '', share: '', alone }
}
export const otherThing = (): ThingFields => ({
  key: newId<string>(),
  bottle: '',
  what: 'live bottles',
  count: '',
  share: '',
  alone: '',
})

/** In the currency of the last parcel or bottle that had one. */
const lastCurrency = (world: World, now: Moment): string => {
  const paid = [
    ...[...world.bottles.values()].map(({ recorded }) => recorded.price),
    ...purchasesAt(world, now).map((purchase) => purchase.paid),
  ]
  const last = paid.findLast((price) => typeof price === 'object')
  return typeof last === 'object' ? last.currency : usualCurrency(navigator.language)
}

export const newPurchaseFields = (
  world: World,
  bottle: BottleId | undefined,
  today: Day,
  now: Moment,
): PurchaseFields => {
  const currency = lastCurrency(world, now)
  const known = bottle && world.bottles.get(bottle)
  return {
    purchase: newId<PurchaseId>(),
    on: known?.recorded.receivedOn ?? today,
    paid: 'price',
    price: '',
    currency,
    postage: '',
    postageCurrency: '',
    things: known ? [bottleThing(world, known.id, currency), otherThing()] : [],
  }
}

/** As the book has it. */
export const knownPurchaseFields = (purchase: PurchaseRecorded): PurchaseFields => {
  const { paid, postage, on, things } = purchase
  const money = [paid, postage, ...things.flatMap(({ share, alone }) => [share, alone])]
  const first = money.find((price) => typeof price === 'object')
  const currency = typeof first === 'object' ? first.currency : usualCurrency(navigator.language)
  return {
    purchase: purchase.purchase,
    on: on ?? '',
    paid: paid === undefined ? 'notKnown' : paid === 'free' ? 'free' : 'price',
    price: typeof paid === 'object' ? typedPrice(paid) : '',
    currency,
    postage: typedPrice(postage),
    postageCurrency: typeof postage === 'object' && postage.currency !== currency ? postage.currency : '',
    things: things.map(({ bottle, what, count, share, alone }, place) => ({
      key: bottle ?? `${place}`,
      bottle: bottle ?? '',
      what: what ?? '',
      count: count === undefined ? '' : String(count),
      share: typedPrice(share),
      alone: typedPrice(alone),
    })),
  }
}
