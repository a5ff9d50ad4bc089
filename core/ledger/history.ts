/** Which entries stand, and in which order they happened. */
import type { AnyFact, Entry, EntryStruckOut } from './entry.ts'
import type { Stamp } from './stamp.ts'

export type History<Fact> = {
  /** Every readable entry in the order it happened, crossed out or not. */
  readonly all: readonly Entry<Fact>[]
  /** Target to the earliest entry that crosses it out. */
  readonly struck: ReadonlyMap<Stamp, Entry<EntryStruckOut>>
}

/**
 * The one sort key: the moment the keeper means, then the stamp. Never the order of arrival, which differs from phone to
 * phone.
 */
export const inOrder = (a: Entry<AnyFact>, b: Entry<AnyFact>): number =>
  a.fact.at - b.fact.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)

const strikesOut = (entry: Entry<AnyFact>): entry is Entry<EntryStruckOut> => entry.fact.kind === 'entryStruckOut'

export const history = <Fact extends AnyFact>(entries: readonly Entry<Fact>[]): History<Fact> => {
  const all = [...entries].sort(inOrder)
  const struck = new Map<Stamp, Entry<EntryStruckOut>>()
  for (const entry of all) if (strikesOut(entry) && !struck.has(entry.fact.target)) struck.set(entry.fact.target, entry)
  for (const entry of all) if (strikesOut(entry)) struck.delete(entry.id)
  return { all, struck }
}
