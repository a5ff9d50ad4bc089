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

/** A whole snapshot: the latest one holds, earlier ones judge the doses of their time. */
export type TankDescribed = {
  readonly kind: 'tankDescribed'
  readonly at: Moment
  readonly tank: TankId
  readonly name: string
  readonly water: TankWater
  readonly zone: Zone
  readonly lightsOut: ClockTime
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

export type TankFact = TankDescribed | TankRetired
