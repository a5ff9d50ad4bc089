/** The shapes of what is recorded of dosing. */
import * as v from 'valibot'
import type { BottleId, FoodId, LotId, PlanId, TankId } from '../../basis/ids.ts'
import { amount, count, day, id, list, maybe, moment, nights, someAmount, text } from './fields.ts'

export const planMade = v.looseObject({
  kind: v.literal('planMade'),
  at: moment,
  plan: id<PlanId>(),
  tank: id<TankId>(),
  food: id<FoodId>(),
  amount: someAmount,
  everyNights: nights,
  firstNight: day,
})

export const doseGiven = v.looseObject({
  kind: v.literal('doseGiven'),
  at: moment,
  food: id<FoodId>(),
  served: list(v.looseObject({ tank: id<TankId>(), plan: id<PlanId>(), night: day, amount })),
  taken: list(
    v.variant('from', [
      v.looseObject({ from: v.literal('portions'), lot: id<LotId>(), count }),
      v.looseObject({ from: v.literal('bottle'), bottle: id<BottleId>(), amount }),
    ]),
  ),
  why: maybe(text),
})

const nightMarked = {
  at: moment,
  tank: id<TankId>(),
  food: id<FoodId>(),
  plan: id<PlanId>(),
  night: day,
  why: maybe(text),
}
export const nightSkipped = v.looseObject({ kind: v.literal('nightSkipped'), ...nightMarked })
export const nightUnknown = v.looseObject({ kind: v.literal('nightUnknown'), ...nightMarked })
