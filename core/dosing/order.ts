/** Why one source is taken before another: the same order as servings, told apart by what decided it. */
import type { Serving } from './serve.ts'

export type FirstBecause = 'soonest' | 'fewest' | 'oldest'

const dosesIn = ({ source, taken }: Serving): number =>
  source.left / (taken.from === 'portions' ? taken.count : taken.amount)

/** Undefined where there is nothing to choose between, or nothing tells the two apart. */
export const whyFirst = ([first, second]: readonly Serving[]): FirstBecause | undefined => {
  if (!first || !second) return undefined
  if (first.source.lastGood !== second.source.lastGood) return 'soonest'
  if (dosesIn(first) !== dosesIn(second)) return 'fewest'
  return first.source.since !== second.source.since ? 'oldest' : undefined
}
