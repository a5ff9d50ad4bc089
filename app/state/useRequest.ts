/** A form's request: asked once at a time, its refusal kept for the screen, its draft dropped only once it is on disk. */
import { useRef, useState } from 'react'
import type { Entry, Fact } from '../../core/index.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { type Ask, request } from './store.ts'

export type Requesting<Refusal> = {
  readonly busy: boolean
  readonly refusal: Refusal | StorageRefusal | undefined
  /** Answers what was written, or undefined if it was refused. */
  readonly send: (ask: Ask<Refusal>) => Promise<readonly Entry<Fact>[] | undefined>
  /** She has changed something: the old refusal no longer applies. */
  readonly reset: () => void
}

export const useRequest = <Refusal>(): Requesting<Refusal> => {
  const [busy, setBusy] = useState(false)
  const [refusal, setRefusal] = useState<Refusal | StorageRefusal>()
  // State arrives a render later; two touches within one frame must still be one request.
  const asking = useRef(false)
  return {
    busy,
    refusal,
    reset: () => setRefusal(undefined),
    send: async (ask) => {
      if (asking.current) return undefined
      asking.current = true
      setBusy(true)
      try {
        const done = await request(ask)
        setRefusal(done.ok ? undefined : done.refusal)
        return done.ok ? done.value : undefined
      } catch (error) {
        // A fault of ours. She must not take silence for success, and whoever watches the console must see it.
        setRefusal({ why: 'storageFailed', message: String(error) })
        reportError(error)
        return undefined
      } finally {
        asking.current = false
        setBusy(false)
      }
    },
  }
}

const storageWhys: Record<StorageRefusal['why'], true> = {
  closedForUpdate: true,
  storageFull: true,
  storageFailed: true,
}
/** The phone's refusal, not the trade's: it belongs to no field. */
export const fromStorage = <Refusal extends { readonly why: string }>(
  refusal: Refusal | StorageRefusal,
): refusal is StorageRefusal => refusal.why in storageWhys
