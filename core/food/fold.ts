/**
 * What food there is: the first pass over the ledger. Bottles and lots are known before any change is applied, since a merged
 * phone's clock may put the change first. The second pass is in changes.ts, doses are in feed.ts.
 */
import type { LotId } from '../basis/ids.ts'
import { gather } from '../ledger/gather.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { FoodFact, PortionsMoved } from './facts.ts'
import type { Folding, Growing } from './folding.ts'
import type { Lot } from './state.ts'

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
        aside: undefined,
        frozeOn: undefined,
        thawedOn: undefined,
        smelled: [],
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
    case 'purchaseRecorded':
      return gather(state.purchases, fact.purchase, fact)
    case 'foodOrdered':
      return gather(state.orders, fact.food, fact)
    case 'orderingDescribed':
      state.ordering.push(fact)
      return
    case 'daysAway':
      state.daysAway.push(fact)
      return
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
    case 'freezerThawed':
    case 'fridgeTroubled':
    case 'bottleThawed':
    case 'foodSmelled':
    case 'foodSetAside':
    case 'foodTakenBack':
    case 'lotsJoined':
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
  aside: undefined,
  softOn: undefined,
  meltedOn: undefined,
  smelled: [],
  joined: [],
  joinedInto: undefined,
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
