/** Each bottle's account: one walk over the ledger, walked again when something is written. */
import { useMemo } from 'react'
import { type Account, type BottleId, bottleAccounts } from '../../../core/index.ts'
import { useWorld } from '../../state/store.ts'

export const useAccounts = (): ReadonlyMap<BottleId, Account> => {
  const world = useWorld()
  return useMemo(() => bottleAccounts(world), [world])
}
