/**
 * What grows while food facts are folded, and how liquid and portions leave it. A change dated before something was first
 * *seen* is already in the figure she saw, and does not count again.
 */
import type { BottleId, FoodId, LotId, PlaceId, PurchaseId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type {
  DaysAway,
  FoodDescribed,
  FoodOrdered,
  FoodRetired,
  FoodSmelled,
  OrderingDescribed,
  PlaceDescribed,
  PlaceRetired,
  PurchaseRecorded,
} from './facts.ts'
import type { Bottle, Fed, Joined, Lot, Observation, TraySeen } from './state.ts'

export type Growing<Thing> = {
  -readonly [Key in keyof Thing]: Key extends 'observations'
    ? Observation[]
    : Key extends 'traysSeen'
      ? Map<number, TraySeen>
      : Key extends 'smelled'
        ? FoodSmelled[]
        : Key extends 'joined'
          ? Joined[]
          : Thing[Key]
}

export const emptyFood = () => ({
  foods: new Map<FoodId, FoodDescribed[]>(),
  foodsRetired: new Map<FoodId, FoodRetired[]>(),
  places: new Map<PlaceId, PlaceDescribed[]>(),
  placesRetired: new Map<PlaceId, PlaceRetired[]>(),
  bottles: new Map<BottleId, Growing<Bottle>>(),
  lots: new Map<LotId, Growing<Lot>>(),
  fed: new Map<FoodId, Fed>(),
  purchases: new Map<PurchaseId, PurchaseRecorded[]>(),
  orders: new Map<FoodId, FoodOrdered[]>(),
  ordering: [] as OrderingDescribed[],
  daysAway: [] as DaysAway[],
  /** Entries that name a bottle or lot the ledger does not have. */
  strangers: [] as { entry: Stamp; thing: BottleId | LotId }[],
})
export type Folding = ReturnType<typeof emptyFood>

export const bottleOf = (state: Folding, entry: Stamp, id: BottleId): Growing<Bottle> | undefined => {
  const bottle = state.bottles.get(id)
  if (!bottle) state.strangers.push({ entry, thing: id })
  return bottle
}
export const lotOf = (state: Folding, entry: Stamp, id: LotId): Growing<Lot> | undefined => {
  const lot = state.lots.get(id)
  if (!lot) state.strangers.push({ entry, thing: id })
  return lot
}
const seenAfter = (bottle: Growing<Bottle>, at: Moment): boolean => at < bottle.recorded.at
/** A part moved away was never looked over: what a slow clock dates before its move came out of it all the same. */
export const countedAfter = ({ made, partOf }: Pick<Lot, 'made' | 'partOf'>, at: Moment): boolean =>
  made.kind === 'portionsOnHand' && partOf === undefined && at < made.at

export const pour = (bottle: Growing<Bottle>, at: Moment, amount: number, as: 'frozen' | 'fed' | 'gone') => {
  if (!seenAfter(bottle, at)) bottle.left -= amount
  bottle[as] += amount
}
export const take = (lot: Growing<Lot>, at: Moment, count: number, as: 'fed' | 'gone') => {
  if (!countedAfter(lot, at)) lot.left -= count
  lot[as] += count
}
