/** Two foods for one tank: the nights on which they meet, and whether they need to. */
import type { Day } from '../basis/days.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import type { TankState } from '../tank/state.ts'
import { nightsUntil } from './due.ts'
import type { PlanMade } from './facts.ts'
import type { DosingState } from './state.ts'

/** The nights from tonight to a night, both included, on which more than one of these plans is due if each is kept. */
export const clashNights = (
  state: TankState & FoodState & DosingState,
  plans: readonly PlanMade[],
  until: Day,
  now: Moment,
): readonly Day[] => {
  const times = new Map<Day, number>()
  for (const plan of plans)
    for (const night of nightsUntil(state, plan, until, now)) times.set(night, (times.get(night) ?? 0) + 1)
  return [...times].flatMap(([night, due]) => (due > 1 ? [night] : [])).sort()
}

const commonNights = (a: number, b: number): number => (b === 0 ? a : commonNights(b, a % b))

/**
 * Whether two plans never meet once the first night of one is moved by a night. Their numbers of nights need a common
 * measure: every second and every third night meet whatever is moved.
 */
export const mayAlternate = (a: Pick<PlanMade, 'everyNights'>, b: Pick<PlanMade, 'everyNights'>): boolean =>
  commonNights(a.everyNights, b.everyNights) > 1
