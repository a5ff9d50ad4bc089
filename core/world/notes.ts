/** Her own words about a day, and what this phone is called. */
import type { DeviceId, TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { EntryStruckOut } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import { clockGrace, inForce } from '../ledger/snapshot.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { Fact, NoteWritten, PhoneNamed } from './facts.ts'
import type { World } from './world.ts'

/** As much as the ledger reads back. */
export const longestNote = 10_000

export type NoteRefusal =
  | { readonly why: 'noWords' }
  | { readonly why: 'tooLong'; readonly most: number }
  | { readonly why: 'notYet'; readonly at: Moment }

export type NoteAsked = { readonly text: string; readonly at: Moment; readonly tank?: TankId }

export const writeNote = (asked: NoteAsked, now: Moment): Result<readonly [NoteWritten], NoteRefusal> => {
  const text = asked.text.trim()
  if (text === '') return refuse({ why: 'noWords' })
  if (text.length > longestNote) return refuse({ why: 'tooLong', most: longestNote })
  if (asked.at > now + clockGrace) return refuse({ why: 'notYet', at: asked.at })
  return ok([{ kind: 'noteWritten', at: asked.at, text, ...(asked.tank ? { tank: asked.tank } : {}) }])
}

export type RewriteRefusal = NoteRefusal | { readonly why: 'noSuchEntry' | 'alreadyCrossedOut' }

/** A note is put right: crossed out and written again, in one append. */
export const rewriteNote = (
  { history }: { readonly history: History<Fact> },
  { entry, ...asked }: NoteAsked & { readonly entry: Stamp },
  now: Moment,
): Result<readonly [EntryStruckOut, NoteWritten], RewriteRefusal> => {
  const note = history.all.find(({ id }) => id === entry)
  if (note?.fact.kind !== 'noteWritten') return refuse({ why: 'noSuchEntry' })
  if (history.struck.has(entry)) return refuse({ why: 'alreadyCrossedOut' })
  const written = writeNote(asked, now)
  if (!written.ok) return written
  return ok([{ kind: 'entryStruckOut', at: now, target: entry, why: 'putRight' }, ...written.value])
}

/** Names are read out beside entries; a longer one would bury them. */
const longestPhoneName = 60

export const namePhone = (
  asked: { readonly device: DeviceId; readonly name: string },
  now: Moment,
): Result<readonly [PhoneNamed], NoteRefusal> => {
  const name = asked.name.trim()
  if (name === '') return refuse({ why: 'noWords' })
  if (name.length > longestPhoneName) return refuse({ why: 'tooLong', most: longestPhoneName })
  return ok([{ kind: 'phoneNamed', at: now, device: asked.device, name }])
}

export const phoneName = ({ phones }: Pick<World, 'phones'>, device: DeviceId, now: Moment): string | undefined =>
  inForce(phones.get(device) ?? [], now)?.name
