/**
 * Makes of food and dose facts what food/state.ts describes. Bottles and lots are known before any change is applied, since
 * a merged phone's clock may put the change first; a change dated before something was first *seen* is already in the
 * figure she saw, and does not count again.
 */
import type { BottleId, FoodId, LotId, PlaceId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { DoseGiven, DoseGivenOffPlan, NightsCounted } from '../dosing/facts.ts'
import { gather } from '../ledger/gather.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type {
  FoodDescribed,
  FoodFact,
  FoodRetired,
  PlaceDescribed,
  PlaceRetired,
  PortionsMoved,
  WellsSeen,
} from './facts.ts'
import type { Bottle, Fed, Lot, Observation, TraySeen } from './state.ts'
import { traysNow } from './trays.ts'

type Growing<Thing> = {
  -readonly [Key in keyof Thing]: Key extends 'observations'
    ? Observation[]
    : Key extends 'traysSeen'
      ? Map<number, TraySeen>
      : Thing[Key]
}

export const emptyFood = () => ({
  foods: new Map<FoodId, FoodDescribed[]>(),
  foodsRetired: new Map<FoodId, FoodRetired[]>(),
  places: new Map<PlaceId, PlaceDescribed[]>(),
  placesRetired: new Map<PlaceId, PlaceRetired[]>(),
  bottles: new Map<BottleId, Growing<Bottle>>(),
  lots: new Map<LotId, Growing<Lot>>(),
  fed: new Map<FoodId, Fed>(),
  /** Entries that name a bottle or lot the ledger does not have. */
  strangers: [] as { entry: Stamp; thing: BottleId | LotId }[],
})
type Folding = ReturnType<typeof emptyFood>

/** First pass: what exists. */
export const introduceFood = (state: Folding, id: Stamp, fact: FoodFact) => {
  switch (fact.kind) {
    case 'foodDescribed':
      return gather(state.foods, fact.food, fact)
    case 'placeDescribed':
      return gather(state.places, fact.place, fact)
    case 'bottleRecorded':
      state.bottles.set(fact.bottle, {
        id: fact.bottle,
        entry: id,
        recorded: fact,
        place: fact.place,
        openedOn: fact.openedOn,
        left: fact.contents,
        lastSeen: fact.contents,
        finished: false,
        shakenAt: undefined,
        frozen: 0,
        fed: 0,
        gone: 0,
        observations: [],
      })
      return
    case 'portionsFrozen':
    case 'portionsOnHand':
      state.lots.set(fact.lot, newLot(id, fact))
      return
    case 'foodRetired':
      return gather(state.foodsRetired, fact.food, fact)
    case 'placeRetired':
      return gather(state.placesRetired, fact.place, fact)
    case 'portionsMoved': {
      const parent = state.lots.get(fact.from)
      // A second lot under one name would swallow the first.
      if (parent && !state.lots.has(fact.lot)) state.lots.set(fact.lot, newLot(id, partOf(parent, fact), fact.from))
      return
    }
    case 'bottleOpened':
    case 'bottleFinished':
    case 'bottlesShaken':
    case 'bottleMoved':
    case 'lotMoved':
    case 'wellsSeen':
    case 'trayCut':
    case 'portionsCounted':
    case 'liquidMeasured':
    case 'portionsGone':
    case 'portionsGivenAway':
    case 'portionsFound':
    case 'liquidGone':
      return
    default:
      fact satisfies never
  }
}

const newLot = (entry: Stamp, made: Lot['made'], partOf?: LotId): Growing<Lot> => ({
  id: made.lot,
  entry,
  made,
  partOf,
  place: made.place,
  traysSeen: new Map(),
  left: made.portions,
  fed: 0,
  gone: 0,
  observations: [],
})
/** What it was a part of, and when that went into the freezer, it keeps. */
const partOf = ({ made }: Lot, { lot, mark, count, kept, to, at }: PortionsMoved): Lot['made'] => ({
  ...made,
  at,
  lot,
  mark,
  portions: count,
  kept,
  place: to,
})

const bottleOf = (state: Folding, entry: Stamp, id: BottleId): Growing<Bottle> | undefined => {
  const bottle = state.bottles.get(id)
  if (!bottle) state.strangers.push({ entry, thing: id })
  return bottle
}
const lotOf = (state: Folding, entry: Stamp, id: LotId): Growing<Lot> | undefined => {
  const lot = state.lots.get(id)
  if (!lot) state.strangers.push({ entry, thing: id })
  return lot
}
const seenAfter = (bottle: Growing<Bottle>, at: Moment): boolean => at < bottle.recorded.at
/** A part moved away was never looked over: what a slow clock dates before its move came out of it all the same. */
const countedAfter = ({ made, partOf }: Growing<Lot>, at: Moment): boolean =>
  made.kind === 'portionsOnHand' && partOf === undefined && at < made.at

const pour = (bottle: Growing<Bottle>, at: Moment, amount: number, as: 'frozen' | 'fed' | 'gone') => {
  if (!seenAfter(bottle, at)) bottle.left -= amount
  bottle[as] += amount
}
const take = (lot: Growing<Lot>, at: Moment, count: number, as: 'fed' | 'gone') => {
  if (!countedAfter(lot, at)) lot.left -= count
  lot[as] += count
}

/** Whole trays go as they are: each is the first that holds as many. Anything else comes out of the wells like a dose. */
const moveAway = (lot: Growing<Lot>, { count, kept }: PortionsMoved) => {
  const left = lot.left - count
  for (const { rows, columns, filled } of kept.as === 'trays' ? kept.trays : []) {
    const tray = traysNow(lot)?.trays.find(
      (each) => each.rows === rows && each.columns === columns && each.holds === filled,
    )
    if (!tray) continue
    lot.traysSeen.set(tray.tray, { ...lot.traysSeen.get(tray.tray), movedAway: true })
    lot.left -= filled
  }
  lot.left = left
}

/** Whoever touches a well sees the trays as they are drawn: those drawn empty are empty, and not filled again by a touch. */
const seeWells = (lot: Growing<Lot>, { tray: touched, empty }: WellsSeen) => {
  for (const { tray, holds, filled } of traysNow(lot)?.trays ?? [])
    if (holds === 0 && tray !== touched)
      lot.traysSeen.set(tray, {
        ...lot.traysSeen.get(tray),
        empty: Array.from({ length: filled }, (_, well) => well),
      })
  lot.traysSeen.set(touched, { ...lot.traysSeen.get(touched), empty })
}

/** A count outranks the wells touched before it, where they do not agree. */
const recount = (lot: Growing<Lot>, found: number) => {
  lot.left = found
  // Most trays are never touched, and drawing each of them for every count would cost half a fold.
  if (lot.traysSeen.size === 0 || (traysNow(lot)?.beyondBook ?? 0) === 0) return
  for (const [tray, { empty: _, ...seen }] of lot.traysSeen) lot.traysSeen.set(tray, seen)
}

/** Second pass, in the order things happened: what changed. */
export const changeFood = (state: Folding, id: Stamp, fact: FoodFact) => {
  switch (fact.kind) {
    case 'portionsFrozen': {
      const bottle = bottleOf(state, id, fact.bottle)
      if (!bottle) return
      pour(bottle, fact.at, fact.taken, 'frozen')
      // Nobody freezes out of a sealed bottle: what is left of it is open, and no longer keeps until its printed date.
      bottle.openedOn ??= fact.frozenOn
      return
    }
    case 'bottleOpened': {
      const bottle = bottleOf(state, id, fact.bottle)
      if (bottle) bottle.openedOn = fact.openedOn
      return
    }
    case 'bottleFinished': {
      const bottle = bottleOf(state, id, fact.bottle)
      if (bottle) bottle.finished = true
      return
    }
    case 'bottlesShaken':
      for (const shaken of fact.bottles) {
        const bottle = bottleOf(state, id, shaken)
        if (bottle) bottle.shakenAt = fact.at
      }
      return
    case 'bottleMoved': {
      const bottle = bottleOf(state, id, fact.bottle)
      if (bottle) bottle.place = fact.to
      return
    }
    case 'lotMoved': {
      const lot = lotOf(state, id, fact.lot)
      if (lot) lot.place = fact.to
      return
    }
    case 'portionsMoved': {
      const lot = lotOf(state, id, fact.from)
      // The same move written twice is one: nothing leaves a lot that does not arrive in another.
      const arrived = state.lots.get(fact.lot)?.entry === id
      if (lot && arrived && !countedAfter(lot, fact.at)) moveAway(lot, fact)
      return
    }
    case 'wellsSeen': {
      const lot = lotOf(state, id, fact.lot)
      if (lot) seeWells(lot, fact)
      return
    }
    case 'trayCut': {
      const lot = lotOf(state, id, fact.lot)
      if (lot) lot.traysSeen.set(fact.tray, { ...lot.traysSeen.get(fact.tray), cuts: fact.after })
      return
    }
    case 'portionsCounted': {
      const lot = lotOf(state, id, fact.lot)
      if (!lot) return
      lot.observations.push({ entry: id, at: fact.at, found: fact.counted, bookThen: fact.book, bookNow: lot.left })
      recount(lot, fact.counted)
      return
    }
    case 'liquidMeasured': {
      const bottle = bottleOf(state, id, fact.bottle)
      if (!bottle) return
      bottle.observations.push({ entry: id, at: fact.at, found: fact.left, bookThen: fact.book, bookNow: bottle.left })
      bottle.left = fact.left
      bottle.lastSeen = fact.left
      bottle.finished = false
      return
    }
    case 'portionsGone': {
      const lot = lotOf(state, id, fact.lot)
      if (lot) take(lot, fact.at, fact.count, 'gone')
      return
    }
    case 'portionsGivenAway': {
      const lot = lotOf(state, id, fact.lot)
      if (lot) take(lot, fact.at, fact.count, 'gone')
      return
    }
    case 'portionsFound': {
      const lot = lotOf(state, id, fact.lot)
      if (lot && !countedAfter(lot, fact.at)) lot.left += fact.count
      return
    }
    case 'liquidGone': {
      const bottle = bottleOf(state, id, fact.bottle)
      if (bottle) pour(bottle, fact.at, fact.amount, 'gone')
      return
    }
    case 'foodDescribed':
    case 'foodRetired':
    case 'placeDescribed':
    case 'placeRetired':
    case 'bottleRecorded':
    case 'portionsOnHand':
      return
    default:
      fact satisfies never
  }
}

/** A dose leaves the bottle or lot it came from, and is added to what its food has done. */
export const feed = (state: Folding, id: Stamp, fact: DoseGiven | DoseGivenOffPlan) => {
  const opened = fact.served[0]?.night
  for (const taken of fact.taken) {
    if (taken.from === 'bottle') {
      const bottle = bottleOf(state, id, taken.bottle)
      if (!bottle) continue
      pour(bottle, fact.at, taken.amount, 'fed')
      // Nobody pours out of a sealed bottle either.
      bottle.openedOn ??= opened
    } else {
      const lot = lotOf(state, id, taken.lot)
      if (lot) take(lot, fact.at, taken.count, 'fed')
    }
  }
  const amount = fact.served.reduce((sum, part) => sum + part.amount, 0)
  addToFed(state, fact.food, fact.served.length, amount)
}

/** Counted, what is gone has been fed; the figure is reset as by any count. */
export const feedByCount = (state: Folding, id: Stamp, fact: NightsCounted) => {
  for (const { lot: counted, counted: found, book } of fact.lots) {
    const lot = lotOf(state, id, counted)
    if (!lot) continue
    lot.observations.push({ entry: id, at: fact.at, found, bookThen: book, bookNow: lot.left })
    lot.fed += Math.max(0, book - found)
    recount(lot, found)
  }
  addToFed(state, fact.food, fact.doses, fact.amount)
}

const addToFed = ({ fed }: Folding, food: FoodId, doses: number, amount: number) => {
  const before = fed.get(food)
  fed.set(food, { doses: (before?.doses ?? 0) + doses, amount: (before?.amount ?? 0) + amount })
}
