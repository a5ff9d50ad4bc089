/** The shapes of what is recorded of food and of the doors it stands behind. */
import * as v from 'valibot'
import type { FoodId, PlaceId } from '../../basis/ids.ts'
import { amount, id, maybe, measure, moment, nights, oneOf, share, span, text, water } from './fields.ts'

export const foodDescribed = v.looseObject({
  kind: v.literal('foodDescribed'),
  at: moment,
  food: id<FoodId>(),
  name: text,
  sort: oneOf(['freshNonViable', 'live', 'shelfStable']),
  band: v.looseObject({ low: amount, high: amount, per: water }),
  everyNights: nights,
  fridgeLife: span,
  countsFrom: oneOf(['bottling', 'arrival', 'opening']),
  freezerLife: maybe(span),
  shakeHours: maybe(measure(10_000)),
  residueShare: share(0.2),
  contents: maybe(
    v.pipe(
      v.looseObject({
        dry: maybe(measure(2)),
        cells: maybe(measure(1e13)),
        cellPicograms: maybe(measure(1e6)),
        nitrogen: maybe(share(0.2)),
        phosphorus: maybe(share(0.1)),
      }),
      v.check(({ dry, cells }) => dry !== undefined || cells !== undefined),
    ),
  ),
})

export const placeDescribed = v.looseObject({
  kind: v.literal('placeDescribed'),
  at: moment,
  place: id<PlaceId>(),
  name: text,
  door: oneOf(['fridge', 'freezer']),
})

export const foodRetired = v.looseObject({
  kind: v.literal('foodRetired'),
  at: moment,
  food: id<FoodId>(),
  why: maybe(text),
})
export const placeRetired = v.looseObject({
  kind: v.literal('placeRetired'),
  at: moment,
  place: id<PlaceId>(),
  why: maybe(text),
})
