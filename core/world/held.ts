/** How an entry is held, apart from how it is checked: a cold start needs this and no shapes. */
import type { Entry, Unread } from '../ledger/entry.ts'
import type { Fact } from './facts.ts'

/** Grows when this version reads more than the one before it. */
export const codecVersion: number = 5

/** An entry this version reads, or one that it keeps unread. */
export type Held = Entry<Fact> | Unread

export const isUnread = (entry: Held): entry is Unread => 'unread' in entry

/** The entry as it stands in a file. */
export const encodeEntry = (entry: Held): unknown => (isUnread(entry) ? entry.unread : entry)
