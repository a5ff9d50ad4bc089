/** Makes of what was watched what watch/state.ts describes. */
import type { TankId } from '../basis/ids.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { KindSeen, LivePoured, SmallLifeCounted, WatchFact } from './facts.ts'

type Growing = {
  poured: { entry: Stamp; fact: LivePoured }[]
  counted: { entry: Stamp; fact: SmallLifeCounted }[]
  seen: { entry: Stamp; fact: KindSeen }[]
}

export const emptyWatch = () => ({ watched: new Map<TankId, Growing>() })

export const applyWatch = ({ watched }: ReturnType<typeof emptyWatch>, entry: Stamp, fact: WatchFact): void => {
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
