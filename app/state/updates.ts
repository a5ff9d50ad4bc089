/** A new version waits until she takes it; then every tab saves its drafts and reloads, once. */
import { useSyncExternalStore } from 'react'
import type { Workbox } from 'workbox-window'
import { matter, setMatter } from './device.ts'
import { flushAndReload, loadPart } from './leave.ts'
import { signal } from './signal.ts'

export type Updates = { readonly waiting: boolean; readonly offlineReady: boolean }

let updates: Updates = { waiting: false, offlineReady: false }
let workbox: Workbox | undefined
const changed = signal()
const set = (next: Partial<Updates>) => {
  updates = { ...updates, ...next }
  changed.tell()
}

/** Called once, after the first screen is up. */
export const watchForUpdates = async (): Promise<void> => {
  if (!('serviceWorker' in navigator)) return
  // The very first worker takes charge of this page too; that is no update.
  let controlled = navigator.serviceWorker.controller !== null
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (controlled) void flushAndReload()
    controlled = true
  })
  // Not needed for the first screen. Where it cannot be had, the worker of the last time goes on serving.
  const library = await loadPart(() => import('workbox-window')).catch(() => undefined)
  if (!library) return
  workbox = new library.Workbox('./worker.js', { scope: './' })
  workbox.addEventListener('waiting', () => set({ waiting: true }))
  workbox.addEventListener('activated', ({ isUpdate }) => {
    if (isUpdate || matter('toldOffline')) return
    set({ offlineReady: true })
    void setMatter('toldOffline', true)
  })
  try {
    await workbox.register()
  } catch {
    // Private windows of some browsers have no workers: the app works, online.
    return
  }
  lookAgainWhenBack(workbox)
}

const hour = 3_600_000
/** An app on a home screen may stay open for weeks. */
const lookAgainWhenBack = (registered: Workbox) => {
  let looked = Date.now()
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - looked < hour) return
    looked = Date.now()
    // Offline is no news.
    registered.update().catch(() => {})
  })
}

const take = () => workbox?.messageSkipWaiting()
const dismiss = () => set({ offlineReady: false })

export const useUpdate = (): { readonly waiting: boolean; readonly take: () => void } => ({
  waiting: useSyncExternalStore(changed.subscribe, () => updates.waiting),
  take,
})
/** True once in this phone's life: from now on it works without a network. */
export const useOfflineReady = (): { readonly offlineReady: boolean; readonly dismiss: () => void } => ({
  offlineReady: useSyncExternalStore(changed.subscribe, () => updates.offlineReady),
  dismiss,
})

/** `coming`: it is being fetched, or waits to be taken. */
export type LookedForUpdate = 'coming' | 'newest' | 'noNetwork' | 'cannot'

/** By hand, where entries of a newer version say that there is one. */
export const lookForUpdate = async (): Promise<LookedForUpdate> => {
  const registration = 'serviceWorker' in navigator ? await navigator.serviceWorker.getRegistration() : undefined
  if (!registration) return 'cannot'
  try {
    await registration.update()
  } catch {
    return 'noNetwork'
  }
  return registration.installing || registration.waiting ? 'coming' : 'newest'
}
