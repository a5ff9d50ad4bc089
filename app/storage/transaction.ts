/** The one way anything is written. */
import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb'

/**
 * Runs `work` in a strict transaction and returns only when it is on disk. If `work` throws, or any request fails, nothing
 * is written. `work` may await nothing but this transaction's own requests: it commits itself when it is left idle.
 */
export const writeStrictly = async <Stores extends DBSchema, Names extends StoreNames<Stores>[], Value>(
  db: IDBPDatabase<Stores>,
  stores: Names,
  work: (tx: IDBPTransaction<Stores, Names, 'readwrite'>) => Promise<Value>,
): Promise<Value> => {
  const tx = db.transaction(stores, 'readwrite', { durability: 'strict' })
  try {
    // Both at once: when the disk turns out full at commit, Chromium leaves some requests without any answer.
    const [value] = await Promise.all([work(tx), tx.done])
    return value
  } catch (error) {
    try {
      tx.abort()
    } catch {
      // It has ended by itself.
    }
    await tx.done.catch(() => {})
    // A full disk aborts every request with an AbortError; only the transaction knows why.
    throw tx.error ?? error
  }
}
