/** The first evening, in one append: a tank, a door, a food with what there is of it, and a plan that starts low. */
import type { Here } from '../basis/here.ts'
import type { DeviceId, PlanId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import { bandOf } from '../dosing/band.ts'
import { makePlan, type PlanRefusal } from '../dosing/plan.ts'
import { type BottleAsked, type BottleRefusal, recordBottle } from '../food/bottles.ts'
import { describeFood, describePlace, type FoodAsked, type FoodRefusal } from '../food/describe.ts'
import type { PlaceDescribed } from '../food/facts.ts'
import { type PortionsOnHandAsked, type PortionsRefusal, recordPortionsOnHand } from '../food/portions.ts'
import { nextStamp, type Stamp } from '../ledger/stamp.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { nightOf } from '../tank/state.ts'
import type { Fact } from './facts.ts'
import { fold } from './fold.ts'
import type { World } from './world.ts'

export type BeginAsked = {
  readonly tank: TankDescribed
  readonly food?: FoodAsked
  readonly place?: Omit<PlaceDescribed, 'kind' | 'at'>
  readonly bottle?: Omit<BottleAsked, 'food' | 'place'>
  readonly portions?: Omit<PortionsOnHandAsked, 'food' | 'place'>
  readonly plan: PlanId
}
export type BeginRefusal = FoodRefusal | BottleRefusal | PortionsRefusal | PlanRefusal

/** The world in which these facts have happened. Its stamps are thrown away with it. */
const after = (facts: readonly Fact[], { now }: Here): World => {
  let latest: Stamp | undefined
  const entries = facts.map((fact) => {
    latest = nextStamp(latest, now, 'begin' as DeviceId)
    return { id: latest, fact }
  })
  return fold(entries)
}

/** Each part is asked of a world in which the ones before it have happened; all of them are recorded, or none. */
export const begin = (asked: BeginAsked, here: Here): Result<readonly Fact[], BeginRefusal> => {
  const { tank, food, place } = asked
  if (!food || !place) return ok([tank])
  const described = describeFood(food, here.now)
  if (!described.ok) return refuse(described.refusal)
  const facts: Fact[] = [tank, ...described.value, ...describePlace(place, here.now)]
  const where = { food: food.food, place: place.place }
  if (asked.bottle) {
    const bottle = recordBottle(after(facts, here), { ...asked.bottle, ...where }, here)
    if (!bottle.ok) return refuse(bottle.refusal)
    facts.push(...bottle.value)
  }
  if (asked.portions) {
    const portions = recordPortionsOnHand(after(facts, here), { ...asked.portions, ...where }, here)
    if (!portions.ok) return refuse(portions.refusal)
    facts.push(...portions.value)
  }
  const shown = bandOf(tank, described.value[0])?.shown
  // Too small to measure: there is nothing to plan until she has a finer pipette or dilutes the food.
  if (shown === undefined || shown === 'tooSmall') return ok(facts)
  const plan = makePlan(
    after(facts, here),
    {
      plan: asked.plan,
      tank: tank.tank,
      food: food.food,
      amount: shown.low,
      everyNights: food.everyNights,
      firstNight: nightOf(here.now, tank),
    },
    here.now,
  )
  return plan.ok ? ok([...facts, ...plan.value]) : refuse(plan.refusal)
}
