/** Food as the ledger tells it: what there is, where, and until when it is good. */
import type { Microlitres } from '../basis/amounts.ts'
import { addDays, addMonths, addSpan, type Day, earlier } from '../basis/days.ts'
import type { BottleId, FoodId, LotId, PlaceId, PurchaseId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { inForce, retiredAt } from '../ledger/snapshot.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type {
  BottleRecorded,
  DaysAway,
  Door,
  FoodDescribed,
  FoodOrdered,
  FoodRetired,
  FoodSmelled,
  OrderingDescribed,
  PlaceDescribed,
  PlaceRetired,
  PortionsFrozen,
  PortionsOnHand,
  PurchaseRecorded,
} from './facts.ts'

/** A count or measurement by hand, with the gap she saw and the gap as the book now has it. */
export type Observation = {
  readonly entry: Stamp
  readonly at: Moment
  readonly found: number
  readonly bookThen: number
  readonly bookNow: number
}

/** Out of the order food is taken in until she says otherwise. Never thrown away by anybody but her. */
export type Aside = {
  readonly entry: Stamp
  readonly at: Moment
  readonly because: 'said' | 'smell' | 'warm' | 'notKnown' | 'cracked'
  readonly why?: string
}

export type Bottle = {
  readonly id: BottleId
  readonly entry: Stamp
  readonly recorded: BottleRecorded
  /** Where it stands now. */
  readonly place: PlaceId
  readonly openedOn: Day | undefined
  /** Microlitres by the book; below zero when more left it than it held. */
  readonly left: number
  /** What was last seen in it by eye; residue is a share of this. */
  readonly lastSeen: number
  readonly finished: boolean
  readonly shakenAt: Moment | undefined
  /** Microlitres that became portions, that reached tanks, that were spilt or thrown away. */
  readonly frozen: number
  readonly fed: number
  readonly gone: number
  readonly aside: Aside | undefined
  /** It froze by mistake, whole, and is kept frozen: a block, not portions. */
  readonly frozeOn: Day | undefined
  /** Such a block is liquid again. */
  readonly thawedOn: Day | undefined
  /** Every sniff, the first included. */
  readonly smelled: readonly FoodSmelled[]
  readonly observations: readonly Observation[]
}

/** As she last saw a tray: empty wells, and the columns after which it is cut; or that it went to another lot. */
export type TraySeen = {
  readonly empty?: readonly number[]
  readonly cuts?: readonly number[]
  readonly movedAway?: true
}

export type Freezing = { readonly frozenOn: Day; readonly late: boolean }
/** Portions that came into a bag from another freezing. */
export type Joined = Freezing & { readonly lot: LotId; readonly count: number }

export type Lot = {
  readonly id: LotId
  readonly entry: Stamp
  /** How it came about. A part that was moved away is described as what it was a part of, with its own mark and number. */
  readonly made: PortionsFrozen | PortionsOnHand
  /** What it was a part of, if it was moved away from there. */
  readonly partOf: LotId | undefined
  /** Where it stands now. */
  readonly place: PlaceId
  /** By the place of the tray in the lot. */
  readonly traysSeen: ReadonlyMap<number, TraySeen>
  /** Portions by the book; below zero when more were taken than it knew of. */
  readonly left: number
  readonly fed: number
  readonly gone: number
  readonly aside: Aside | undefined
  /** Thawed a little and hard again: good, and softer than the rest. */
  readonly softOn: Day | undefined
  /** Found liquid and cold: never frozen again. */
  readonly meltedOn: Day | undefined
  readonly smelled: readonly FoodSmelled[]
  /** What was put into its bag from others. */
  readonly joined: readonly Joined[]
  /** The lot whose bag it went into. */
  readonly joinedInto: LotId | undefined
  readonly observations: readonly Observation[]
}

/** What a food has done so far. */
export type Fed = { readonly doses: number; readonly amount: number }

export type FoodState = {
  readonly foods: ReadonlyMap<FoodId, readonly FoodDescribed[]>
  readonly foodsRetired: ReadonlyMap<FoodId, readonly FoodRetired[]>
  readonly places: ReadonlyMap<PlaceId, readonly PlaceDescribed[]>
  readonly placesRetired: ReadonlyMap<PlaceId, readonly PlaceRetired[]>
  readonly bottles: ReadonlyMap<BottleId, Bottle>
  readonly lots: ReadonlyMap<LotId, Lot>
  readonly fed: ReadonlyMap<FoodId, Fed>
  readonly purchases: ReadonlyMap<PurchaseId, readonly PurchaseRecorded[]>
  readonly orders: ReadonlyMap<FoodId, readonly FoodOrdered[]>
  readonly ordering: readonly OrderingDescribed[]
  readonly daysAway: readonly DaysAway[]
}

export const foodAt = ({ foods }: FoodState, food: FoodId, now: Moment): FoodDescribed | undefined =>
  inForce(foods.get(food) ?? [], now)
export const placeAt = ({ places }: FoodState, place: PlaceId, now: Moment): PlaceDescribed | undefined =>
  inForce(places.get(place) ?? [], now)

/** Foods still bought, in the order they were first described. */
export const foodsAt = (state: FoodState, now: Moment): readonly FoodDescribed[] =>
  [...state.foods.keys()].flatMap((food) => (foodRetired(state, food, now) ? [] : (foodAt(state, food, now) ?? [])))
export const foodRetired = (state: FoodState, food: FoodId, now: Moment): boolean => {
  const described = foodAt(state, food, now)
  return described !== undefined && retiredAt(state.foodsRetired.get(food), described, now)
}
/** Doors that are there, in the order they were first described. */
export const placesAt = (state: FoodState, now: Moment): readonly PlaceDescribed[] =>
  [...state.places.keys()].flatMap((place) => {
    const described = placeAt(state, place, now)
    return described && !retiredAt(state.placesRetired.get(place), described, now) ? [described] : []
  })

/** More than any household has: beyond it the ledger itself would not read the figure back. */
export const mostPortions = 1_000_000

/** Balances are carried raw and shown as never below zero. */
export const portionsLeft = (lot: Lot): number => Math.max(0, lot.left)
export const liquidLeft = (bottle: Bottle): Microlitres => Math.max(0, bottle.left) as Microlitres

/** What stays on the walls and will never be poured. */
export const residueOf = (bottle: Bottle, food: FoodDescribed): Microlitres =>
  Math.round(bottle.lastSeen * food.residueShare) as Microlitres
/** A bottle that froze, and has not been let thaw. */
export const isBlock = ({ frozeOn, thawedOn }: Bottle): boolean => frozeOn !== undefined && thawedOn === undefined

/** Behind which door a thing is judged: a bottle that froze goes by the freezer's days. */
export const keptIn = (thing: Bottle | Lot): Door =>
  'made' in thing || thing.frozeOn !== undefined ? 'freezer' : 'fridge'

/** What can still be poured out of it, set aside or not: of a block of ice, nothing. */
export const pourableLiquid = (bottle: Bottle, food: FoodDescribed): Microlitres =>
  (bottle.finished || isBlock(bottle) ? 0 : Math.max(0, bottle.left - residueOf(bottle, food))) as Microlitres
/** What can still be dosed or frozen: of what is set aside, nothing. */
export const usableLiquid = (bottle: Bottle, food: FoodDescribed): Microlitres =>
  bottle.aside ? (0 as Microlitres) : pourableLiquid(bottle, food)

export type Opened = Pick<BottleRecorded, 'bottledOn' | 'receivedOn' | 'useBy'> & {
  readonly openedOn?: Day | undefined
}

/**
 * The last day a bottle is good in the fridge, that day included. The food's life runs from the day its maker counts from,
 * or the next one known; an earlier printed date wins, and on a bottle still sealed the printed date alone rules.
 * Undefined when no date is known. Calendar months, clamped: common practice, no source.
 */
export const lastGoodInFridge = (bottle: Opened, food: FoodDescribed): Day | undefined => {
  if (!bottle.openedOn && bottle.useBy) return bottle.useBy
  const { bottledOn, receivedOn, openedOn } = bottle
  const from =
    food.countsFrom === 'bottling'
      ? (bottledOn ?? receivedOn ?? openedOn)
      : food.countsFrom === 'arrival'
        ? (receivedOn ?? openedOn)
        : openedOn
  const counted = from && addSpan(from, food.fridgeLife)
  return counted && bottle.useBy ? earlier(counted, bottle.useBy) : (counted ?? bottle.useBy)
}

/** Months a food keeps when it went into the freezer after its last good day in the fridge. Our own judgement. */
const lateFreezerMonths = 12

/** The last day frozen portions are good. Undefined where the food is promised no life in the freezer. */
export const lastGoodFrozen = ({ frozenOn, late }: Freezing, food: FoodDescribed): Day | undefined => {
  if (!food.freezerLife) return undefined
  const whole = addSpan(frozenOn, food.freezerLife)
  return late ? earlier(whole, addMonths(frozenOn, lateFreezerMonths)) : whole
}

/** Nights that what has thawed is good for beyond the day it was found. Common practice, no source. */
const nightsThawed = 1

/** Thawed food is good through the night after; what had less time than that keeps to it. */
const onceThawed = (lastGood: Day | undefined, thawedOn: Day | undefined): Day | undefined => {
  if (thawedOn === undefined) return lastGood
  const soon = addDays(thawedOn, nightsThawed)
  return lastGood === undefined ? soon : earlier(lastGood, soon)
}

/** In the fridge; as a block, in the freezer from the day it froze. */
export const bottleLastGood = (bottle: Bottle, food: FoodDescribed): Day | undefined => {
  const inFridge = lastGoodInFridge({ ...bottle.recorded, openedOn: bottle.openedOn }, food)
  if (bottle.frozeOn === undefined) return inFridge
  const late = inFridge !== undefined && bottle.frozeOn > inFridge
  return onceThawed(lastGoodFrozen({ frozenOn: bottle.frozeOn, late }, food), bottle.thawedOn)
}

/** A bag with two freezings in it keeps as the one that goes first. */
export const lotLastGood = ({ made, joined, meltedOn }: Lot, food: FoodDescribed): Day | undefined => {
  let lastGood = lastGoodFrozen({ frozenOn: made.frozenOn, late: made.kind === 'portionsFrozen' && made.late }, food)
  for (const part of joined) {
    const its = lastGoodFrozen(part, food)
    lastGood = lastGood && its ? earlier(lastGood, its) : (lastGood ?? its)
  }
  return onceThawed(lastGood, meltedOn)
}
