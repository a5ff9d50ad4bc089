/** What there is of a food, and what there was. */
import type { Microlitres } from '../basis/amounts.ts'
import type { Day } from '../basis/days.ts'
import type { FoodId, LotId } from '../basis/ids.ts'
import type { Bottle, FoodState, Lot } from './state.ts'
import type { Shelf } from './stock.ts'

export type OnHand = {
  /** Portions of two sizes are never added together; the largest heap first. */
  readonly portions: readonly { readonly each: Microlitres; readonly count: number }[]
  readonly liquid: number
}

/**
 * What is still in time today: the rest stands on the shelf for a decision.
 * @param spare thawed portions that no dose night uses in time, which nobody may count on
 */
export const onHand = (
  shelves: readonly Shelf[],
  food: FoodId,
  today: Day,
  spare: ReadonlyMap<LotId, number> = new Map(),
): OnHand => {
  const inTime = (lastGood: Day | undefined) => lastGood === undefined || lastGood >= today
  const counts = new Map<Microlitres, number>()
  let liquid = 0
  for (const { lots, bottles } of shelves) {
    for (const { lot, left, lastGood } of lots)
      if (lot.made.food === food && !lot.aside && inTime(lastGood))
        counts.set(lot.made.each, (counts.get(lot.made.each) ?? 0) + left - (spare.get(lot.id) ?? 0))
    for (const { bottle, usable, lastGood } of bottles)
      if (bottle.recorded.food === food && inTime(lastGood)) liquid += usable
  }
  const portions = [...counts]
    .map(([each, count]) => ({ each, count }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count)
  return { portions, liquid }
}

/** Finished bottles and empty lots, the last come first: history, not stock. */
export const usedUp = ({
  bottles,
  lots,
}: FoodState): { readonly bottles: readonly Bottle[]; readonly lots: readonly Lot[] } => ({
  bottles: [...bottles.values()].filter(({ finished, left }) => finished || left <= 0).reverse(),
  lots: [...lots.values()].filter(({ left }) => left <= 0).reverse(),
})
