/** Half-filled forms on disk. */
import type { Result } from '../../core/index.ts'
import type { StorageRefusal } from './connection.ts'
import type { Device, Draft } from './device.ts'
import { writeStrictly } from './transaction.ts'

/** What each tab left behind. */
export const readDrafts = (device: Device, form: string): Promise<Result<readonly Draft[], StorageRefusal>> =>
  device.use((db) => db.getAll('drafts', IDBKeyRange.bound([form], [form, []])))

/** The page may be on its way out: what is committed here and now is written, what waits for an answer is undone. */
export const keepDraft = (device: Device, form: string, draft: Draft): Promise<Result<void, StorageRefusal>> =>
  device.use((db) =>
    writeStrictly(db, ['drafts'], async (tx) => {
      const put = tx.objectStore('drafts').put(draft, [form, draft.tab])
      tx.commit()
      await put
    }),
  )

/** Saved or given up. */
export const dropDraft = (device: Device, form: string, tab: string): Promise<Result<void, StorageRefusal>> =>
  device.use((db) =>
    writeStrictly(db, ['drafts'], async (tx) => {
      await tx.objectStore('drafts').delete([form, tab])
    }),
  )

/** A draft that another has begun as is let go, unless the tab that wrote it has gone on with it. */
export const letGo = (device: Device, form: string, draft: Draft): Promise<Result<void, StorageRefusal>> =>
  device.use((db) =>
    writeStrictly(db, ['drafts'], async (tx) => {
      const store = tx.objectStore('drafts')
      const there = await store.get([form, draft.tab])
      // An earlier one is its own too: the last words it left outran what is here.
      if (there !== undefined && there.savedAt <= draft.savedAt) await store.delete([form, draft.tab])
    }),
  )
