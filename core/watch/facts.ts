/** What is recorded of the small life itself: poured in, counted, recognised. */
import type { Day } from '../basis/days.ts'
import type { ParcelId, PhotoId, RunId, TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { Animals } from '../seeding/facts.ts'

export type WaterPlace = 'display' | 'sump' | 'refugium'

/** Live bottles went into a tank. A record of what happened, whatever anybody would have advised. */
export type LivePoured = {
  readonly kind: 'livePoured'
  readonly at: Moment
  readonly tank: TankId
  /** Reckoned when it was recorded, by the tank's wall clock. */
  readonly night: Day
  readonly animals: readonly Animals[]
  /** Bottles by place; parts of one are halves and the like. */
  readonly pours: readonly { readonly into: WaterPlace; readonly bottles: number }[]
  readonly why?: string
}

/** Specks in the light of a torch at night; what sits on a pane by day; a jar of water through a sieve. */
export type Looked =
  | {
      readonly how: 'torch'
      /** Seconds each pane was looked at, and square centimetres of it. */
      readonly seconds: number
      readonly frame: number
      /** Since the lamp went out; below zero before it did. */
      readonly minutesDark?: number
    }
  | { readonly how: 'pane'; readonly frame: number }
  | {
      readonly how: 'jar'
      /** Litres through the sieve; millilitres they were rinsed into; millilitres of that looked at each time. */
      readonly litres: number
      readonly rinsedInto: number
      readonly lookedAt: number
      /** Micrometres. */
      readonly sieve?: number
      /** The share of the animals the sieve is known to keep, above 0 and at most 1. Absent: not known. */
      readonly kept?: number
    }

export type SmallLifeCounted = {
  readonly kind: 'smallLifeCounted'
  readonly at: Moment
  readonly tank: TankId
  readonly night: Day
  readonly looked: Looked
  /** Animals in each pane or millilitre, in the order they were counted. Never averaged. */
  readonly counts: readonly number[]
  /** Which pane, where the jar was filled: counts of one spot are compared. */
  readonly where?: string
  readonly words?: string
}

/** Walked through the key: what it looked like and what that says. Unsure is a fine answer. */
export type KindSeen = {
  readonly kind: 'kindSeen'
  readonly at: Moment
  readonly tank: TankId
  /** The form the key came to; absent where it came to none. */
  readonly form?: string
  /** The marks she saw. */
  readonly marks: readonly string[]
  readonly says: 'harmless' | 'watch' | 'trap' | 'unsure'
  readonly where?: string
  readonly words?: string
}

/** What a photo shows. */
export type PhotoOf =
  | { readonly tank: TankId }
  | { readonly parcel: ParcelId }
  | { readonly run: RunId }
  /** A count, a kind seen, a pour, a bottle: the entry that tells of it. */
  | { readonly entry: Stamp }
/** The entry first, the picture itself beside the ledger: it may be missing, and the entry still says that there was one. */
export type PhotoKept = {
  readonly kind: 'photoKept'
  readonly at: Moment
  readonly photo: PhotoId
  readonly of: PhotoOf
  readonly type: 'image/jpeg' | 'image/png' | 'image/webp'
  readonly bytes: number
  readonly words?: string
}

export type WatchFact = LivePoured | SmallLifeCounted | KindSeen | PhotoKept
