/** Half-filled forms on disk. */
import type { IDBPTransaction } from 'idb'
import type { Result } from '../../core/index.ts'
import type { StorageRefusal } from './connection.ts'
import type { Device, DeviceStores, Draft } from './device.ts'
import { writeStrictly } from './transaction.ts'

/** The latest any tab left behind. */
export const readDraft = (device: Device, form: string): Promise<Result<Draft | undefined, StorageRefusal>> =>
  device.use(async (db) =>
    (await db.getAll('drafts', IDBKeyRange.bound([form], [form, []]))).reduce<Draft | undefined>(
      (latest, draft) => (latest === undefined || draft.savedAt > latest.savedAt ? draft : latest),
      undefined,
    ),
  )

/** `from` is the draft this one began as. */
export const keepDraft = (
  device: Device,
  form: string,
  draft: Draft,
  from: Draft | undefined,
): Promise<Result<void, StorageRefusal>> =>
  device.use((db) =>
    writeStrictly(db, ['drafts'], async (tx) => {
      await tx.objectStore('drafts').put(draft, [form, draft.tab])
      if (from !== undefined && from.tab !== draft.tab) await letGo(tx, form, from)
    }),
  )

/** Saved or given up: this tab's draft, and the one it began as, are gone. */
export const dropDraft = (
  device: Device,
  form: string,
  tab: string,
  from: Draft | undefined,
): Promise<Result<void, StorageRefusal>> =>
  device.use((db) =>
    writeStrictly(db, ['drafts'], async (tx) => {
      await tx.objectStore('drafts').delete([form, tab])
      if (from !== undefined) await letGo(tx, form, from)
    }),
  )

/** Unless the tab that wrote it has gone on with it. */
const letGo = async (
  tx: IDBPTransaction<DeviceStores, ('drafts' | 'matters')[], 'readwrite'>,
  form: string,
  from: Draft,
) => {
  const store = tx.objectStore('drafts')
  const there = await store.get([form, from.tab])
  if (there?.savedAt === from.savedAt) await store.delete([form, from.tab])
}
