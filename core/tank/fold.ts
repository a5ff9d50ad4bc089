/** Makes of tank facts what tank/state.ts describes. */
import type { TankId } from '../basis/ids.ts'
import { gather } from '../ledger/gather.ts'
import type { LampSeen, PowerCut, TankDescribed, TankFact, TankRetired } from './facts.ts'

export const emptyTanks = () => ({
  tanks: new Map<TankId, TankDescribed[]>(),
  tanksRetired: new Map<TankId, TankRetired[]>(),
  lampsSeen: new Map<TankId, LampSeen[]>(),
  powerCuts: [] as PowerCut[],
})

export const applyTank = (
  { tanks, tanksRetired, lampsSeen, powerCuts }: ReturnType<typeof emptyTanks>,
  fact: TankFact,
): void => {
  switch (fact.kind) {
    case 'tankDescribed':
      gather(tanks, fact.tank, fact)
      break
    case 'tankRetired':
      gather(tanksRetired, fact.tank, fact)
      break
    case 'lampSeen':
      gather(lampsSeen, fact.tank, fact)
      break
    case 'powerCut':
      powerCuts.push(fact)
  }
}
