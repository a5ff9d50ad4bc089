/** Photos of bottles: of their labels, mostly. They stay with a bottle when its entry is put right. */
import type { BottleId } from '../basis/ids.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { byTime, type PhotoNoted } from '../watch/photos.ts'
import type { World } from './world.ts'

/** Each bottle's, in the order they were taken. One walk over the ledger, however many bottles there are. */
export const photosByBottle = ({ photos, history }: World): ReadonlyMap<BottleId, readonly PhotoNoted[]> => {
  const byBottle = new Map<BottleId, PhotoNoted[]>()
  const ofEntries = photos
    .toSorted(byTime)
    .flatMap((photo) => ('entry' in photo.fact.of ? [[photo.fact.of.entry, photo] as const] : []))
  if (ofEntries.length === 0) return byBottle
  const wanted = new Set(ofEntries.map(([entry]) => entry))
  const bottles = new Map<Stamp, BottleId>()
  for (const { id, fact } of history.all)
    if (fact.kind === 'bottleRecorded' && wanted.has(id)) bottles.set(id, fact.bottle)
  for (const [entry, photo] of ofEntries) {
    const bottle = bottles.get(entry)
    if (bottle) byBottle.set(bottle, [...(byBottle.get(bottle) ?? []), photo])
  }
  return byBottle
}

export const photosOfBottle = (world: World, bottle: BottleId): readonly PhotoNoted[] =>
  photosByBottle(world).get(bottle) ?? []
