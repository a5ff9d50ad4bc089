/** Her own words about a day, and what this phone is called. */
import type { DeviceId, TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import { clockGrace, inForce } from '../ledger/snapshot.ts'
import type { NoteWritten, PhoneNamed } from './facts.ts'
import type { World } from './world.ts'

/** As much as the ledger reads back. */
export const longestNote = 10_000

export type NoteRefusal =
  | { readonly why: 'noWords' }
  | { readonly why: 'tooLong'; readonly most: number }
  | { readonly why: 'notYet'; readonly at: Moment }

export const writeNote = (
  asked: { readonly text: string; readonly at: Moment; readonly tank?: TankId },
  now: Moment,
): Result<readonly [NoteWritten], NoteRefusal> => {
  const text = asked.text.trim()
  if (text === '') return refuse({ why: 'noWords' })
  if (text.length > longestNote) return refuse({ why: 'tooLong', most: longestNote })
  if (asked.at > now + clockGrace) return refuse({ why: 'notYet', at: asked.at })
  return ok([{ kind: 'noteWritten', at: asked.at, text, ...(asked.tank ? { tank: asked.tank } : {}) }])
}

/** Names are read out beside entries; a longer one would bury them. */
export const longestPhoneName = 60

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
