/** Which fridge or freezer: one she has, or a new one named on the spot. */
import {
  type Door,
  describePlace,
  type Moment,
  ok,
  type PlaceDescribed,
  type PlaceId,
  placeAt,
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

export const placesBehind = (world: World, door: Door, now: Moment): readonly PlaceDescribed[] =>
  [...world.places.keys()].flatMap((id) => {
    const place = placeAt(world, id, now)
    return place?.door === door ? [place] : []
  })

/** The one she used last, else the first there is, else a new one. */
export const placeFields = (world: World, door: Door, last: PlaceId | undefined, now: Moment): PlaceFields => {
  const there = placesBehind(world, door, now)
  const usual = there.find(({ place }) => place === last) ?? there[0]
  return { place: usual?.place ?? 'new', newPlace: newId<PlaceId>(), placeName: usual ? '' : `Kitchen ${door}` }
}

export type PlaceRead = { readonly place: PlaceId; readonly facts: readonly PlaceDescribed[] }

export const readPlace = (
  { place, newPlace, placeName }: PlaceFields,
  door: Door,
  world: World,
  now: Moment,
): Result<PlaceRead, Trouble> => {
  const known = placesBehind(world, door, now).find((there) => there.place === place)
  if (known) return ok({ place: known.place, facts: [] })
  const name = readName(placeName, 'placeName')
  if (!name.ok) return name
  return ok({ place: newPlace, facts: describePlace({ place: newPlace, name: name.value, door }, now) })
}
