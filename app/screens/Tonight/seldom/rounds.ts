/** What an answer about nights without an entry is about. */
import type { Round, TonightLine } from '../../../../core/index.ts'

export const roundsOf = (lines: readonly TonightLine[]): readonly Round[] =>
  lines.map(({ plan, unlogged }) => ({ plan: plan.plan, nights: unlogged }))
