/** Several devices of one sort on a tank: what tells them apart, and the key of one more. */
import type { TankId } from '../basis/ids.ts'
import type { DeviceSort, EquipmentDescribed } from './facts.ts'
import type { SeedingState } from './state.ts'

type Devices = EquipmentDescribed['devices']

/** Its own name, or its number where there are several of its sort; neither where it is the only one. */
export type Which = { readonly name?: string; readonly nth?: number }

/** More than these of one sort no tank has. Our own judgement. */
export const mostOfOneSort = 9

/** What tells a device from the others of its sort; undefined for a key that is not among them. */
export const whichOf = (devices: Devices, key: string): Which | undefined => {
  const device = devices.find((each) => each.key === key)
  if (!device) return undefined
  if (device.name) return { name: device.name }
  const alike = devices.filter((each) => each.device === device.device)
  return alike.length > 1 ? { nth: numberOf(key) } : {}
}

/** The same of a tank's devices by the description that named the key last: what is gone keeps its name in the diary. */
export const whichOn =
  ({ equipment }: SeedingState, tank: TankId) =>
  (key: string): Which | undefined => {
    const last = equipment.get(tank)?.findLast(({ devices }) => devices.some((device) => device.key === key))
    return last && whichOf(last.devices, key)
  }

/**
 * The key for one more of a sort: the sort itself for the first, then a number no other ever had on this tank, so that a
 * step of a night long past never speaks of a device bought since.
 * @param known every key this tank has or had
 */
export const nextDeviceKey = (known: Iterable<string>, sort: DeviceSort): string => {
  const numbers = [...known].flatMap((key) => (key.replace(/-\d+$/, '') === sort ? [numberOf(key)] : []))
  return numbers.length === 0 ? sort : `${sort}-${Math.max(...numbers) + 1}`
}

/** The first of a sort has none in its key. */
const numberOf = (key: string): number => Number(/\d+$/.exec(key)?.[0] ?? 1)
