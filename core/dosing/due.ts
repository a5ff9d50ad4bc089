/** Which night is a dose night. */
import { addDays, type Day, later } from '../basis/days.ts'
import type { PlanMade } from './facts.ts'

/**
 * The next dose night: so many nights after the last one anything is known of. Missed nights do not stack, and a skipped
 * or forgotten one counts as if the round went on: giving less is safe.
 */
export const nextDue = (plan: Pick<PlanMade, 'firstNight' | 'everyNights'>, lastNight: Day | undefined): Day =>
  lastNight === undefined ? plan.firstNight : later(plan.firstNight, addDays(lastNight, plan.everyNights))
