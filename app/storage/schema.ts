/** What the ledger's database holds. Facts are never migrated, so these steps should hardly ever grow. */
import type { DBSchema } from 'idb'
import type { Held, World } from '../../core/index.ts'
import type { Connection, Step } from './connection.ts'

/** An entry as memory and files have it, with the version of the codec that read it, or found that it cannot. */
export type Stored = { readonly entry: Held; readonly codec: number }
/** A JSON array of about 1,000 entries: the same entries, quicker to read than as many records. */
export type Sealed = { readonly text: string; readonly codec: number }

/** What Tonight showed last, by which build and after which arrival: worth nothing to any other build or after any other. */
export type Glance = { readonly build: string; readonly last: number; readonly world: World }

export interface LedgerStores extends DBSchema {
  /** Key: the order of arrival on this phone, never exported. The stamp is unique by index. */
  entries: { key: number; value: Stored; indexes: { stamp: string } }
  /** Key: the arrival of the last entry inside. */
  sealed: { key: number; value: Sealed }
  /** One at most. Nothing but this is derived. */
  glance: { key: 'tonight'; value: Glance }
}
export type Ledger = Connection<LedgerStores>

export const ledgerName = 'smallhours'
export const ledgerSteps: readonly Step<LedgerStores>[] = [
  (db) => {
    db.createObjectStore('entries', { autoIncrement: true }).createIndex('stamp', 'entry.id', { unique: true })
  },
  (db) => {
    db.createObjectStore('sealed')
  },
  (db) => {
    db.createObjectStore('glance')
  },
]

/** How many entries a sealed text takes, and how many may wait unsealed. */
export const sealSize = 1_000
export const longTail = 1_500
