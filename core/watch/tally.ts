/** Counts as they were taken, one for each look, checked once and summed. */
import { ok, type Result, refuse } from '../basis/result.ts'

/** What was counted in each of several equal looks: chambers, millilitres, panes. Never empty. */
export type Tally = { readonly counts: readonly number[]; readonly sum: number; readonly mean: number }

export type TallyRefusal =
  | { readonly why: 'nothingCounted' }
  | { readonly why: 'countNotWhole' | 'countNegative'; readonly count: number }
  | { readonly why: 'countTooLarge'; readonly count: number; readonly most: number }

/** Nobody counts a million by eye. Our own judgement. */
export const mostCounted = 1_000_000

/** Refuses no looks at all, and what no count can be: half an animal, fewer than none, more than a million in all. */
export const tally = (counts: readonly number[]): Result<Tally, TallyRefusal> => {
  if (counts.length === 0) return refuse({ why: 'nothingCounted' })
  for (const count of counts) {
    if (count < 0) return refuse({ why: 'countNegative', count })
    if (!Number.isInteger(count)) return refuse({ why: 'countNotWhole', count })
  }
  const sum = counts.reduce((before, count) => before + count, 0)
  return sum > mostCounted
    ? refuse({ why: 'countTooLarge', count: sum, most: mostCounted })
    : ok({ counts, sum, mean: sum / counts.length })
}
