/** The shapes of what is recorded of dosing. */
import * as v from 'valibot'
import type { BottleId, FoodId, LotId, PlanId, TankId } from '../../basis/ids.ts'
import { amount, bookCount, count, day, id, list, maybe, moment, nights, oneOf, someAmount, text } from './fields.ts'

export const planMade = v.looseObject({
  kind: v.literal('planMade'),
  at: moment,
  plan: id<PlanId>(),
  tank: id<TankId>(),
  food: id<FoodId>(),
  amount: someAmount,
  everyNights: nights,
  firstNight: day,
  rhythm: maybe(oneOf(['fixedNights'])),
})
export const planEnded = v.looseObject({
  kind: v.literal('planEnded'),
  at: moment,
  plan: id<PlanId>(),
  why: maybe(text),
})
export const planHeld = v.looseObject({
  kind: v.literal('planHeld'),
  at: moment,
  plan: id<PlanId>(),
  until: day,
  why: maybe(text),
})
export const nextNightChosen = v.looseObject({
  kind: v.literal('nextNightChosen'),
  at: moment,
  plan: id<PlanId>(),
  after: day,
  next: day,
})

const served = { tank: id<TankId>(), night: day, amount }
const anyServed = list(v.looseObject({ ...served, plan: maybe(id<PlanId>()) }))
const given = {
  at: moment,
  food: id<FoodId>(),
  taken: list(
    v.variant('from', [
      v.looseObject({ from: v.literal('portions'), lot: id<LotId>(), count }),
      v.looseObject({ from: v.literal('bottle'), bottle: id<BottleId>(), amount }),
    ]),
  ),
  fromAside: maybe(v.literal(true)),
  why: maybe(text),
}
export const doseGiven = v.looseObject({
  kind: v.literal('doseGiven'),
  ...given,
  served: list(v.looseObject({ ...served, plan: id<PlanId>() })),
})
export const doseGivenOffPlan = v.looseObject({ kind: v.literal('doseGivenOffPlan'), ...given, served: anyServed })
export const doseSetAside = v.looseObject({ kind: v.literal('doseSetAside'), ...given, served: anyServed })

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

const range = { plan: id<PlanId>(), tank: id<TankId>(), from: day, to: day }
export const nightsMissed = v.looseObject({
  kind: v.literal('nightsMissed'),
  at: moment,
  food: id<FoodId>(),
  ...range,
  why: maybe(text),
})
export const nightsCounted = v.looseObject({
  kind: v.literal('nightsCounted'),
  at: moment,
  food: id<FoodId>(),
  rounds: list(v.looseObject(range)),
  lots: list(v.looseObject({ lot: id<LotId>(), counted: count, book: bookCount })),
  doses: count,
  amount,
})
