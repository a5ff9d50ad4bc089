/** What belongs to this phone alone: never exported, in a database of its own that an import cannot touch. */
import type { DBSchema } from 'idb'
import {
  type Day,
  type DeviceId,
  type LastsShown,
  type Moment,
  ok,
  type Result,
  type Wishes,
} from '../../core/index.ts'
import { type Connection, connect, type Notices, type Step, type StorageRefusal } from './connection.ts'
import { writeStrictly } from './transaction.ts'

export type Look = 'byItself' | 'day' | 'night'
/** What the browser said when asked to keep our data. */
export type Persistence = 'kept' | 'mayBeCleared' | 'cannotTell'
export type DeviceMatters = {
  readonly device: DeviceId
  /** Ids this phone had before a restore. */
  readonly formerly: readonly DeviceId[]
  /** Who wrote the book that was restored here; null once she has said whether it was this phone. */
  readonly restoredFrom: DeviceId | null
  readonly look: Look
  readonly lastBackup: Moment
  readonly persistence: Persistence
  readonly toldOffline: true
  /** Her wish; whether the browser goes along with it is asked anew each time. */
  readonly nudge: boolean
  /** How she wants them; absent: as usual. */
  readonly wishes: KeptWishes
  readonly calendar: CalendarTaken
  readonly lastsShown: LastsKept
}
/** By food: which first night without food she was shown last, and the one before it, which the reasons tell of. */
export type LastsKept = Readonly<Record<string, { readonly now: LastsShown; readonly before?: LastsShown }>>
/** Where she is is asked anew each time. */
export type KeptWishes = Omit<Wishes, 'zone'>
/** What the last calendar file said, so that the next one takes its place. */
export type CalendarTaken = {
  /** The same in every file of this phone. */
  readonly series: string
  readonly sequence: number
  readonly takenAt: Moment
  /** Its events, the earliest first. */
  readonly events: readonly CalendarEvent[]
}
export type CalendarEvent = { readonly key: string; readonly night: Day; readonly at: Moment }
/** A form's fields as one tab last had them. Each tab has its own: two tabs at one form must not undo each other. */
export type Draft = { readonly fields: unknown; readonly savedAt: Moment; readonly tab: string }
/** That a nudge was shown, written before it is: of all tabs and the worker, whoever writes it is the one to show it. */
export type NudgeShown = {
  readonly plannedAt: Moment
  readonly shownAt: Moment
  readonly via: string
}

interface DeviceStores extends DBSchema {
  matters: { key: string; value: DeviceMatters[keyof DeviceMatters] }
  /** Key: the form and the tab. */
  drafts: { key: [form: string, tab: string]; value: Draft }
  /** Key: the tank and the night. */
  nudges: { key: string; value: NudgeShown }
}
export type Device = Connection<DeviceStores>

export const deviceName = 'smallhours-device'
const deviceSteps: readonly Step<DeviceStores>[] = [
  (db) => {
    db.createObjectStore('matters')
    db.createObjectStore('drafts')
  },
  (db) => {
    db.createObjectStore('nudges')
  },
]
export const openDevice = (name: string = deviceName, notices?: Notices): Device => connect(name, deviceSteps, notices)

export const readMatters = (device: Device): Promise<Result<Partial<DeviceMatters>, StorageRefusal>> =>
  device.use(async (db) => {
    const tx = db.transaction('matters')
    const [keys, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()])
    return Object.fromEntries(keys.map((key, i) => [key, values[i]]))
  })

export const keepMatter = <Key extends keyof DeviceMatters>(
  device: Device,
  key: Key,
  value: DeviceMatters[Key],
): Promise<Result<void, StorageRefusal>> =>
  device.use((db) =>
    writeStrictly(db, ['matters'], async (tx) => {
      await tx.objectStore('matters').put(value, key)
    }),
  )

/** This phone's id, minted once however many tabs ask at the same time. */
export const deviceId = async (device: Device, fresh: () => DeviceId): Promise<Result<DeviceId, StorageRefusal>> => {
  const matters = await readMatters(device)
  if (!matters.ok) return matters
  if (matters.value.device !== undefined) return ok(matters.value.device)
  const minted = fresh()
  const kept = await device.use((db) =>
    writeStrictly(db, ['matters'], async (tx) => {
      const store = tx.objectStore('matters')
      if ((await store.getKey('device')) === undefined) await store.add(minted, 'device')
    }),
  )
  return kept.ok ? deviceId(device, fresh) : kept
}
