/** Photos as the book tells of them. The picture itself lies beside the ledger, under the name its bytes give it. */
import type { PhotoId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { AnyFact, EntryStruckOut } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { SeedingState } from '../seeding/state.ts'
import { type TankState, tankKept } from '../tank/state.ts'
import type { PhotoKept, PhotoOf } from './facts.ts'
import type { WatchState } from './state.ts'

export type PhotoNoted = WatchState['photos'][number]
/** What has to be known to say of what a photo may be: of a tank, a parcel, a night, or of whatever an entry tells. */
export type PhotoBook = WatchState & SeedingState & TankState & { readonly history: History<AnyFact> }
export type PhotoAsked = Pick<PhotoKept, 'at' | 'photo' | 'of' | 'type' | 'bytes'> & { readonly words?: string }

/** A line or two under a picture. Our own judgement. */
const longestWords = 300
/** A hundred million bytes: what the book reads back. A picture made ready by this app is a hundredth of it. */
export const mostPhotoBytes = 100_000_000

export type PhotoRefusal =
  /** Nothing of that name: no such tank, parcel, night or entry. */
  | { readonly why: 'nothingToShow' }
  | { readonly why: 'photoNotYet'; readonly at: Moment }
  | { readonly why: 'photoThere' }
  | { readonly why: 'photoTooLarge'; readonly bytes: number; readonly most: number }
  | { readonly why: 'photoWordsTooLong'; readonly most: number }

/**
 * Says that there is a photo, what it shows and when it was taken. Said before the picture is kept: should there be no room
 * for it, the book still tells of it. Refuses what is not on record, a moment that is still to come, a picture of none or
 * too many bytes, and the same picture of the same thing once more.
 */
export const keepPhoto = (
  state: PhotoBook,
  { at, photo, of, type, bytes, words = '' }: PhotoAsked,
  now: Moment,
): Result<readonly [PhotoKept], PhotoRefusal> => {
  if (!isThere(state, of, now)) return refuse({ why: 'nothingToShow' })
  if (at > now + clockGrace) return refuse({ why: 'photoNotYet', at })
  if (!(bytes >= 1 && bytes <= mostPhotoBytes)) return refuse({ why: 'photoTooLarge', bytes, most: mostPhotoBytes })
  const said = words.trim()
  if (said.length > longestWords) return refuse({ why: 'photoWordsTooLong', most: longestWords })
  if (photosOf(state, of).some(({ fact }) => fact.photo === photo)) return refuse({ why: 'photoThere' })
  return ok([{ kind: 'photoKept', at, photo, of, type, bytes, ...(said ? { words: said } : {}) }])
}

export type SayRefusal =
  | { readonly why: 'noSuchEntry' }
  | Extract<PhotoRefusal, { readonly why: 'photoNotYet' | 'photoWordsTooLong' }>

/**
 * Says otherwise when a photo was taken, or what it shows: its entry is crossed out and written anew, the picture stays the
 * same. Nothing where nothing is said otherwise. Refuses an entry that is no photo, a moment that is still to come, and
 * words beyond a line or two.
 */
export const sayOfPhoto = (
  { photos }: WatchState,
  { entry, at, words }: { readonly entry: Stamp; readonly at: Moment; readonly words: string },
  now: Moment,
): Result<readonly (EntryStruckOut | PhotoKept)[], SayRefusal> => {
  const before = photos.find((photo) => photo.entry === entry)?.fact
  if (!before) return refuse({ why: 'noSuchEntry' })
  if (at > now + clockGrace) return refuse({ why: 'photoNotYet', at })
  const said = words.trim()
  if (said.length > longestWords) return refuse({ why: 'photoWordsTooLong', most: longestWords })
  if (at === before.at && said === (before.words ?? '')) return ok([])
  const { words: _, ...rest } = before
  return ok([
    { kind: 'entryStruckOut', at: now, target: entry, why: 'mistake' },
    { ...rest, at, ...(said ? { words: said } : {}) },
  ])
}

const isThere = (state: PhotoBook, of: PhotoOf, now: Moment): boolean => {
  if ('tank' in of) return tankKept(state, of.tank, now) !== undefined
  if ('parcel' in of) return state.parcels.has(of.parcel)
  if ('run' in of) return state.runs.has(of.run)
  const { all, struck } = state.history
  return !struck.has(of.entry) && all.some(({ id }) => id === of.entry)
}

/** Those of one thing, in the order they were taken. */
export const photosOf = ({ photos }: WatchState, of: PhotoOf): readonly PhotoNoted[] =>
  photos.filter(({ fact }) => same(fact.of, of)).toSorted(byTime)

const same = (one: PhotoOf, other: PhotoOf): boolean => keyOf(one) === keyOf(other)
const keyOf = (of: PhotoOf): string =>
  'tank' in of
    ? `tank ${of.tank}`
    : 'parcel' in of
      ? `parcel ${of.parcel}`
      : 'run' in of
        ? `run ${of.run}`
        : `entry ${of.entry}`
export const byTime = (a: PhotoNoted, b: PhotoNoted): number => a.fact.at - b.fact.at

/** The pictures the book tells of, each once, however often it is told. */
export const picturesTold = ({ photos }: WatchState): ReadonlySet<PhotoId> =>
  new Set(photos.map(({ fact }) => fact.photo))
