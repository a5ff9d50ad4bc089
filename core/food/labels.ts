/** Which bags a label is wanted for, and what it has to say of each. */
import { byText } from '../basis/compare.ts'
import type { Day } from '../basis/days.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodDescribed } from './facts.ts'
import { type FoodState, foodAt, type Lot, lotLastGood } from './state.ts'

/** What whoever opens the bag must know first. */
export type LabelWarning = 'aside' | 'thawed' | 'past'

export type BagToLabel = {
  readonly lot: Lot
  readonly food: FoodDescribed
  readonly lastGood: Day | undefined
  /** Empty: in use as it should be. Any other is labelled only when she says so. */
  readonly warnings: readonly LabelWarning[]
}

/** Bags with anything left of a food on record, newest first. */
export const bagsToLabel = (state: FoodState, now: Moment, today: Day): readonly BagToLabel[] =>
  [...state.lots.values()]
    .flatMap((lot): BagToLabel[] => {
      const food = foodAt(state, lot.made.food, now)
      if (!food || lot.left <= 0) return []
      const lastGood = lotLastGood(lot, food)
      const warnings: LabelWarning[] = []
      if (lot.aside) warnings.push('aside')
      if (lot.meltedOn) warnings.push('thawed')
      if (lastGood !== undefined && lastGood < today) warnings.push('past')
      return [{ lot, food, lastGood, warnings }]
    })
    .sort((a, b) => byText(b.lot.made.frozenOn, a.lot.made.frozenOn) || byText(b.lot.entry, a.lot.entry))
