/** What she says of a lamp: when it goes out, and how long the power was away. */
import type { TankId } from '../basis/ids.ts'
import { type NumberRefusal, readNumber } from '../basis/numbers.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import { isClockTime, type Moment } from '../basis/zones.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import type { LampSeen, PowerCut } from './facts.ts'
import { type TankState, tankKept } from './state.ts'

export type LampRefusal = { readonly why: 'tankUnknown' } | { readonly why: 'lightsOutMissing' }

/** @param goesOut by the wall, `HH:mm` */
export const seeLamp = (
  state: TankState,
  { tank, goesOut }: { readonly tank: TankId; readonly goesOut: string },
  now: Moment,
): Result<readonly [LampSeen], LampRefusal> => {
  if (!tankKept(state, tank, now)) return refuse({ why: 'tankUnknown' })
  if (!isClockTime(goesOut)) return refuse({ why: 'lightsOutMissing' })
  return ok([{ kind: 'lampSeen', at: now, tank, goesOut }])
}

/** Two weeks; a dial that stood longer is looked at, not reckoned. Our own judgement. */
export const longestCut = 14 * 1440

export type PowerCutRefusal =
  | NumberRefusal
  | { readonly why: 'cutNotWhole' }
  | { readonly why: 'cutTooLong'; readonly longest: number }
  | { readonly why: 'tankUnknown' }
  | { readonly why: 'notYet'; readonly at: Moment }

/**
 * @param minutes as typed: whole, 1 to 20,160
 * @param backAt when the power was back; not in the future
 */
export const notePowerCut = (
  state: TankState,
  { minutes, tanks, backAt }: { readonly minutes: string; readonly tanks: readonly TankId[]; readonly backAt: Moment },
  now: Moment,
): Result<readonly [PowerCut], PowerCutRefusal> => {
  const number = readNumber(minutes)
  if (!number.ok) return number
  if (!Number.isInteger(number.value) || number.value < 1) return refuse({ why: 'cutNotWhole' })
  if (number.value > longestCut) return refuse({ why: 'cutTooLong', longest: longestCut })
  if (tanks.length === 0 || tanks.some((tank) => !tankKept(state, tank, now))) return refuse({ why: 'tankUnknown' })
  if (backAt > now + clockGrace) return refuse({ why: 'notYet', at: backAt })
  return ok([{ kind: 'powerCut', at: backAt, minutes: number.value, tanks }])
}
