/**
 * A connection that answers for itself: what goes wrong with the disk comes back as data, so that no tap is lost to an
 * unhandled error. It steps aside for a newer app, and opens itself anew when the browser has dropped it.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { ok, type Result, refuse } from '../../core/index.ts'

export type StorageRefusal =
  /** A newer app has opened the database, here or in another tab. Only reloading helps. */
  | { readonly why: 'closedForUpdate' }
  | { readonly why: 'storageFull' }
  | { readonly why: 'storageFailed'; readonly message: string }

export type Connection<Stores extends DBSchema> = {
  readonly use: <Value>(work: (db: IDBPDatabase<Stores>) => Promise<Value>) => Promise<Result<Value, StorageRefusal>>
  readonly close: () => void
  /** Closed for good: what is asked of it afterwards is refused, and nothing opens it anew. */
  readonly end: () => void
}
/** Append only; the number of steps is the version. Synchronous: an upgrade that waits for anything else commits early. */
export type Step<Stores extends DBSchema> = (db: IDBPDatabase<Stores>) => void
export type Notices = {
  /** An older tab holds the database open and has not made way. */
  readonly blocked?: () => void
  /** This tab has made way. */
  readonly closedForUpdate?: () => void
}

/** Nothing is opened before the first use. */
export const connect = <Stores extends DBSchema>(
  name: string,
  steps: readonly Step<Stores>[],
  notices: Notices = {},
): Connection<Stores> => {
  let opening: Promise<IDBPDatabase<Stores>> | undefined
  let superseded = false
  const makeWay = () => {
    superseded = true
    notices.closedForUpdate?.()
  }
  const opened = () => {
    opening ??= openDB<Stores>(name, steps.length, {
      upgrade: (db, from) => {
        for (const step of steps.slice(from)) step(db)
      },
      blocked: () => notices.blocked?.(),
      blocking: (_ours, _theirs, event) => {
        // The event comes from the connection itself, which the promise above may not have handed over yet.
        if (event.target instanceof IDBDatabase) event.target.close()
        makeWay()
      },
      terminated: () => {
        opening = undefined
      },
    })
    return opening
  }
  const attempt = async <Value>(
    work: (db: IDBPDatabase<Stores>) => Promise<Value>,
    again: boolean,
  ): Promise<Result<Value, StorageRefusal>> => {
    if (superseded) return refuse({ why: 'closedForUpdate' })
    let db: IDBPDatabase<Stores> | undefined
    try {
      db = await opened()
      return ok(await work(db))
    } catch (error) {
      if (!(error instanceof DOMException)) throw error
      if (!superseded && error.name === 'VersionError') makeWay()
      if (superseded) return refuse({ why: 'closedForUpdate' })
      // A failed opening is not kept, and a connection dropped without a word is opened anew: some phones do that to
      // apps in the background. Only such a connection refuses to begin a transaction, so nothing is written twice.
      if (db === undefined || error.name === 'InvalidStateError') opening = undefined
      if (db !== undefined && error.name === 'InvalidStateError' && again) return attempt(work, false)
      return refuse(storageRefusal(error))
    }
  }
  const close = () => {
    opening?.then(
      (db) => db.close(),
      () => {},
    )
    opening = undefined
  }
  return {
    use: (work) => attempt(work, true),
    close,
    end: () => {
      superseded = true
      close()
    },
  }
}

const storageRefusal = (error: DOMException): StorageRefusal =>
  error.name === 'QuotaExceededError'
    ? { why: 'storageFull' }
    : { why: 'storageFailed', message: `${error.name}: ${error.message}` }
