/** What the ledger holds. It knows no trade word: a fact has a kind and the moment the keeper means, and that is all. */
import type { Moment } from '../basis/zones.ts'
import type { Stamp } from './stamp.ts'

export type AnyFact = { readonly kind: string; readonly at: Moment }
export type Entry<Fact> = { readonly id: Stamp; readonly fact: Fact }

/** An entry this version cannot read: kept word for word, exported again, counted on screen. */
export type Unread = { readonly id: Stamp; readonly unread: unknown }

/**
 * Crosses out another entry, whenever either of them arrives. It cannot itself be crossed out: record the fact again.
 * Editing is this and a new entry in one append.
 */
export type EntryStruckOut = {
  readonly kind: 'entryStruckOut'
  readonly at: Moment
  readonly target: Stamp
  readonly why?: string
}
