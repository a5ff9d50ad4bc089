/** What the browser keeps for the app, read behind its back. */
import type { Page } from '@playwright/test'

declare global {
  interface Window {
    /** The databases a page has opened, where a test watches that. */
    opened?: string[]
  }
}

/** The real book and this phone's own matters, whole, as a text that differs if anything in them does. */
export const theBook = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const answered = <Value>(asked: IDBRequest<Value>): Promise<Value> =>
      new Promise((resolve, reject) => {
        asked.onsuccess = () => resolve(asked.result)
        asked.onerror = () => reject(asked.error)
      })
    const spelt = (_key: string, value: unknown) =>
      value instanceof Map || value instanceof Set ? { spelt: [...value] } : value
    const all: unknown[] = []
    const watched = window.opened?.length
    for (const name of ['smallhours', 'smallhours-device']) {
      const db = await answered(indexedDB.open(name))
      for (const store of db.objectStoreNames) {
        const tx = db.transaction(store)
        all.push([
          name,
          store,
          await answered(tx.objectStore(store).getAllKeys()),
          await answered(tx.objectStore(store).getAll()),
        ])
      }
      db.close()
    }
    // This was the test, not the page.
    if (window.opened && watched !== undefined) window.opened.length = watched
    return JSON.stringify(all, spelt)
  })

/** Everything kept outside the databases, of the tab and of the origin. */
export const keptOutside = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [localStorage, sessionStorage].flatMap((kept) => Object.entries(kept).map((pair) => pair.join(' '))),
  )
