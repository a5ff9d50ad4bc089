/** What this browser can and may do for a reminder, asked of it itself each time: no table of browsers' names is true for long. */
import { badges } from '../reminders/badge.ts'
import { eveningSync } from '../storage/messages.ts'
import { lastShown, type ShownLast } from '../storage/nudges.ts'
import { device } from './device.ts'

export type Probes = {
  readonly notifications: 'unsupported' | NotificationPermission
  /** Opened from the home screen or as an app of its own. */
  readonly installed: boolean
  /** A browser that shows nothing until the app is on the home screen. */
  readonly homeScreenFirst: boolean
  /** The browser wakes the app now and then: not at all, not yet, or as asked. */
  readonly wakes: 'unsupported' | 'refused' | 'notAsked' | 'asked'
  readonly badge: boolean
  readonly screenLock: boolean
  readonly lastShown: ShownLast | undefined
}

export const probe = async (): Promise<Probes> => {
  const notifications =
    'Notification' in window && 'serviceWorker' in navigator ? Notification.permission : 'unsupported'
  const installed = globalThis.matchMedia?.('(display-mode: standalone)').matches === true || onHomeScreen() === true
  const [wakes, shown] = await Promise.all([probeWakes(), lastShown(device)])
  return {
    notifications,
    installed,
    homeScreenFirst: onHomeScreen() === false && notifications === 'unsupported',
    wakes,
    badge: badges(),
    screenLock: 'wakeLock' in navigator,
    lastShown: shown.ok ? shown.value : undefined,
  }
}

/** Undefined where the browser has no word for it. */
const onHomeScreen = (): boolean | undefined =>
  'standalone' in navigator && typeof navigator.standalone === 'boolean' ? navigator.standalone : undefined

type PeriodicSync = {
  readonly register: (tag: string, options: { readonly minInterval: number }) => Promise<void>
  readonly unregister: (tag: string) => Promise<void>
  readonly getTags: () => Promise<readonly string[]>
}
type WithSync = ServiceWorkerRegistration & { readonly periodicSync: PeriodicSync }
const hasSync = (registration: ServiceWorkerRegistration | undefined): registration is WithSync =>
  registration !== undefined && 'periodicSync' in registration

const registered = async (): Promise<ServiceWorkerRegistration | undefined> =>
  'serviceWorker' in navigator ? navigator.serviceWorker.getRegistration() : undefined

const probeWakes = async (): Promise<Probes['wakes']> => {
  const registration = await registered()
  if (!hasSync(registration)) return 'unsupported'
  if (!(await mayWake())) return 'refused'
  const tags = await registration.periodicSync.getTags().catch((): readonly string[] => [])
  return tags.includes(eveningSync) ? 'asked' : 'notAsked'
}
/** Granted to an installed app without a question, and to nobody else. */
const mayWake = async (): Promise<boolean> => {
  try {
    // Not in the platform's list of names, which only knows what every browser has.
    const name = 'periodic-background-sync' as PermissionName
    return (await navigator.permissions.query({ name })).state === 'granted'
  } catch {
    return false
  }
}

/** No browser does it more often. */
const halfDay = 43_200_000

/** Refused is no fault: it is one way fewer. */
export const askForWakes = async (wanted: boolean): Promise<void> => {
  const registration = await registered()
  if (!hasSync(registration)) return
  const { periodicSync } = registration
  await (wanted
    ? periodicSync.register(eveningSync, { minInterval: halfDay })
    : periodicSync.unregister(eveningSync)
  ).catch(() => {})
}
