/** What is recorded of buying: what a parcel cost and whose share is what, what is on its way, when nobody is at home. */
import type { Day } from '../basis/days.ts'
import type { BottleId, FoodId, PurchaseId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { Price } from './price.ts'

/** A whole snapshot: one parcel, what was paid for it, and how she shares that over what was in it. */
export type PurchaseRecorded = {
  readonly kind: 'purchaseRecorded'
  readonly at: Moment
  readonly purchase: PurchaseId
  readonly on?: Day
  /** For all of it, without postage. Absent means not known. */
  readonly paid?: Price
  readonly postage?: Price
  readonly things: readonly {
    /** A food bottle on record; absent for anything else in the parcel. */
    readonly bottle?: BottleId
    /** What else it is: "live bottles". */
    readonly what?: string
    readonly count?: number
    /** Its part of what was paid, postage included. Absent means not known. */
    readonly share?: Price
    /** What it costs bought alone. */
    readonly alone?: Price
  }[]
}

export type FoodOrdered = {
  readonly kind: 'foodOrdered'
  readonly at: Moment
  readonly food: FoodId
  readonly on: Day
  /** When it is to come. */
  readonly comes?: Day
}
/** A whole snapshot: days from ordering to the door, and days to spare. */
export type OrderingDescribed = {
  readonly kind: 'orderingDescribed'
  readonly at: Moment
  readonly leadDays: number
  readonly cushionDays: number
}
/** Nobody is at home to take a parcel in, the first and last day included. */
export type DaysAway = { readonly kind: 'daysAway'; readonly at: Moment; readonly from: Day; readonly to: Day }

export type BuyingFact = PurchaseRecorded | FoodOrdered | OrderingDescribed | DaysAway
