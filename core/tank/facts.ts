/** What is recorded of a tank: its water, its lamp, the pipette beside it. */
import type { Microlitres, WaterAmount } from '../basis/amounts.ts'
import type { TankId } from '../basis/ids.ts'
import type { ClockTime, Moment, Zone } from '../basis/zones.ts'

/** Inside measurements up to the waterline, in centimetres. */
export type InsideMeasures = {
  readonly shape:
    | { readonly form: 'rectangle'; readonly length: number; readonly width: number; readonly waterline: number }
    | { readonly form: 'cylinder'; readonly diameter: number; readonly waterline: number }
  /** Share of the display taken up by rock and sand, 0 to 0.6. */
  readonly solids: number
  /** Running water in sump and refugium. */
  readonly sump?: WaterAmount
}

export type TankWater = {
  /** The number she goes by. */
  readonly stated?: WaterAmount
  readonly about: boolean
  /** A measured fill. */
  readonly measured?: WaterAmount
  readonly inside?: InsideMeasures
  /** Which of the two volumes doses are reckoned on. */
  readonly doseBy: 'stated' | 'true'
}

/**
 * What the lamp's own clock does. `dial`: it ignores clock changes and stands still without power. `ownClock`: it ignores clock
 * changes and keeps time without power. `losesTime`: as that, until a power cut, after which nobody knows. `followsClocks`: it
 * shows what the wall shows.
 */
export type LampClock = 'followsClocks' | 'dial' | 'ownClock' | 'losesTime'

/** A whole snapshot: the latest one holds, earlier ones judge the doses of their time. */
export type TankDescribed = {
  readonly kind: 'tankDescribed'
  readonly at: Moment
  readonly tank: TankId
  readonly name: string
  readonly water: TankWater
  readonly zone: Zone
  /** By the wall, on the day it was set. */
  readonly lightsOut: ClockTime
  /** Absent: it follows the clocks. */
  readonly lamp?: LampClock
  /** The smallest step her pipette or syringe shows. */
  readonly pipetteMark: Microlitres
}

/** Taken down; its past stays. Described again, it is back. */
export type TankRetired = {
  readonly kind: 'tankRetired'
  readonly at: Moment
  readonly tank: TankId
  readonly why?: string
}

/** When the lamp goes out by the wall from now on: its clock was put right, or she looked. */
export type LampSeen = {
  readonly kind: 'lampSeen'
  readonly at: Moment
  readonly tank: TankId
  readonly goesOut: ClockTime
}

/** The power was away. */
export type PowerCut = {
  readonly kind: 'powerCut'
  /** When it was back. */
  readonly at: Moment
  /** Whole, 1 to 20,160. */
  readonly minutes: number
  /** Whose lamps stood without it. */
  readonly tanks: readonly TankId[]
}

export type TankFact = TankDescribed | TankRetired | LampSeen | PowerCut
