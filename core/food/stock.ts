/** What there is, by door. */
import type { Microlitres } from '../basis/amounts.ts'
import { byText } from '../basis/compare.ts'
import type { Day } from '../basis/days.ts'
import type { PlaceId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodDescribed, PlaceDescribed } from './facts.ts'
import {
  type Bottle,
  bottleLastGood,
  type FoodState,
  foodAt,
  keptIn,
  type Lot,
  liquidLeft,
  lotLastGood,
  placeAt,
  placesAt,
  portionsLeft,
  usableLiquid,
} from './state.ts'
import { type Keeping, keeping } from './status.ts'

export type BottleShelved = {
  readonly bottle: Bottle
  readonly food: FoodDescribed
  readonly left: Microlitres
  readonly usable: Microlitres
  readonly lastGood: Day | undefined
  readonly keeping: Keeping
}
export type LotShelved = {
  readonly lot: Lot
  readonly food: FoodDescribed
  readonly left: number
  readonly lastGood: Day | undefined
  readonly keeping: Keeping
}
export type Shelf = {
  /** Undefined: what stands in places that are not on record, crossed out perhaps, or another phone's. */
  readonly place: PlaceDescribed | undefined
  /** The door is gone by her word, and something stands behind it all the same: from another phone, perhaps. */
  readonly gone: boolean
  readonly lots: readonly LotShelved[]
  readonly bottles: readonly BottleShelved[]
  /** Of a food that is not on record: nobody can say until when it is good, and it is there. */
  readonly unknown: { readonly lots: readonly Lot[]; readonly bottles: readonly Bottle[] }
}

/** How many things stand behind a door. */
export const thingsBehind = ({ lots, bottles, unknown }: Shelf): number =>
  lots.length + bottles.length + unknown.lots.length + unknown.bottles.length

const byLastGood = (a: { lastGood: Day | undefined }, b: { lastGood: Day | undefined }): number =>
  byText(a.lastGood ?? '9', b.lastGood ?? '9')

/**
 * Every door with what stands behind it, soonest to go first; last, what stands behind none on record. A door that is gone is
 * told only while something is behind it. Finished bottles and empty lots are history, not stock.
 */
export const stock = (state: FoodState, now: Moment, today: Day): readonly Shelf[] => {
  const bottles = [...state.bottles.values()].flatMap((bottle): (BottleShelved & { at: PlaceId })[] => {
    const food = foodAt(state, bottle.recorded.food, now)
    if (!food || bottle.finished || bottle.left <= 0) return []
    const lastGood = bottleLastGood(bottle, food)
    return [
      {
        at: bottle.place,
        bottle,
        food,
        left: liquidLeft(bottle),
        usable: usableLiquid(bottle, food),
        lastGood,
        keeping: keeping(lastGood, today, keptIn(bottle)),
      },
    ]
  })
  const lots = [...state.lots.values()].flatMap((lot): (LotShelved & { at: PlaceId })[] => {
    const food = foodAt(state, lot.made.food, now)
    if (!food || lot.left <= 0) return []
    const lastGood = lotLastGood(lot, food)
    return [
      {
        at: lot.place,
        lot,
        food,
        left: portionsLeft(lot),
        lastGood,
        keeping: keeping(lastGood, today, 'freezer'),
      },
    ]
  })
  const nameless = {
    lots: [...state.lots.values()].filter(({ made, left }) => left > 0 && !foodAt(state, made.food, now)),
    bottles: [...state.bottles.values()].filter(
      ({ recorded, finished, left }) => !finished && left > 0 && !foodAt(state, recorded.food, now),
    ),
  }
  const kept = placesAt(state, now)
  const shelf = (place: PlaceDescribed | undefined, isHere: (at: PlaceId) => boolean): Shelf => ({
    place,
    gone: place !== undefined && !kept.includes(place),
    lots: lots.filter(({ at }) => isHere(at)).sort(byLastGood),
    bottles: bottles.filter(({ at }) => isHere(at)).sort(byLastGood),
    unknown: {
      lots: nameless.lots.filter(({ place: at }) => isHere(at)),
      bottles: nameless.bottles.filter(({ place: at }) => isHere(at)),
    },
  })
  const known = [...state.places.keys()].flatMap((id) => {
    const place = placeAt(state, id, now)
    return place ? [shelf(place, (at) => at === id)] : []
  })
  const shelves = [...known, shelf(undefined, (at) => !state.places.has(at))]
  return shelves.filter((each) => (each.place && !each.gone) || thingsBehind(each) > 0)
}
