/** Of two bodies she says which is right. */
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { EntryStruckOut } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { parsed } from './codec/json.ts'
import { decodeEntry } from './codec.ts'
import type { ClashNoted, Fact } from './facts.ts'
import { isUnread } from './held.ts'

/** What the other phone wrote, if this version reads it. */
export const theirsOf = ({ theirs }: ClashNoted): Fact | undefined => {
  const held = decodeEntry(parsed(theirs))
  return held && !isUnread(held) ? held.fact : undefined
}

export type ClashRefusal = { readonly why: 'noSuchEntry' | 'alreadyCrossedOut' | 'cannotBeRead' }

/**
 * The right body is written anew under an id of its own, and the disputed id is crossed out: on both phones, whichever body
 * each of them holds.
 */
export const settleClash = (
  { history }: { readonly history: History<Fact> },
  { clash, right }: { readonly clash: Stamp; readonly right: 'ours' | 'theirs' },
  now: Moment,
): Result<readonly (EntryStruckOut | Fact)[], ClashRefusal> => {
  const noted = history.all.find(({ id }) => id === clash)
  if (noted?.fact.kind !== 'clashNoted') return refuse({ why: 'noSuchEntry' })
  const target = noted.fact.entry
  const ours = history.all.find(({ id }) => id === target)
  if (!ours) return refuse({ why: 'noSuchEntry' })
  if (history.struck.has(target)) return refuse({ why: 'alreadyCrossedOut' })
  const fact = right === 'ours' ? ours.fact : theirsOf(noted.fact)
  if (!fact || fact.kind === 'entryStruckOut') return refuse({ why: 'cannotBeRead' })
  return ok([{ kind: 'entryStruckOut', at: now, target, why: 'twoBodies' }, fact])
}
