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

/**
 * A display seen from above, in centimetres, each above 0. An entry of a newer version may have a form that is none of these:
 * it is read, and whoever reckons with it says that nothing follows.
 */
export type TankShape =
  | { readonly form: 'rectangle'; readonly length: number; readonly width: number }
  | { readonly form: 'cylinder'; readonly diameter: number }
  /** Six sides of one length. */
  | { readonly form: 'hexagon'; readonly side: number }
  /**
   * A rectangle whose front bends outwards as part of a circle: `width` is front to back at the ends, `bow` how much further
   * out the middle of the front stands.
   */
  | { readonly form: 'bowFront'; readonly length: number; readonly width: number; readonly bow: number }

/** How a display was measured. Centimetres; `glass` and `base` are thicknesses in millimetres. */
export type MeasuresTaken =
  /** Glass to glass, and from the bottom glass up to the waterline. */
  | { readonly taken: 'inside'; readonly waterline: number }
  /** Over all: the whole height, and how far below the rim the water stands, 0 or more. */
  | {
      readonly taken: 'outside'
      readonly height: number
      readonly glass: number
      readonly base: number
      readonly down: number
    }

/** What in the display is no water. */
export type Solids =
  /** Her own estimate, 0 to 0.6 of the display. */
  | { readonly by: 'share'; readonly share: number }
  /** Sand by the depth of its bed in centimetres, rock by its dry weight in kilograms. */
  | { readonly by: 'sandAndRock'; readonly sandDepth?: number; readonly rockKg?: number }

/** Measurements in full; they outrank `inside`, which older versions know. */
export type ExactWater = {
  readonly shape: TankShape
  readonly measures: MeasuresTaken
  readonly solids: Solids
  /** Running water, not up to the brim. */
  readonly sump?: WaterAmount
  readonly refugium?: WaterAmount
}

export type TankWater = {
  /** The number she goes by. */
  readonly stated?: WaterAmount
  readonly about: boolean
  /** A measured fill. */
  readonly measured?: WaterAmount
  readonly inside?: InsideMeasures
  readonly exact?: ExactWater
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
