/** What runs on Long Gallery, for whoever tells of a night live bottles are poured. */
import type { DeviceSort, EquipmentDescribed } from '../../core/index.ts'
import { longGallery, moveIn } from './givenLab.ts'

/** Everything stops but the wave pumps. */
export const equipmentOf = (
  devices: readonly DeviceSort[],
  places: EquipmentDescribed['places'] = [
    { place: 'display', mayBeLit: false },
    { place: 'refugium', mayBeLit: true },
  ],
): EquipmentDescribed => ({
  kind: 'equipmentDescribed',
  at: moveIn,
  tank: longGallery,
  devices: devices.map((device) => ({ key: device, device, stops: device !== 'wave' })),
  places,
})
