/** How much water a tank held, and from when: by this its old doses are judged. */
import { litres, type WaterAmount } from '../basis/amounts.ts'
import type { TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import type { TankWater } from './facts.ts'
import { doseWater, type TankState, trueWater } from './state.ts'

export type VolumeHeld = { readonly from: Moment; readonly water: TankWater }

/** In order, only where the volume changed, and none from the future. A tank never described has none. */
export const volumesHeld = ({ tanks }: TankState, tank: TankId, now: Moment): readonly VolumeHeld[] => {
  const held: VolumeHeld[] = []
  for (const { at, water } of tanks.get(tank) ?? []) {
    const last = held.at(-1)
    if (at <= now + clockGrace && !(last && sameVolume(last.water, water))) held.push({ from: at, water })
  }
  return held
}

const sameVolume = (one: TankWater, other: TankWater): boolean =>
  one.about === other.about &&
  sameWater(one.stated, other.stated) &&
  sameWater(trueWater(one), trueWater(other)) &&
  sameWater(doseWater(one), doseWater(other))

/** To a thousandth: the same water said in another unit, or measured again to the millimetre, is no change. */
const sameWater = (one: WaterAmount | undefined, other: WaterAmount | undefined): boolean =>
  one && other ? Math.abs(litres(one) - litres(other)) <= litres(one) / 1000 : one === other
