/** Keeps what Tonight showed, so that the next start need not read ten years to show it again. */
import { ok, type Result, type World } from '../../core/index.ts'
import type { StorageRefusal } from './connection.ts'
import type { Glance, Ledger } from './schema.ts'
import { writeStrictly } from './transaction.ts'

/** The world as it was last shown, if nothing has arrived since and the same build made it. */
export const readGlance = (ledger: Ledger, build: string): Promise<Result<World | undefined, StorageRefusal>> =>
  ledger.use(async (db) => {
    const tx = db.transaction(['entries', 'sealed', 'glance'])
    const [glance, inTail, inTexts] = await Promise.all([
      tx.objectStore('glance').get('tonight'),
      tx.objectStore('entries').openKeyCursor(null, 'prev'),
      tx.objectStore('sealed').openKeyCursor(null, 'prev'),
    ])
    const last = Math.max(inTail?.key ?? 0, inTexts?.key ?? 0)
    return glance?.build === build && glance.last === last ? glance.world : undefined
  })

export const keepGlance = async (ledger: Ledger, glance: Glance): Promise<Result<void, StorageRefusal>> => {
  const kept = await ledger.use((db) =>
    writeStrictly(db, ['glance'], async (tx) => {
      await tx.objectStore('glance').put(glance, 'tonight')
    }),
  )
  return kept.ok ? ok(undefined) : kept
}
