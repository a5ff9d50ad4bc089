/** A bottle's entry is put right: crossed out and written again, in one append. */
import type { Here } from '../basis/here.ts'
import type { BottleId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import { type Moment, moment } from '../basis/zones.ts'
import type { AnyFact, EntryStruckOut } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import { type Stamp, writtenAt } from '../ledger/stamp.ts'
import { type BottleAsked, type BottleRefusal, recordBottle } from './bottles.ts'
import type { BottleRecorded } from './facts.ts'
import type { Bottle, FoodState } from './state.ts'

type Told = FoodState & { readonly history: History<AnyFact> }

/** Entries that say when a bottle was opened, beside its own. */
const openings = ({ history }: Told, bottle: BottleId): readonly Stamp[] =>
  history.all
    .filter(({ id, fact }) => fact.kind === 'bottleOpened' && !history.struck.has(id))
    .filter(({ fact }) => 'bottle' in fact && fact.bottle === bottle)
    .map(({ id }) => id)

/**
 * The moment the contents speak of. What was poured before it does not count against them, so a correction must not move
 * it later: doses noted between the entry and its correction would come back into the bottle.
 */
const speaksOf = (known: Bottle, corrected: BottleRecorded): Moment => {
  if (!corrected.about) return moment(Math.min(known.recorded.at, corrected.at))
  return known.recorded.about ? known.recorded.at : writtenAt(known.entry)
}

/** `openedOn` is the day as it now stands; where it differs from the book's, entries that say otherwise are crossed out too. */
export const correctBottle = (
  state: Told,
  asked: BottleAsked,
  here: Here,
): Result<readonly (EntryStruckOut | BottleRecorded)[], BottleRefusal | { readonly why: 'noSuchBottle' }> => {
  const known = state.bottles.get(asked.bottle)
  if (!known) return refuse({ why: 'noSuchBottle' })
  const checked = recordBottle(state, asked, here)
  if (!checked.ok) return checked
  const [corrected] = checked.value
  const reopened = asked.openedOn === known.openedOn ? [] : openings(state, asked.bottle)
  const struck = [known.entry, ...reopened].map((target): EntryStruckOut => {
    return { kind: 'entryStruckOut', at: here.now, target }
  })
  return ok([...struck, { ...corrected, at: speaksOf(known, corrected) }])
}
