/** A count and a kind that was recognised, written down as they were seen. */
import type { TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lampNight } from '../tank/lamp.ts'
import { nightOf, type TankState, tankKept } from '../tank/state.ts'
import type { KindSeen, Looked, SmallLifeCounted } from './facts.ts'
import { isAnimal, type KeyWalk, keyPlace } from './key.ts'
import { type TallyRefusal, tally } from './tally.ts'

/** By torch the minutes since the lamp went out are reckoned, not asked. */
export type LookedAsked = Exclude<Looked, { how: 'torch' }> | Omit<Extract<Looked, { how: 'torch' }>, 'minutesDark'>

export type CountAsked = {
  readonly tank: TankId
  readonly at: Moment
  readonly looked: LookedAsked
  readonly counts: readonly number[]
  readonly where?: string
  readonly words?: string
}

/** What was measured of a look, and the most anybody looks at. Our own judgement; the book reads back more. */
export const mostLooked = {
  seconds: 3_600,
  frame: 100_000,
  litres: 1_000,
  rinsedInto: 10_000,
  lookedAt: 10_000,
  sieve: 5_000,
  /** A share: all of them. */
  kept: 1,
} as const
export type LookPart = keyof typeof mostLooked

export type WatchRefusal =
  | { readonly why: 'noSuchTank' }
  | { readonly why: 'notYet'; readonly at: Moment }
  | { readonly why: 'wordsTooLong'; readonly most: number; readonly of: 'where' | 'words' }
export type CountedRefusal =
  | WatchRefusal
  | TallyRefusal
  | { readonly why: 'lookOutOfRange'; readonly of: LookPart; readonly given: number; readonly most: number }
  | { readonly why: 'lookedAtMoreThanRinsed'; readonly inAll: number; readonly rinsedInto: number }

/** A spot is a few words, a remark a few lines. Our own judgement. */
const longest = { where: 100, words: 1_000 } as const
const own = ({ where = '', words = '' }: { readonly where?: string; readonly words?: string }) => ({
  ...(where.trim() ? { where: where.trim() } : {}),
  ...(words.trim() ? { words: words.trim() } : {}),
})

/**
 * The counts as they were taken, one for each pane or millilitre: never averaged, never half an animal. The night and, by
 * torch, the minutes since the lamp went out are reckoned by the tank's clock. Refuses a tank not kept, a moment that is
 * still to come, measures that are not above 0 or beyond what anybody looks at, and counts that are none.
 */
export const recordCount = (
  state: TankState,
  asked: CountAsked,
  now: Moment,
): Result<readonly [SmallLifeCounted], CountedRefusal> => {
  const { looked, counts } = asked
  const begun = begin(state, asked, now)
  if (!begun.ok) return begun
  for (const of of Object.keys(mostLooked) as LookPart[]) {
    const given: unknown = Object.hasOwn(looked, of) ? looked[of as keyof typeof looked] : undefined
    if (typeof given === 'number' && !(given > 0 && given <= mostLooked[of]))
      return refuse({ why: 'lookOutOfRange', of, given, most: mostLooked[of] })
  }
  if (looked.how === 'jar') {
    const inAll = looked.lookedAt * counts.length
    if (inAll > looked.rinsedInto * (1 + forgiven))
      return refuse({ why: 'lookedAtMoreThanRinsed', inAll, rinsedInto: looked.rinsedInto })
  }
  const counted = tally(counts)
  if (!counted.ok) return counted
  const tank = begun.value
  const night = nightOf(asked.at, tank)
  return ok([
    {
      kind: 'smallLifeCounted',
      at: asked.at,
      tank: asked.tank,
      night,
      looked: looked.how === 'torch' ? { ...looked, ...sinceDark(state, tank, asked.at) } : looked,
      counts,
      ...own(asked),
    },
  ])
}

/** Three looks of 0.1 mL add up to a hair more than 0.3. */
const forgiven = 1e-9

/** Left out where the lamp's clock has lost its time: nobody knows when it went out. */
const sinceDark = (state: TankState, tank: TankDescribed, at: Moment): { readonly minutesDark?: number } => {
  const { out, unsure } = lampNight(state, tank, nightOf(at, tank))
  const minutes = Math.round((at - out) / 60_000)
  return unsure || Math.abs(minutes) > 1_440 ? {} : { minutesDark: minutes }
}

export type KindAsked = {
  readonly tank: TankId
  readonly at: Moment
  readonly walk: KeyWalk
  readonly where?: string
  readonly words?: string
}
export type KindRefusal = WatchRefusal | { readonly why: 'keyNotDone' }

/** What the key came to, with the marks that were seen. "Not sure" is kept as well. Refuses a walk that is still asking. */
export const recordKind = (
  state: TankState,
  asked: KindAsked,
  now: Moment,
): Result<readonly [KindSeen], KindRefusal> => {
  const begun = begin(state, asked, now)
  if (!begun.ok) return begun
  const place = keyPlace(asked.walk)
  if (place.at !== 'found') return refuse({ why: 'keyNotDone' })
  return ok([
    {
      kind: 'kindSeen',
      at: asked.at,
      tank: asked.tank,
      ...(isAnimal(place.found) ? { form: place.found } : {}),
      marks: place.marks,
      says: place.verdict,
      ...own(asked),
    },
  ])
}

type Begun = { readonly tank: TankId; readonly at: Moment; readonly where?: string; readonly words?: string }
const begin = (state: TankState, asked: Begun, now: Moment): Result<TankDescribed, WatchRefusal> => {
  const tank = tankKept(state, asked.tank, now)
  if (!tank) return refuse({ why: 'noSuchTank' })
  if (asked.at > now + clockGrace) return refuse({ why: 'notYet', at: asked.at })
  for (const of of ['where', 'words'] as const)
    if ((asked[of]?.trim().length ?? 0) > longest[of]) return refuse({ why: 'wordsTooLong', most: longest[of], of })
  return ok(tank)
}
