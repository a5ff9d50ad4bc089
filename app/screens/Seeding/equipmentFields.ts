/** What runs on a tank as it is typed: the usual one of each, and more of a sort where she says so. */
import {
  type DeviceSort,
  deviceSorts,
  type EquipmentDescribed,
  nextDeviceKey,
  usualDevices,
  usuallyStops,
  type WaterPlace,
} from '../../../core/index.ts'

export type DeviceFields = {
  readonly key: string
  readonly device: DeviceSort
  readonly name: string
  readonly stops: boolean
}
export type EquipmentFields = {
  readonly sorts: readonly DeviceSort[]
  /** Of a sort she has not got as well: left out and touched again it is as it was. */
  readonly devices: readonly DeviceFields[]
  readonly places: readonly WaterPlace[]
  readonly lit: readonly WaterPlace[]
}

const usual = (device: DeviceSort): DeviceFields => ({
  key: device,
  device,
  name: '',
  stops: usuallyStops(device),
})

export const equipmentFields = (known: EquipmentDescribed | undefined): EquipmentFields => {
  const told = (known?.devices ?? []).map(({ name = '', ...device }) => ({ ...device, name }))
  return {
    sorts: known ? deviceSorts.filter((sort) => told.some(({ device }) => device === sort)) : usualDevices,
    devices: deviceSorts.flatMap((sort) => {
      const its = told.filter(({ device }) => device === sort)
      return its.length > 0 ? its : [usual(sort)]
    }),
    places: known ? known.places.map(({ place }) => place) : ['display', 'sump'],
    lit: known ? known.places.flatMap(({ place, mayBeLit }) => (mayBeLit ? [place] : [])) : ['sump'],
  }
}

export const ofSort = ({ devices }: EquipmentFields, sort: DeviceSort): readonly DeviceFields[] =>
  devices.filter(({ device }) => device === sort)

/** What of it is there, in the order it stops. */
export const devicesOf = ({ sorts, devices }: EquipmentFields): EquipmentDescribed['devices'] =>
  devices.filter(({ device }) => sorts.includes(device))

/** One more of a sort, beside the last of it. `had`: every key this tank ever had. */
export const oneMore = (
  { devices }: EquipmentFields,
  sort: DeviceSort,
  had: readonly string[],
): EquipmentFields['devices'] => {
  const last = devices.findLastIndex(({ device }) => device === sort)
  const key = nextDeviceKey([...had, ...devices.map((each) => each.key)], sort)
  return devices.toSpliced(last + 1, 0, { ...usual(sort), key, stops: devices[last]?.stops ?? usuallyStops(sort) })
}

export const placesOf = ({ places, lit }: EquipmentFields): EquipmentDescribed['places'] =>
  places.map((place) => ({ place, mayBeLit: place !== 'display' && lit.includes(place) }))
