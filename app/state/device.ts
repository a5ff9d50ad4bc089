/** This phone's own matters in memory, and one connection to where they are kept. */
import { useSyncExternalStore } from 'react'
import type { DeviceId, Result } from '../../core/index.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { type DeviceMatters, deviceId, keepMatter, openDevice, readMatters } from '../storage/device.ts'
import { household } from './household.ts'
import { newDeviceId } from './ids.ts'
import { signal } from './signal.ts'
import { onMessage, tellTabs } from './tabs.ts'

export const device = openDevice(household.device)

let matters: Partial<DeviceMatters> = {}
const changed = signal()

export const readDevice = async (): Promise<void> => {
  const read = await readMatters(device)
  // A phone that cannot say how it likes to look still works.
  if (!read.ok) return
  matters = read.value
  changed.tell()
  tellRead()
}
let tellRead = () => {}
/** Never, on a phone that cannot say. Until then a matter that is missing may only not have been read yet. */
export const deviceRead = new Promise<void>((resolve) => {
  tellRead = resolve
})
onMessage((message) => {
  if (message.type === 'deviceChanged') void readDevice()
})

/** Undefined: never said. */
export const useMatter = <Key extends keyof DeviceMatters>(key: Key): DeviceMatters[Key] | undefined =>
  useSyncExternalStore(changed.subscribe, () => matters[key])
/** Told after each change of a matter. */
export const watchMatters = changed.subscribe
export const matter = <Key extends keyof DeviceMatters>(key: Key): DeviceMatters[Key] | undefined => matters[key]

export const setMatter = async <Key extends keyof DeviceMatters>(
  key: Key,
  value: DeviceMatters[Key],
): Promise<Result<void, StorageRefusal>> => {
  const kept = await keepMatter(device, key, value)
  if (kept.ok) {
    matters = { ...matters, [key]: value }
    changed.tell()
    tellTabs({ type: 'deviceChanged' })
  }
  return kept
}

export const thisDevice = async (): Promise<Result<DeviceId, StorageRefusal>> => {
  if (matters.device !== undefined) return { ok: true, value: matters.device }
  const id = await deviceId(device, newDeviceId)
  if (id.ok) matters = { ...matters, device: id.value }
  return id
}

/** After a restore: two phones that share an id could mint the same stamp for two entries. */
export const renewDevice = (): Promise<Result<void, StorageRefusal>> => setMatter('device', newDeviceId())
