/** Notes when the last strict transaction was complete: on disk, though memory and screen may not know of it yet. */
export const watchTheDisk = (): (() => number) => {
  let durable = 0
  const begin = IDBDatabase.prototype.transaction
  IDBDatabase.prototype.transaction = function (...asked) {
    const tx = begin.apply(this, asked)
    if (tx.durability === 'strict') {
      tx.addEventListener('complete', () => {
        durable = performance.now()
      })
    }
    return tx
  }
  return () => durable
}
