/** A letter to herself about a tank, opened on a day to come. */
import { addDays, type Day } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import { type Moment, wallDay } from '../basis/zones.ts'
import { type TankState, tankKept } from '../tank/state.ts'
import type { LetterWritten } from './facts.ts'
import type { SeedingState } from './state.ts'

/** As much as the ledger reads back. */
export const longestLetter = 10_000
/** Days from the pour after which a letter is usually opened: by then the small life can be counted. Our own judgement. */
export const usualLetterDays = 28
/** Days for which an opened letter stands on the page. Our own judgement. */
const standsFor = 14

export type LetterRefusal =
  | { readonly why: 'noSuchTank' | 'noWords' | 'dayMissing' }
  | { readonly why: 'tooLong'; readonly most: number }
  /** A letter is for a day after today. */
  | { readonly why: 'opensTooSoon'; readonly opens: Day }

export const writeLetter = (
  state: TankState,
  asked: { readonly tank: TankId; readonly text: string; readonly opens: Day | undefined },
  now: Moment,
): Result<readonly [LetterWritten], LetterRefusal> => {
  const tank = tankKept(state, asked.tank, now)
  if (!tank) return refuse({ why: 'noSuchTank' })
  const text = asked.text.trim()
  if (text === '') return refuse({ why: 'noWords' })
  if (text.length > longestLetter) return refuse({ why: 'tooLong', most: longestLetter })
  const { opens } = asked
  if (opens === undefined) return refuse({ why: 'dayMissing' })
  if (opens <= wallDay(now, tank.zone)) return refuse({ why: 'opensTooSoon', opens })
  return ok([{ kind: 'letterWritten', at: now, tank: asked.tank, text, opens }])
}

/** Letters whose day has come, for a fortnight; the diary keeps them after that. */
export const lettersOpen = ({ letters }: SeedingState, tank: TankId, today: Day): readonly LetterWritten[] =>
  letters.flatMap(({ fact }) =>
    fact.tank === tank && fact.opens <= today && today < addDays(fact.opens, standsFor) ? [fact] : [],
  )
/** How many are still closed, and the day on which the next one opens. */
export const lettersClosed = (
  { letters }: SeedingState,
  tank: TankId,
  today: Day,
): { readonly count: number; readonly next: Day } | undefined => {
  const days = letters.flatMap(({ fact }) => (fact.tank === tank && fact.opens > today ? [fact.opens] : [])).sort()
  const [next] = days
  return next === undefined ? undefined : { count: days.length, next }
}
