/** A bag without its label: which of her freezings it may be, and the earliest day that makes it. */
import type { Microlitres } from '../basis/amounts.ts'
import { type Day, earlier } from '../basis/days.ts'
import type { Here } from '../basis/here.ts'
import type { FoodId, LotId, PlaceId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Kept, PortionsCounted, PortionsOnHand } from './facts.ts'
import { type PortionsRefusal, recordPortionsOnHand } from './portions.ts'
import { type FoodState, type Lot, portionsLeft } from './state.ts'

/** Freezings of a food it may be from, used up or not: a bag forgotten at the back may be one the book has finished. */
export const freezingsOf = ({ lots }: FoodState, food: FoodId): readonly Lot[] =>
  [...lots.values()].filter(({ made, partOf }) => made.food === food && partOf === undefined)

/** The earliest day any of them was frozen, what was put into their bags included. */
export const earliestFrozen = (lots: readonly Lot[]): Day | undefined =>
  lots
    .flatMap(({ made, joined }) => [made.frozenOn, ...joined.map(({ frozenOn }) => frozenOn)])
    .reduce<Day | undefined>((first, day) => (first ? earlier(first, day) : day), undefined)

export type UnlabelledAsked = {
  readonly lot: LotId
  readonly mark: string
  readonly food: FoodId
  readonly portions: number
  readonly each: Microlitres
  readonly kept: Kept
  readonly place: PlaceId
  /** What it may be. */
  readonly mayBe: readonly LotId[]
  /** Or a day it is no older than, where it may be something that is not on record. */
  readonly noOlderThan?: Day
  /** The book counts them in this bag already: that one has as many fewer. */
  readonly countedIn?: LotId
}
export type UnlabelledRefusal =
  | PortionsRefusal
  | { readonly why: 'noSuchLot' }
  | { readonly why: 'whichFreezing' }
  /** More than the bag they are said to be counted in has by the book. */
  | { readonly why: 'moreThanBagHas'; readonly left: number }

/**
 * Portions nobody can name, as old as they can be at most and marked "about". Counted in a bag already, they leave it by a
 * count, in the same append: nothing is there twice.
 */
export const recordUnlabelled = (
  state: FoodState,
  asked: UnlabelledAsked,
  here: Here,
): Result<readonly (PortionsOnHand | PortionsCounted)[], UnlabelledRefusal> => {
  const { mayBe, noOlderThan, countedIn, ...portions } = asked
  const lots = mayBe.flatMap((id) => state.lots.get(id) ?? [])
  if (lots.length < mayBe.length) return refuse({ why: 'noSuchLot' })
  const known = earliestFrozen(lots)
  const frozenOn = known && noOlderThan ? earlier(known, noOlderThan) : (known ?? noOlderThan)
  if (!frozenOn) return refuse({ why: 'whichFreezing' })
  const recorded = recordPortionsOnHand(state, { ...portions, frozenOn, about: true }, here)
  if (!recorded.ok || countedIn === undefined) return recorded
  const bag = state.lots.get(countedIn)
  if (!bag) return refuse({ why: 'noSuchLot' })
  const left = portionsLeft(bag)
  if (asked.portions > left) return refuse({ why: 'moreThanBagHas', left })
  return ok([
    ...recorded.value,
    {
      kind: 'portionsCounted',
      at: here.now,
      lot: countedIn,
      counted: left - asked.portions,
      book: bag.left,
      why: 'labelGone',
    },
  ])
}
