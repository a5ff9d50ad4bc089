/** What doses take, and what each food has been given in all. */
import type { FoodId } from '../basis/ids.ts'
import type { DoseGiven, DoseGivenOffPlan, NightsCounted } from '../dosing/facts.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { bottleOf, type Folding, lotOf, pour, take } from './folding.ts'
import { recount } from './foldTrays.ts'

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
