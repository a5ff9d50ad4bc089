/** What is recorded when food is in doubt: thawed, warmed, smelt at, set aside, two bags made one. */
import type { Day } from '../basis/days.ts'
import type { BottleId, LotId, PlaceId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'

/** A bottle, or what is left of one freezing. */
export type FoodThing = { readonly bottle: BottleId } | { readonly lot: LotId }

/** Still hard with frost; liquid and cold as a fridge; warm for over two hours; or she cannot tell. */
export type FoundAs = 'icy' | 'cold' | 'warm' | 'notKnown'

/** A freezer was off or open. One act for its door, and each bag as it was found. */
export type FreezerThawed = {
  readonly kind: 'freezerThawed'
  readonly at: Moment
  readonly place: PlaceId
  /** The day it was found: what is liquid and cold is good through the night after it. */
  readonly on: Day
  readonly lots: readonly { readonly lot: LotId; readonly found: FoundAs }[]
  /** How long it was off, as far as she knows. */
  readonly minutesOff?: number
}

/** A fridge was too warm, or so cold that bottles froze. */
export type FridgeTroubled = {
  readonly kind: 'fridgeTroubled'
  readonly at: Moment
  readonly place: PlaceId
  readonly on: Day
  readonly bottles: readonly {
    readonly bottle: BottleId
    /**
     * As cold as ever; warm too long, and set aside until it is smelt at; frozen and whole, and kept frozen; frozen and
     * cracked, and set aside.
     */
    readonly found: 'fine' | 'warm' | 'frozen' | 'cracked'
  }[]
  readonly minutesOff?: number
}
/** A bottle that froze by mistake is liquid again. */
export type BottleThawed = {
  readonly kind: 'bottleThawed'
  readonly at: Moment
  readonly bottle: BottleId
  readonly on: Day
}

/** Smelt at and looked at, against its own first sniff. Unsure and off set it aside; good takes it back. */
export type FoodSmelled = {
  readonly kind: 'foodSmelled'
  readonly at: Moment
  readonly thing: FoodThing
  readonly found: 'first' | 'good' | 'unsure' | 'off'
  /** How it smelt and looked, in her words. */
  readonly words?: string
}
export type FoodSetAside = {
  readonly kind: 'foodSetAside'
  readonly at: Moment
  readonly thing: FoodThing
  readonly why?: string
}
export type FoodTakenBack = {
  readonly kind: 'foodTakenBack'
  readonly at: Moment
  readonly thing: FoodThing
  readonly why?: string
}

/** All of one lot went into another's bag, which keeps from now on as the one that goes first. */
export type LotsJoined = {
  readonly kind: 'lotsJoined'
  readonly at: Moment
  readonly from: LotId
  readonly into: LotId
  /** What the book had of it. */
  readonly count: number
}

export type TroubleFact =
  | FreezerThawed
  | FridgeTroubled
  | BottleThawed
  | FoodSmelled
  | FoodSetAside
  | FoodTakenBack
  | LotsJoined
