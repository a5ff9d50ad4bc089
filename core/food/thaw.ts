/** A freezer was off or open: what that makes of each bag, before it is saved and when it is. */
import type { Day } from '../basis/days.ts'
import { type Here, momentOn, today } from '../basis/here.ts'
import type { LotId, PlaceId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { FoundAs, FreezerThawed } from './facts.ts'
import { thawed } from './foldTrouble.ts'
import { type FoodState, foodAt, type Lot, lotLastGood, placeAt, portionsLeft } from './state.ts'

/** Hours a freezer that stays shut keeps what is in it frozen, full and half full. Common practice, no source. */
export const shutFreezerHours = { full: 48, halfFull: 24 } as const
/** Hours that are warm for too long. Common practice, no source. */
export const warmHours = 2
/** Ten weeks: longer is a slip of the finger. Our own judgement. */
export const mostMinutesOff = 100_800

export type LotFound = { readonly lot: LotId; readonly found: FoundAs }
export type ThawAsked = {
  readonly place: PlaceId
  /** The day it was found. */
  readonly on: Day
  readonly lots: readonly LotFound[]
  /** Whole minutes, above 0. */
  readonly minutesOff?: number
}
export type OffRefusal =
  | { readonly why: 'noSuchPlace' }
  /** Nothing was said of anything behind the door. */
  | { readonly why: 'nothingLookedAt' }
  | { readonly why: 'foundNotYet'; readonly day: Day; readonly today: Day }
  | { readonly why: 'offOutOfRange'; readonly mostHours: number }
export type ThawRefusal = OffRefusal | { readonly why: 'noSuchLot' }

/** What every report about a door has to say. */
export const offRefusal = (
  state: FoodState,
  { place, on, minutesOff }: Pick<ThawAsked, 'place' | 'on' | 'minutesOff'>,
  said: number,
  here: Here,
): OffRefusal | undefined => {
  if (!placeAt(state, place, here.now)) return { why: 'noSuchPlace' }
  if (said === 0) return { why: 'nothingLookedAt' }
  if (on > today(here)) return { why: 'foundNotYet', day: on, today: today(here) }
  if (minutesOff !== undefined && !(Number.isInteger(minutesOff) && minutesOff >= 1 && minutesOff <= mostMinutesOff))
    return { why: 'offOutOfRange', mostHours: mostMinutesOff / 60 }
  return undefined
}

/** One act for the door, with each bag as it was found. Nothing is thrown away by it. */
export const freezerThawed = (
  state: FoodState,
  asked: ThawAsked,
  here: Here,
): Result<readonly [FreezerThawed], ThawRefusal> => {
  const wrong = offRefusal(state, asked, asked.lots.length, here)
  if (wrong) return refuse(wrong)
  if (asked.lots.some(({ lot }) => !state.lots.has(lot))) return refuse({ why: 'noSuchLot' })
  const { place, on, lots, minutesOff } = asked
  return ok([
    {
      kind: 'freezerThawed',
      at: momentOn(on, here),
      place,
      on,
      lots,
      ...(minutesOff === undefined ? {} : { minutesOff }),
    },
  ])
}

/** The food as it would be if it were noted so: by the rule the fold goes by, without writing anything. */
export const ifThawed = <State extends FoodState>(
  state: State,
  { on, lots: found }: Pick<ThawAsked, 'on' | 'lots'>,
  now: Moment,
): State => {
  const lots = new Map(state.lots)
  for (const { lot: id, found: how } of found) {
    const lot = lots.get(id)
    if (lot) lots.set(id, { ...lot, ...thawed(lot, how, on, { entry: notWritten, at: now }) })
  }
  return { ...state, lots }
}
const notWritten = '' as Stamp

export type ThawVerdict = {
  readonly lot: Lot
  readonly left: number
  readonly found: FoundAs
  /** Hard with frost it stays. Liquid and cold it is for two nights. Warm it is set aside for the bin. Not known: set aside, to look. */
  readonly is: 'stays' | 'twoNights' | 'forTheBin' | 'toLookAt'
  readonly before: Day | undefined
  readonly after: Day | undefined
}

const verdict: Record<FoundAs, ThawVerdict['is']> = {
  icy: 'stays',
  cold: 'twoNights',
  warm: 'forTheBin',
  notKnown: 'toLookAt',
}

/** For each bag what it comes to, with its last good day before and after: never a later one. */
export const thawVerdicts = (
  state: FoodState,
  asked: Pick<ThawAsked, 'on' | 'lots'>,
  now: Moment,
): readonly ThawVerdict[] => {
  const after = ifThawed(state, asked, now)
  return asked.lots.flatMap(({ lot: id, found }) => {
    const [lot, then] = [state.lots.get(id), after.lots.get(id)]
    const food = lot && foodAt(state, lot.made.food, now)
    if (!lot || !then) return []
    return [
      {
        lot,
        left: portionsLeft(lot),
        found,
        is: verdict[found],
        before: food && lotLastGood(lot, food),
        after: food && lotLastGood(then, food),
      },
    ]
  })
}
