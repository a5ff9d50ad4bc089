/** Makes of tank facts what tank/state.ts describes. */
import type { TankId } from '../basis/ids.ts'
import { gather } from '../ledger/gather.ts'
import type { TankFact } from './facts.ts'

export const emptyTanks = () => ({ tanks: new Map<TankId, TankFact[]>() })

export const applyTank = ({ tanks }: ReturnType<typeof emptyTanks>, fact: TankFact) => gather(tanks, fact.tank, fact)
