/** What became of bottles and lots: the second pass over the ledger, in the order things happened. */
import type { Stamp } from '../ledger/stamp.ts'
import type { FoodFact } from './facts.ts'
import { bottleOf, countedAfter, type Folding, lotOf, pour, take } from './folding.ts'
import { moveAway, recount, seeWells } from './foldTrays.ts'
import { inherit, troubleFood } from './foldTrouble.ts'

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
      const part = state.lots.get(fact.lot)
      const arrived = part?.entry === id
      if (lot && part && arrived) inherit(part, lot)
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
    case 'freezerThawed':
    case 'fridgeTroubled':
    case 'bottleThawed':
    case 'foodSmelled':
    case 'foodSetAside':
    case 'foodTakenBack':
    case 'lotsJoined':
      return troubleFood(state, id, fact)
    case 'foodDescribed':
    case 'foodRetired':
    case 'placeDescribed':
    case 'placeRetired':
    case 'bottleRecorded':
    case 'portionsOnHand':
    case 'purchaseRecorded':
    case 'foodOrdered':
    case 'orderingDescribed':
    case 'daysAway':
      return
    default:
      fact satisfies never
  }
}
