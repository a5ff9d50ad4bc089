/** Which fridge or freezer: one she has, or a new one named on the spot. */
import {
  type Door,
  describePlace,
  type Moment,
  ok,
  type PlaceDescribed,
  type PlaceId,
  placeAt,
  placesAt,
  type Result,
  type World,
} from '../../../core/index.ts'
import { newId } from '../../state/ids.ts'
import { readName } from './readName.ts'
import type { Trouble } from './useAct.ts'

export type PlaceFields = {
  /** A place's id, or 'new'. */
  readonly place: string
  readonly newPlace: PlaceId
  readonly placeName: string
}

/** Those that are there, and the one an entry already names. */
export const placesOffered = (
  world: World,
  door: Door,
  named: string | undefined,
  now: Moment,
): readonly PlaceDescribed[] => {
  const there = placesAt(world, now).filter((place) => place.door === door)
  const own = named === undefined ? undefined : placeAt(world, named as PlaceId, now)
  return own?.door === door && !there.includes(own) ? [...there, own] : there
}

/**
 * The one she used last, else the first there is, else a new one.
 * @param named the place an entry already has: offered although the door is gone
 */
export const placeFields = (
  world: World,
  door: Door,
  last: PlaceId | undefined,
  now: Moment,
  named?: PlaceId | undefined,
): PlaceFields => {
  const there = placesOffered(world, door, named, now)
  const usual = there.find(({ place }) => place === last) ?? there[0]
  return { place: usual?.place ?? 'new', newPlace: newId<PlaceId>(), placeName: usual ? '' : `Kitchen ${door}` }
}

export type PlaceRead = {
  readonly place: PlaceId
  readonly facts: readonly PlaceDescribed[]
  /** The world that knows it: what else the form records is asked of this one. */
  readonly world: World
}

export const readPlace = (
  { place, newPlace, placeName }: PlaceFields,
  door: Door,
  world: World,
  now: Moment,
): Result<PlaceRead, Trouble> => {
  const known = placeAt(world, place as PlaceId, now)
  if (known?.door === door) return ok({ place: known.place, facts: [], world })
  const name = readName(placeName, 'placeName')
  if (!name.ok) return name
  const facts = describePlace({ place: newPlace, name: name.value, door }, now)
  return ok({ place: newPlace, facts, world: { ...world, places: new Map(world.places).set(newPlace, facts) } })
}
