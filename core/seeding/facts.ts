/** What is recorded of live bottles and of the night they are poured: equipment, arrival, the plan, and each thing done. */
import type { Microlitres } from '../basis/amounts.ts'
import type { Day } from '../basis/days.ts'
import type { ParcelId, RunId, TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { WaterPlace } from '../watch/facts.ts'

/** Every kind of device, in the order they stop. */
export const deviceSorts = [
  'topOff',
  'dosingPump',
  'reactor',
  'feeder',
  'controller',
  'sock',
  'skimmer',
  'uv',
  'ozone',
  'return',
  'wave',
  'sumpHeater',
] as const
export type DeviceSort = (typeof deviceSorts)[number]

/** A whole snapshot: what runs on a tank, which of it stops for a pour, and where live bottles may go. */
export type EquipmentDescribed = {
  readonly kind: 'equipmentDescribed'
  readonly at: Moment
  readonly tank: TankId
  readonly devices: readonly {
    /** The same for as long as the device is there. */
    readonly key: string
    readonly device: DeviceSort
    readonly name?: string
    readonly stops: boolean
  }[]
  readonly places: readonly {
    readonly place: WaterPlace
    /** Its own lamp may burn at night: only the display must be dark. */
    readonly mayBeLit: boolean
  }[]
}

/** A whole snapshot. Where copper or a medicine is in the water a live pour is refused as a plan, never as a record. */
export type TankTreated = {
  readonly kind: 'tankTreated'
  readonly at: Moment
  readonly tank: TankId
  readonly with: 'medicine' | 'copper' | 'nothing'
  readonly what?: string
}
/** A whole snapshot: are there fish that hunt pods. */
export type PodHuntersNoted = {
  readonly kind: 'podHuntersNoted'
  readonly at: Moment
  readonly tank: TankId
  readonly there: boolean
  readonly what?: string
}

export type Animals = 'copepods' | 'rotifers' | 'others'
/** A whole snapshot of one parcel: corrected, it is written again. */
export type LiveBottlesCame = {
  readonly kind: 'liveBottlesCame'
  readonly at: Moment
  readonly parcel: ParcelId
  /** When it was at the door. */
  readonly came: Moment
  readonly bottles: readonly {
    readonly animals: Animals
    readonly count: number
    /** As its label says. */
    readonly holds: Microlitres
  }[]
  /** Hours in which damage may be claimed. */
  readonly claimHours?: number
  readonly looked: 'lively' | 'stillCold' | 'notSure' | 'dead'
  readonly words?: string
}
export type LiveBottlesUncapped = {
  readonly kind: 'liveBottlesUncapped'
  readonly at: Moment
  readonly parcel: ParcelId
}

/** A whole snapshot of one run. Its steps are those of the tank's equipment on that day, with their clock times. */
export type SeedingPlanned = {
  readonly kind: 'seedingPlanned'
  readonly at: Moment
  readonly run: RunId
  readonly tank: TankId
  readonly night: Day
  readonly parcel?: ParcelId
  readonly animals: readonly Animals[]
  readonly pours: readonly { readonly into: WaterPlace; readonly bottles: number }[]
  /** What one bottle holds. */
  readonly holds: Microlitres
  readonly waterOut: 'before' | 'after' | 'half'
  /** Of each bottle; absent: they are not rinsed. */
  readonly rinse?: { readonly each: Microlitres; readonly of: 'newSaltWater' | 'tankWater' }
  /** Parts per thousand: of the tank, and of the water in the bottles. What is not known is left out, for it is not none. */
  readonly tankSalt?: number
  readonly bottleSalt?: number
  /** In the order they are done. */
  readonly steps: readonly { readonly step: string; readonly at: Moment }[]
  /** When the pumps are off, and the morning hour. */
  readonly off: Moment
  readonly morning: Moment
  /** Planned against the advice, and why. */
  readonly anyway?: string
}
/** Ticked. Taken back by crossing it out. */
export type SeedingStepDone = {
  readonly kind: 'seedingStepDone'
  readonly at: Moment
  readonly run: RunId
  readonly step: string
}
export type SeedingWaterTaken = {
  readonly kind: 'seedingWaterTaken'
  readonly at: Moment
  readonly run: RunId
  readonly amount: Microlitres
  /** Out for good; borrowed to dilute or rinse; poured back. */
  readonly way: 'out' | 'borrowed' | 'putBack'
}
export type SeedingPoured = {
  readonly kind: 'seedingPoured'
  readonly at: Moment
  readonly run: RunId
  readonly into: WaterPlace
  readonly bottles: number
  /** What really was in them. */
  readonly amount: Microlitres
  /** New salt water they were rinsed with and that went in too. */
  readonly rinse: Microlitres
}
export type SeedingStopped = {
  readonly kind: 'seedingStopped'
  readonly at: Moment
  readonly run: RunId
  readonly because: 'fishBreathingHard' | 'calledOff'
  readonly why?: string
}
/** To herself, opened on a day to come. */
export type LetterWritten = {
  readonly kind: 'letterWritten'
  readonly at: Moment
  readonly tank: TankId
  readonly text: string
  readonly opens: Day
}

export type SeedingFact =
  | EquipmentDescribed
  | TankTreated
  | PodHuntersNoted
  | LiveBottlesCame
  | LiveBottlesUncapped
  | SeedingPlanned
  | SeedingStepDone
  | SeedingWaterTaken
  | SeedingPoured
  | SeedingStopped
  | LetterWritten
