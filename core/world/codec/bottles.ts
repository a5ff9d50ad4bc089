/** The shapes of what is recorded of bottles in the fridge. */
import * as v from 'valibot'
import type { BottleId, FoodId, PlaceId } from '../../basis/ids.ts'
import { amount, bookAmount, day, id, list, maybe, measure, moment, oneOf, text, yesOrNo } from './fields.ts'
import { price } from './price.ts'

export const bottleRecorded = v.looseObject({
  kind: v.literal('bottleRecorded'),
  at: moment,
  bottle: id<BottleId>(),
  food: id<FoodId>(),
  size: v.looseObject({ value: measure(1_000_000), unit: oneOf(['mL', 'usFlOz', 'impFlOz']) }),
  contents: amount,
  about: yesOrNo,
  bottledOn: maybe(day),
  receivedOn: maybe(day),
  openedOn: maybe(day),
  useBy: maybe(day),
  price: maybe(price),
  place: id<PlaceId>(),
})

const bottle = id<BottleId>()
export const bottleOpened = v.looseObject({ kind: v.literal('bottleOpened'), at: moment, bottle, openedOn: day })
export const bottleFinished = v.looseObject({ kind: v.literal('bottleFinished'), at: moment, bottle })
export const bottlesShaken = v.looseObject({ kind: v.literal('bottlesShaken'), at: moment, bottles: list(bottle) })
export const bottleMoved = v.looseObject({
  kind: v.literal('bottleMoved'),
  at: moment,
  bottle,
  to: id<PlaceId>(),
})

export const liquidMeasured = v.looseObject({
  kind: v.literal('liquidMeasured'),
  at: moment,
  bottle,
  left: amount,
  book: bookAmount,
  why: maybe(text),
})
export const liquidGone = v.looseObject({
  kind: v.literal('liquidGone'),
  at: moment,
  bottle,
  amount,
  fate: oneOf(['lost', 'discarded']),
  why: maybe(text),
})
