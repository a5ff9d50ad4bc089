/** One id, two bodies: ours stands, and theirs is kept as it was written. Apart from the reading of it, which needs every shape. */
import type { Moment } from '../basis/zones.ts'
import type { History } from '../ledger/history.ts'
import type { ClashNoted, Fact } from './facts.ts'
import { encodeEntry, type Held } from './held.ts'

type Clash = { readonly ours: Held; readonly theirs: Held }

/** Longer bodies than this are no entry of a household: they are reported when the file is read, and not kept. */
const longest = 1_000_000

/** What a file disagrees about, each once however often the file is read. */
export const noteClashes = (
  { history }: { readonly history: History<Fact> },
  clashes: readonly Clash[],
  now: Moment,
): readonly ClashNoted[] => {
  const noted = new Set(
    history.all.flatMap(({ fact }) => (fact.kind === 'clashNoted' ? [`${fact.entry} ${fact.theirs}`] : [])),
  )
  return clashes.flatMap(({ ours, theirs }): ClashNoted[] => {
    const line = JSON.stringify(encodeEntry(theirs))
    if (line.length > longest || noted.has(`${ours.id} ${line}`)) return []
    return [{ kind: 'clashNoted', at: now, entry: ours.id, theirs: line }]
  })
}
