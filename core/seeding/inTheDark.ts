/** By itself, because the first screen asks it of its look before it asks anything else of a run. */
import type { Moment } from '../basis/zones.ts'
import { planOfRun, type Run } from './state.ts'

const hour = 3_600_000

/** From an hour before the pumps stop until the morning hour: whoever looks at the run stands by a dark tank. */
export const inTheDark = (run: Run, now: Moment): boolean => {
  const plan = planOfRun(run, now)
  return plan !== undefined && now > plan.off - hour && now < plan.morning
}
