/** When a new backup would be well. */
import { addMonths, type Day } from '../basis/days.ts'
import { type Moment, wallDay, type Zone } from '../basis/zones.ts'
import type { History } from '../ledger/history.ts'
import { writtenAt } from '../ledger/stamp.ts'
import type { Fact } from './facts.ts'

/** A calendar month since the last one, or since the book was begun where there was none. Our own judgement. */
export const backupOverdue = (
  { history }: { readonly history: History<Fact> },
  last: Moment | undefined,
  { today, zone }: { readonly today: Day; readonly zone: Zone },
): boolean => {
  const [first] = history.all
  const since = last ?? (first && writtenAt(first.id))
  return since !== undefined && addMonths(wallDay(since, zone), 1) < today
}
