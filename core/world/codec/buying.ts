/** The shapes of what is recorded of buying. */
import * as v from 'valibot'
import type { BottleId, FoodId, PurchaseId } from '../../basis/ids.ts'
import { count, day, id, list, maybe, moment, text, whole } from './fields.ts'
import { price } from './price.ts'

export const purchaseRecorded = v.looseObject({
  kind: v.literal('purchaseRecorded'),
  at: moment,
  purchase: id<PurchaseId>(),
  on: maybe(day),
  paid: maybe(price),
  postage: maybe(price),
  things: list(
    v.pipe(
      v.looseObject({
        bottle: maybe(id<BottleId>()),
        what: maybe(text),
        count: maybe(count),
        share: maybe(price),
        alone: maybe(price),
      }),
      v.check(({ bottle, what }) => bottle !== undefined || what !== undefined),
    ),
  ),
})
export const foodOrdered = v.looseObject({
  kind: v.literal('foodOrdered'),
  at: moment,
  food: id<FoodId>(),
  on: day,
  comes: maybe(day),
})
const days = whole(0, 365)
export const orderingDescribed = v.looseObject({
  kind: v.literal('orderingDescribed'),
  at: moment,
  leadDays: days,
  cushionDays: days,
})
export const daysAway = v.looseObject({ kind: v.literal('daysAway'), at: moment, from: day, to: day })
