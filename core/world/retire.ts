/** A tank taken down, a food no longer bought, a door that is gone: their past stays, and describing them again brings them back. */
import type { FoodId, PlaceId, TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import { type Moment, wallDay, type Zone } from '../basis/zones.ts'
import type { FoodRetired, PlaceRetired } from '../food/facts.ts'
import { type FoodState, foodAt, foodRetired, placesAt } from '../food/state.ts'
import { stock, thingsBehind } from '../food/stock.ts'
import type { TankRetired } from '../tank/facts.ts'
import { type TankState, tankKept } from '../tank/state.ts'

export type RetireRefusal =
  | { readonly why: 'noSuchTank' | 'noSuchFood' | 'noSuchPlace' }
  /** Things still stand behind the door: they are moved first. */
  | { readonly why: 'notEmpty'; readonly things: number }

type Why = { readonly why?: string }
const because = (why: string | undefined) => (why ? { why } : {})

/** Its plans end with it. */
export const retireTank = (
  state: TankState,
  { tank, why }: { readonly tank: TankId } & Why,
  now: Moment,
): Result<readonly [TankRetired], RetireRefusal> =>
  tankKept(state, tank, now)
    ? ok([{ kind: 'tankRetired', at: now, tank, ...because(why) }])
    : refuse({ why: 'noSuchTank' })

/** Its plans end with it; what is left of it stays on the shelf. */
export const retireFood = (
  state: FoodState,
  { food, why }: { readonly food: FoodId } & Why,
  now: Moment,
): Result<readonly [FoodRetired], RetireRefusal> =>
  foodAt(state, food, now) && !foodRetired(state, food, now)
    ? ok([{ kind: 'foodRetired', at: now, food, ...because(why) }])
    : refuse({ why: 'noSuchFood' })

export const retirePlace = (
  state: FoodState,
  { place, why }: { readonly place: PlaceId } & Why,
  { now, zone }: { readonly now: Moment; readonly zone: Zone },
): Result<readonly [PlaceRetired], RetireRefusal> => {
  if (!placesAt(state, now).some((known) => known.place === place)) return refuse({ why: 'noSuchPlace' })
  const shelf = stock(state, now, wallDay(now, zone)).find((shelved) => shelved.place?.place === place)
  const things = shelf ? thingsBehind(shelf) : 0
  if (things > 0) return refuse({ why: 'notEmpty', things })
  return ok([{ kind: 'placeRetired', at: now, place, ...because(why) }])
}
