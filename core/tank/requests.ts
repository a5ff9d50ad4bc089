/** Describing a tank. */
import { litres, type Microlitres, usGallons, type WaterAmount, type WaterUnit, waterRatio } from '../basis/amounts.ts'
import type { TankId } from '../basis/ids.ts'
import { type NumberRefusal, readNumber } from '../basis/numbers.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import { type ClockTime, isClockTime, isZone, type Moment } from '../basis/zones.ts'
import type { LampClock, TankDescribed, TankWater } from './facts.ts'
import { doseWater, trueWater } from './state.ts'

/** Above this a volume was probably typed in cm or mL: bigger than a van. Schools have such tanks, so it is only asked. */
export const vastLitres = 10_000
/** Twice the largest aquarium there is, in any unit; far below what the ledger reads back. Our own judgement. */
const mostWater = 100_000_000
/** Thirty metres, in centimetres. */
export const mostCentimetres = 3_000

export type WaterRefusal =
  | NumberRefusal
  | { readonly why: 'notPositive'; readonly typed: string }
  /** Never guessed: both readings are shown. */
  | { readonly why: 'unitUnknown'; readonly value: number }
  | { readonly why: 'vast'; readonly litres: number }
  /** Not asked about: it can only be a slip. */
  | { readonly why: 'beyondAnyTank' }

/**
 * Reads a volume of water as typed.
 * @param sure she was asked about a vast one and means it
 */
export const readWater = (
  typed: string,
  unit: WaterUnit | undefined,
  sure = false,
): Result<WaterAmount, WaterRefusal> => {
  const number = readNumber(typed)
  if (!number.ok) return number
  if (number.value <= 0) return refuse({ why: 'notPositive', typed })
  if (number.value > mostWater) return refuse({ why: 'beyondAnyTank' })
  if (!unit) return refuse({ why: 'unitUnknown', value: number.value })
  const water = { value: number.value, unit }
  if (litres(water) > vastLitres && !sure) return refuse({ why: 'vast', litres: litres(water) })
  return ok(water)
}

/** The same water in all three units, for "about 106 US gal". */
export const waterReadings = (
  water: WaterAmount,
): { readonly L: number; readonly usGal: number; readonly impGal: number } => ({
  L: litres(water),
  usGal: usGallons(water),
  impGal: waterRatio(water, { value: 1, unit: 'impGal' }),
})

export type TankAsked = {
  readonly tank: TankId
  readonly name: string
  readonly water: TankWater
  readonly zone: string
  readonly lightsOut: string
  readonly lamp?: LampClock
  readonly pipetteMark: Microlitres
}
export type TankRefusal =
  | { readonly why: 'noWater' }
  /** Rock and sand or measurements that leave no water. */
  | { readonly why: 'dryTank' }
  | { readonly why: 'zoneUnknown'; readonly zone: string }
  | { readonly why: 'lightsOutMissing' }
  | { readonly why: 'markNotPositive' }

/** A whole description. Other tanks and this tank's own past are untouched. */
export const describeTank = (asked: TankAsked, now: Moment): Result<readonly [TankDescribed], TankRefusal> => {
  const water = doseWater(asked.water)
  if (!water) return refuse({ why: 'noWater' })
  const { measured, inside, exact } = asked.water
  const real = trueWater(asked.water)
  if (!(litres(water) > 0) || (real ? !(litres(real) > 0) : measured || inside || exact))
    return refuse({ why: 'dryTank' })
  if (!isZone(asked.zone)) return refuse({ why: 'zoneUnknown', zone: asked.zone })
  if (!isClockTime(asked.lightsOut)) return refuse({ why: 'lightsOutMissing' })
  if (asked.pipetteMark <= 0) return refuse({ why: 'markNotPositive' })
  const lightsOut: ClockTime = asked.lightsOut
  return ok([{ kind: 'tankDescribed', at: now, ...asked, zone: asked.zone, lightsOut }])
}
