/** A database of one store and nothing else: the least that being on disk can cost. */
export type BareDisk = {
  /** Kept when a strict transaction is complete. */
  readonly add: (record: unknown) => Promise<void>
  readonly close: () => void
}

export const openBareDisk = async (): Promise<BareDisk> => {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open('bare', 1)
    opening.onupgradeneeded = () => opening.result.createObjectStore('records', { autoIncrement: true })
    opening.onsuccess = () => resolve(opening.result)
    opening.onerror = () => reject(opening.error)
  })
  return {
    add: (record) =>
      new Promise((resolve, reject) => {
        const tx = db.transaction('records', 'readwrite', { durability: 'strict' })
        tx.oncomplete = () => resolve()
        tx.onabort = () => reject(tx.error)
        tx.objectStore('records').add(record)
        tx.commit()
      }),
    close: () => db.close(),
  }
}
