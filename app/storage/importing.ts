/** Takes in another phone's entries, or a backup's: all of them or none. */
import { codecVersion, type Held, ok, type Result, refuse, type Union, union } from '../../core/index.ts'
import type { StorageRefusal } from './connection.ts'
import { arrived, bothStores, nothingSeen, recordsAfter } from './ledger.ts'
import { loadCodec, toSealed, toStored } from './records.ts'
import { type Ledger, sealSize } from './schema.ts'
import { writeStrictly } from './transaction.ts'

export type Imported = {
  readonly added: number
  readonly already: number
  readonly clashes: Union<Held>['clashes']
  /** Nothing was here before: this looks like a restore, and the device should take a new id. */
  readonly wasEmpty: boolean
}
export type Progress = { readonly done: number; readonly of: number }
export type ImportStopped = { readonly why: 'importStopped' }

/** `entries` have been through today's codec. Until the promise is kept nothing of them is on disk for good. */
export const importEntries = async (
  ledger: Ledger,
  entries: readonly Held[],
  tell: (progress: Progress) => void = () => {},
  signal?: AbortSignal,
): Promise<Result<Imported, StorageRefusal | ImportStopped>> => {
  await loadCodec()
  const done = await ledger.use((db) =>
    writeStrictly(db, bothStores, async (tx) => {
      const records = await recordsAfter(tx, 0)
      const ours = arrived(records, nothingSeen).entries
      const { added, already, clashes } = union(ours, entries)
      const [tail, texts] = [tx.objectStore('entries'), tx.objectStore('sealed')]
      // Whole texts go in as texts. The rest, one entry at least, are records under their own arrivals: a key given by
      // hand also moves the counter on, so that no later entry arrives before these.
      for (let from = 0; from < added.length; from += sealSize) {
        if (signal?.aborted) {
          tx.abort()
          return 'stopped'
        }
        const batch = added.slice(from, from + sealSize).map(toStored)
        const before = records.last + from
        if (from + sealSize < added.length) await texts.add(toSealed(batch, codecVersion), before + batch.length)
        else await Promise.all(batch.map((stored, i) => tail.add(stored, before + i + 1)))
        tell({ done: from + batch.length, of: added.length })
      }
      return { added: added.length, already, clashes, wasEmpty: ours.length === 0 }
    }).catch((error: unknown) => {
      if (signal?.aborted && error instanceof DOMException && error.name === 'AbortError') return 'stopped' as const
      throw error
    }),
  )
  if (!done.ok) return done
  return done.value === 'stopped' ? refuse({ why: 'importStopped' }) : ok(done.value)
}
