/** Tanks as the ledger tells them, how much water they hold, and which night a moment belongs to. */
import type { WaterAmount } from '../basis/amounts.ts'
import { addDays, type Day } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import { type ClockTime, clockMinutes, type Moment, momentAt, wallClock, type Zone } from '../basis/zones.ts'
import { inForce, retiredAt } from '../ledger/snapshot.ts'
import type { LampSeen, PowerCut, TankDescribed, TankRetired, TankWater } from './facts.ts'
import { exactLitres, measuresOf } from './volume.ts'

export type TankState = {
  /** Every description of each tank, in order. */
  readonly tanks: ReadonlyMap<TankId, readonly TankDescribed[]>
  readonly tanksRetired: ReadonlyMap<TankId, readonly TankRetired[]>
  /** What was seen of each tank's lamp, in order. */
  readonly lampsSeen: ReadonlyMap<TankId, readonly LampSeen[]>
  readonly powerCuts: readonly PowerCut[]
}

export const tankAt = ({ tanks }: TankState, tank: TankId, now: Moment): TankDescribed | undefined =>
  inForce(tanks.get(tank) ?? [], now)

/** The tank if it is still kept: a retired one has a name and a past, and nothing is due for it. */
export const tankKept = (state: TankState, tank: TankId, now: Moment): TankDescribed | undefined => {
  const described = tankAt(state, tank, now)
  return described && !retiredAt(state.tanksRetired.get(tank), described, now) ? described : undefined
}

/** Every tank that is kept, as it is described at a moment, in the order they were first described. */
export const tanksAt = (state: TankState, now: Moment): readonly TankDescribed[] =>
  [...state.tanks.keys()].flatMap((tank) => tankKept(state, tank, now) ?? [])

/** Those that were kept once. */
export const retiredTanksAt = (state: TankState, now: Moment): readonly TankDescribed[] =>
  [...state.tanks.keys()].flatMap((tank) => (tankKept(state, tank, now) ? [] : (tankAt(state, tank, now) ?? [])))

/**
 * The true volume: a measured fill; else litres by the measurements, less rock and sand, plus the running water of sump and
 * refugium (volume.ts). Undefined where no water is left by them: then it is not known.
 */
export const trueWater = (water: TankWater): WaterAmount | undefined => {
  if (water.measured) return water.measured
  const exact = measuresOf(water)
  const value = exact && exactLitres(exact)
  return value === undefined || value <= 0 ? undefined : { value, unit: 'L' }
}

/** The volume doses are reckoned on: the one she goes by, unless she chose the true one. */
export const doseWater = (water: TankWater): WaterAmount | undefined =>
  water.doseBy === 'true' ? (trueWater(water) ?? water.stated) : (water.stated ?? trueWater(water))

type Nights = { readonly zone: Zone; readonly lightsOut: ClockTime }
const halfDay = 720
/** Lamps that go out before six belong to the evening before; later, to a tank whose day is turned round. */
const smallHours = 360

/**
 * The night a moment belongs to, as the date of its evening. The cut lies opposite lights-out on the dial, so that with
 * lights-out at 21:00 one night runs from 09:00 to 08:59. By the wall clock: subtracting hours names the wrong night when
 * the clocks change.
 */
export const nightOf = (at: Moment, { zone, lightsOut }: Nights): Day => {
  const wall = wallClock(at, zone)
  const out = clockMinutes(lightsOut)
  const afterCut = wall.minutes >= (out + halfDay) % 1440
  const turnedRound = out >= smallHours && out < halfDay
  const evening = turnedRound ? (afterCut ? 1 : 0) : afterCut ? 0 : -1
  return addDays(wall.day, evening)
}

/** When the lamp is meant to go out in a night; when it does, tank/lamp.ts says. */
export const lightsOutOf = (night: Day, { zone, lightsOut }: Nights): Moment => {
  const out = clockMinutes(lightsOut)
  return momentAt(out < smallHours ? addDays(night, 1) : night, out, zone)
}
