/** Photos of a bottle: its label, mostly. They stay with it when its entry is put right. */
import type { BottleId } from '../basis/ids.ts'
import type { PhotoNoted } from '../watch/photos.ts'
import type { World } from './world.ts'

/** In the order they were taken. */
export const photosOfBottle = ({ photos, history }: World, bottle: BottleId): readonly PhotoNoted[] => {
  if (photos.length === 0) return []
  const entries = new Set(
    history.all.flatMap(({ id, fact }) => (fact.kind === 'bottleRecorded' && fact.bottle === bottle ? [id] : [])),
  )
  return photos
    .filter(({ fact: { of } }) => 'entry' in of && entries.has(of.entry))
    .toSorted((a, b) => a.fact.at - b.fact.at)
}
