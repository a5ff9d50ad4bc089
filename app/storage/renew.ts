/**
 * What an older codec has read is read again once and kept so; else every start would read it again. The same entries under
 * the same arrivals, a text at a time: a tap waits for one of them at most. What a newer codec wrote is left to it.
 */
import { codecVersion, type Result } from '../../core/index.ts'
import type { StorageRefusal } from './connection.ts'
import { bothStores } from './ledger.ts'
import { fromSealed, fromStored, loadCodec, toSealed, toStored } from './records.ts'
import type { Ledger } from './schema.ts'
import { writeStrictly } from './transaction.ts'

const isOld = (record: { readonly codec: number } | undefined): boolean =>
  record !== undefined && record.codec < codecVersion

/** True while there may be more. */
export const renew = (ledger: Ledger): Promise<Result<boolean, StorageRefusal>> =>
  ledger.use(async (db) => {
    // Texts are renewed from the last to the first, and records arrive in order: the first of each tells.
    const look = db.transaction(bothStores)
    const [text, record] = await Promise.all([
      look.objectStore('sealed').openCursor(),
      look.objectStore('entries').openCursor(),
    ])
    if (!isOld(text?.value) && !isOld(record?.value)) return false
    await loadCodec()
    return writeStrictly(db, bothStores, async (tx) => {
      for (let at = await tx.objectStore('sealed').openCursor(null, 'prev'); at; at = await at.continue()) {
        if (!isOld(at.value)) continue
        await at.update(toSealed(fromSealed(at.value).map(toStored), codecVersion))
        return true
      }
      const entries = tx.objectStore('entries')
      const [tail, keys] = await Promise.all([entries.getAll(), entries.getAllKeys()])
      const old = keys.flatMap((key, i) => {
        const stored = tail[i]
        return stored && isOld(stored) ? [entries.put(toStored(fromStored(stored)), key)] : []
      })
      await Promise.all(old)
      return false
    })
  })
