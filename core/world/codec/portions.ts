/** The shapes of what is recorded of portions in the freezer. */
import * as v from 'valibot'
import type { BottleId, FoodId, LotId, PlaceId } from '../../basis/ids.ts'
import {
  amount,
  bookCount,
  count,
  day,
  id,
  list,
  maybe,
  moment,
  oneOf,
  someAmount,
  text,
  whole,
  yesOrNo,
} from './fields.ts'

/** A tray is drawn well by well. */
const side = whole(1, 100)
const tray = v.looseObject({ rows: side, columns: side, filled: whole(0, 10_000) })

const kept = v.variant('as', [
  v.looseObject({ as: v.literal('trays'), trays: list(tray) }),
  v.looseObject({ as: v.literal('loose') }),
])
/** Of a lot's trays, of a tray's wells and columns: each is counted from 0. */
const place = whole(0, 10_000)

const portions = {
  at: moment,
  lot: id<LotId>(),
  food: id<FoodId>(),
  mark: text,
  portions: count,
  each: someAmount,
  frozenOn: day,
  kept,
  place: id<PlaceId>(),
}

export const portionsFrozen = v.looseObject({
  kind: v.literal('portionsFrozen'),
  ...portions,
  bottle: id<BottleId>(),
  taken: amount,
  late: yesOrNo,
})
export const portionsOnHand = v.looseObject({ kind: v.literal('portionsOnHand'), ...portions, about: yesOrNo })

export const portionsCounted = v.looseObject({
  kind: v.literal('portionsCounted'),
  at: moment,
  lot: id<LotId>(),
  counted: count,
  book: bookCount,
  why: maybe(text),
})
export const portionsGone = v.looseObject({
  kind: v.literal('portionsGone'),
  at: moment,
  lot: id<LotId>(),
  count,
  fate: oneOf(['lost', 'discarded']),
  why: maybe(text),
})
export const portionsFound = v.looseObject({
  kind: v.literal('portionsFound'),
  at: moment,
  lot: id<LotId>(),
  count,
  why: maybe(text),
})
export const portionsGivenAway = v.looseObject({
  kind: v.literal('portionsGivenAway'),
  at: moment,
  lot: id<LotId>(),
  count,
  to: maybe(text),
})

export const lotMoved = v.looseObject({
  kind: v.literal('lotMoved'),
  at: moment,
  lot: id<LotId>(),
  to: id<PlaceId>(),
})
export const portionsMoved = v.looseObject({
  kind: v.literal('portionsMoved'),
  at: moment,
  from: id<LotId>(),
  lot: id<LotId>(),
  mark: text,
  count,
  kept,
  to: id<PlaceId>(),
})
export const wellsSeen = v.looseObject({
  kind: v.literal('wellsSeen'),
  at: moment,
  lot: id<LotId>(),
  tray: place,
  empty: list(place),
})
export const trayCut = v.looseObject({
  kind: v.literal('trayCut'),
  at: moment,
  lot: id<LotId>(),
  tray: place,
  after: list(place),
})
