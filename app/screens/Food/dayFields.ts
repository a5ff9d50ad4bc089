/** Days as typed. */
import { type Day, isDay, ok, type Result } from '../../../core/index.ts'
import { type Trouble, trouble } from './useAct.ts'

/** A day that may be left out. */
export const readDay = (typed: string, at: string): Result<Day | undefined, Trouble> => {
  if (typed === '') return ok(undefined)
  return isDay(typed) ? ok(typed) : trouble(at, { why: 'notANumber', typed })
}
