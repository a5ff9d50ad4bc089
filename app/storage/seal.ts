/** Turns the oldest entries into texts, which read several times as fast. The same facts under the same arrivals. */
import { ok, type Result } from '../../core/index.ts'
import type { StorageRefusal } from './connection.ts'
import { bothStores } from './ledger.ts'
import { toSealed } from './records.ts'
import { type Ledger, longTail, sealSize } from './schema.ts'
import { writeStrictly } from './transaction.ts'

/** How many were sealed. Safe from any tab at any time: whoever comes second finds a short tail. */
export const seal = async (ledger: Ledger): Promise<Result<number, StorageRefusal>> => {
  let total = 0
  for (;;) {
    const sealed = await sealOldest(ledger)
    if (!sealed.ok) return sealed
    if (sealed.value === 0) return ok(total)
    total += sealed.value
  }
}

const sealOldest = (ledger: Ledger): Promise<Result<number, StorageRefusal>> =>
  ledger.use(async (db) => {
    // Looked at first without the right to write, so that the usual answer, no, costs no flush.
    if ((await db.count('entries')) <= longTail) return 0
    return writeStrictly(db, bothStores, async (tx) => {
      const entries = tx.objectStore('entries')
      const [count, oldest, keys] = await Promise.all([
        entries.count(),
        entries.getAll(null, sealSize),
        entries.getAllKeys(null, sealSize),
      ])
      const codec = oldest[0]?.codec
      if (count <= longTail || codec === undefined) return 0
      // A text has one codec: it takes the entries that share the first one's.
      const change = oldest.findIndex((stored) => stored.codec !== codec)
      const taken = change === -1 ? oldest : oldest.slice(0, change)
      const last = keys[taken.length - 1]
      if (last === undefined) return 0
      await Promise.all([
        tx.objectStore('sealed').add(toSealed(taken, codec), last),
        entries.delete(IDBKeyRange.upperBound(last)),
      ])
      return taken.length
    })
  })
