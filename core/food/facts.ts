/** What is recorded of food: what a food is, the doors it stands behind, bottles, portions, and what became of them. */
import type { BottleUnit, Microlitres, WaterAmount } from '../basis/amounts.ts'
import type { Day, Span } from '../basis/days.ts'
import type { BottleId, FoodId, LotId, PlaceId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { BuyingFact } from './buyingFacts.ts'
import type { Price } from './price.ts'
import type { TroubleFact } from './troubleFacts.ts'

export type * from './buyingFacts.ts'
export type * from './price.ts'
export type * from './troubleFacts.ts'

/** Only a fresh non-viable concentrate is promised a life in the freezer. */
export type FoodKind = 'freshNonViable' | 'live' | 'shelfStable'

/** So much food for so much water. */
export type DoseBand = { readonly low: Microlitres; readonly high: Microlitres; readonly per: WaterAmount }

/** What the maker says is in it. Either is enough for an upper estimate of what a dose carries. */
export type FoodContents = {
  /** Grams of dry matter in a millilitre. */
  readonly dry?: number
  /** Cells in a millilitre, and picograms dry weight of one. */
  readonly cells?: number
  readonly cellPicograms?: number
  /** Shares of the dry matter, 0 to 0.2 and 0 to 0.1. */
  readonly nitrogen?: number
  readonly phosphorus?: number
}

/** A whole snapshot. */
export type FoodDescribed = {
  readonly kind: 'foodDescribed'
  readonly at: Moment
  readonly food: FoodId
  readonly name: string
  readonly sort: FoodKind
  readonly band: DoseBand
  readonly everyNights: number
  readonly fridgeLife: Span
  readonly countsFrom: 'bottling' | 'arrival' | 'opening'
  /** Absent: no freezer life is promised. */
  readonly freezerLife?: Span
  /** Hours between shakes of a bottle in the fridge. Absent: needs none. */
  readonly shakeHours?: number
  /** What stays on a bottle's walls, a share of what was in it, 0 to 0.2. */
  readonly residueShare: number
  readonly contents?: FoodContents
}

export type Door = 'fridge' | 'freezer'
/** A whole snapshot. */
export type PlaceDescribed = {
  readonly kind: 'placeDescribed'
  readonly at: Moment
  readonly place: PlaceId
  readonly name: string
  readonly door: Door
}

/** No longer bought; what is left of it stays on the shelf. Described again, it is back. */
export type FoodRetired = {
  readonly kind: 'foodRetired'
  readonly at: Moment
  readonly food: FoodId
  readonly why?: string
}
/** The door is gone. Described again, it is back. */
export type PlaceRetired = {
  readonly kind: 'placeRetired'
  readonly at: Moment
  readonly place: PlaceId
  readonly why?: string
}

export type BottleRecorded = {
  readonly kind: 'bottleRecorded'
  readonly at: Moment
  readonly bottle: BottleId
  readonly food: FoodId
  /** As bought, the way the label says it. */
  readonly size: { readonly value: number; readonly unit: BottleUnit }
  /** What was in it at that moment. */
  readonly contents: Microlitres
  readonly about: boolean
  readonly bottledOn?: Day
  readonly receivedOn?: Day
  /** Absent: still sealed. */
  readonly openedOn?: Day
  readonly useBy?: Day
  readonly price?: Price
  readonly place: PlaceId
}

export type BottleOpened = {
  readonly kind: 'bottleOpened'
  readonly at: Moment
  readonly bottle: BottleId
  readonly openedOn: Day
}

/** Nothing usable is left; what the book still has is residue. */
export type BottleFinished = { readonly kind: 'bottleFinished'; readonly at: Moment; readonly bottle: BottleId }

export type BottlesShaken = {
  readonly kind: 'bottlesShaken'
  readonly at: Moment
  readonly bottles: readonly BottleId[]
}

/** A tray as cut: rows × columns, of which `filled` wells were filled. */
export type Tray = { readonly rows: number; readonly columns: number; readonly filled: number }
export type Kept = { readonly as: 'trays'; readonly trays: readonly Tray[] } | { readonly as: 'loose' }

type Portions = {
  readonly at: Moment
  readonly lot: LotId
  readonly food: FoodId
  /** The lot's own mark, as written on the bag. */
  readonly mark: string
  readonly portions: number
  readonly each: Microlitres
  readonly frozenOn: Day
  readonly kept: Kept
  readonly place: PlaceId
}

/** One act: liquid leaves the bottle and portions are in the freezer. Never two entries that an export could part. */
export type PortionsFrozen = Portions & {
  readonly kind: 'portionsFrozen'
  readonly bottle: BottleId
  /** What left the bottle: portions, drips and all. */
  readonly taken: Microlitres
  /** Frozen after its last good day in the fridge. */
  readonly late: boolean
}

/** Portions that were there already: no bottle, no history asked. */
export type PortionsOnHand = Portions & {
  readonly kind: 'portionsOnHand'
  /** The freezing day is a guess, taken as the earliest it can be. */
  readonly about: boolean
}

/** All of it now stands behind another door. */
export type BottleMoved = {
  readonly kind: 'bottleMoved'
  readonly at: Moment
  readonly bottle: BottleId
  readonly to: PlaceId
}
export type LotMoved = { readonly kind: 'lotMoved'; readonly at: Moment; readonly lot: LotId; readonly to: PlaceId }
/** Part of a lot became a lot of its own, frozen when the other was. One act: what left the one is in the other. */
export type PortionsMoved = {
  readonly kind: 'portionsMoved'
  readonly at: Moment
  readonly from: LotId
  readonly lot: LotId
  readonly mark: string
  readonly count: number
  readonly kept: Kept
  readonly to: PlaceId
}

/** As she saw them: which wells of a tray are empty, counted along the rows from 0. A whole snapshot of that tray. */
export type WellsSeen = {
  readonly kind: 'wellsSeen'
  readonly at: Moment
  readonly lot: LotId
  /** Which of the lot's trays, from 0. */
  readonly tray: number
  readonly empty: readonly number[]
}
/** The columns after which a tray has been cut through. A whole snapshot of that tray. */
export type TrayCut = {
  readonly kind: 'trayCut'
  readonly at: Moment
  readonly lot: LotId
  readonly tray: number
  readonly after: readonly number[]
}

/** An observation: the figure is reset here, later changes apply on top. Carries the book figure she saw. */
export type PortionsCounted = {
  readonly kind: 'portionsCounted'
  readonly at: Moment
  readonly lot: LotId
  readonly counted: number
  readonly book: number
  readonly why?: string
}
export type LiquidMeasured = {
  readonly kind: 'liquidMeasured'
  readonly at: Moment
  readonly bottle: BottleId
  readonly left: Microlitres
  readonly book: Microlitres
  readonly why?: string
}

/** Dropped or spoilt; thrown away on purpose. */
export type Fate = 'lost' | 'discarded'
export type PortionsGone = {
  readonly kind: 'portionsGone'
  readonly at: Moment
  readonly lot: LotId
  readonly count: number
  readonly fate: Fate
  readonly why?: string
}
export type PortionsGivenAway = {
  readonly kind: 'portionsGivenAway'
  readonly at: Moment
  readonly lot: LotId
  readonly count: number
  /** To whom, if she says. */
  readonly to?: string
}
/** More than the book knew of. */
export type PortionsFound = {
  readonly kind: 'portionsFound'
  readonly at: Moment
  readonly lot: LotId
  readonly count: number
  readonly why?: string
}
export type LiquidGone = {
  readonly kind: 'liquidGone'
  readonly at: Moment
  readonly bottle: BottleId
  readonly amount: Microlitres
  readonly fate: Fate
  readonly why?: string
}

export type FoodFact =
  | FoodDescribed
  | FoodRetired
  | PlaceDescribed
  | PlaceRetired
  | BottleRecorded
  | BottleOpened
  | BottleFinished
  | BottlesShaken
  | BottleMoved
  | PortionsFrozen
  | PortionsOnHand
  | LotMoved
  | PortionsMoved
  | WellsSeen
  | TrayCut
  | PortionsCounted
  | LiquidMeasured
  | PortionsGone
  | PortionsGivenAway
  | PortionsFound
  | LiquidGone
  | TroubleFact
  | BuyingFact
