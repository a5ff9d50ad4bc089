/** Reloading without losing anything: drafts first, and never round and round. */
import { flushDrafts } from './drafts.ts'
import { settled } from './store.ts'

let leaving = false

/** Once per page, however many reasons there are. */
export const flushAndReload = async (): Promise<void> => {
  if (leaving) return
  leaving = true
  // What is being recorded is waited for, and the form it came from is cleared then. A disk that does not answer must not
  // hold up the new version for ever.
  await Promise.race([
    Promise.all([flushDrafts(), settled().then(flushDrafts)]),
    new Promise((resolve) => setTimeout(resolve, 2_000)),
  ]).catch(() => {})
  window.location.reload()
}

/**
 * Loads a part of the app that is not in the first chunk. If it is gone because another tab took an update, the page moves
 * to the new version, and the promise stays open meanwhile: the screen goes on waiting instead of failing.
 */
export const loadPart = async <Part>(load: () => Promise<Part>): Promise<Part> => {
  try {
    return await load()
  } catch (error) {
    if (moveOn()) return new Promise<Part>(() => {})
    throw error
  }
}
/** Parts that are loaded elsewhere, the codec by the storage for one. */
window.addEventListener('vite:preloadError', () => void moveOn())

const reloadedAt = 'reloadedForPart'
/** Another failure this soon after a reload is not the update's doing, and a second reload would not mend it. */
const tooSoon = 30_000

/** False where reloading would not help: just done, or offline without a worker, where the browser would show its own error. */
const moveOn = (): boolean => {
  if (leaving) return true
  const soon = Math.abs(Date.now() - Number(sessionStorage.getItem(reloadedAt) ?? 0)) < tooSoon
  const served = navigator.onLine || ('serviceWorker' in navigator && navigator.serviceWorker.controller !== null)
  if (soon || !served) return false
  sessionStorage.setItem(reloadedAt, String(Date.now()))
  void flushAndReload()
  return true
}
