/** Makes of what was watched what watch/state.ts describes. */
import type { TankId } from '../basis/ids.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { KindSeen, LivePoured, PhotoKept, SmallLifeCounted, WatchFact } from './facts.ts'

type Growing = {
  poured: { entry: Stamp; fact: LivePoured }[]
  counted: { entry: Stamp; fact: SmallLifeCounted }[]
  seen: { entry: Stamp; fact: KindSeen }[]
}

export const emptyWatch = () => ({
  watched: new Map<TankId, Growing>(),
  photos: [] as { entry: Stamp; fact: PhotoKept }[],
})

export const applyWatch = ({ watched, photos }: ReturnType<typeof emptyWatch>, entry: Stamp, fact: WatchFact): void => {
  if (fact.kind === 'photoKept') {
    photos.push({ entry, fact })
    return
  }
  let tank = watched.get(fact.tank)
  if (!tank) {
    tank = { poured: [], counted: [], seen: [] }
    watched.set(fact.tank, tank)
  }
  switch (fact.kind) {
    case 'livePoured':
      tank.poured.push({ entry, fact })
      return
    case 'smallLifeCounted':
      tank.counted.push({ entry, fact })
      return
    case 'kindSeen':
      tank.seen.push({ entry, fact })
      return
    default:
      fact satisfies never
  }
}
