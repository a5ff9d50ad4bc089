/** Makes of tank facts what tank/state.ts describes. */
import type { TankId } from '../basis/ids.ts'
import { gather } from '../ledger/gather.ts'
import type { TankDescribed, TankFact, TankRetired } from './facts.ts'

export const emptyTanks = () => ({
  tanks: new Map<TankId, TankDescribed[]>(),
  tanksRetired: new Map<TankId, TankRetired[]>(),
})

export const applyTank = ({ tanks, tanksRetired }: ReturnType<typeof emptyTanks>, fact: TankFact) =>
  fact.kind === 'tankDescribed' ? gather(tanks, fact.tank, fact) : gather(tanksRetired, fact.tank, fact)
