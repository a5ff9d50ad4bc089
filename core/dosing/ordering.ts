/**
 * By which day more food has to be ordered. One rule for everybody who says it: it is a date, told by what there is and what
 * the plans ask for, and the day it is looked at on does not move it.
 */
import { addDays, type Day, earlier, later } from '../basis/days.ts'
import type { FoodId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import { inForce } from '../ledger/snapshot.ts'
import { nightOf, type TankState, tankKept } from '../tank/state.ts'
import { dueOf, usualAfter } from './due.ts'
import { type Lasts, lasts } from './lasts.ts'
import { servings, sourcesOf } from './serve.ts'
import { type DosingState, goesOnSince, plansAt } from './state.ts'

type State = FoodState & DosingState & TankState

export type Ordering = {
  /** From ordering to the door. */
  readonly leadDays: number
  /** To spare. */
  readonly cushionDays: number
}
/** Until she says what hers are. Our own judgement. */
export const usualOrdering: Ordering = { leadDays: 7, cushionDays: 7 }

/** Hers as they hold at a moment. */
export const orderingAt = ({ ordering }: Pick<FoodState, 'ordering'>, now: Moment): Ordering =>
  inForce(ordering, now) ?? usualOrdering

export type OrderBy = Ordering & {
  readonly day: Day
  /** The first night without food: to come, or the night since when there has been none. */
  readonly bareNight: Day
}

/**
 * The first night without food, less the days an order takes and those to spare. Undefined where no plan feeds this food.
 * @param lasting what `lasts` answers, where it is at hand
 */
export const orderBy = (
  state: State,
  food: FoodId,
  now: Moment,
  lasting: Lasts | undefined = lasts(state, food, now),
): OrderBy | undefined => {
  if (!lasting) return undefined
  const bareNight = earlier(lasting.bareNight, bareSince(state, food, now) ?? lasting.bareNight)
  const { leadDays, cushionDays } = orderingAt(state, now)
  return { day: addDays(bareNight, -leadDays - cushionDays), bareNight, leadDays, cushionDays }
}

/** Where a dose is owed and there is nothing to give, the night it was due: seen from tonight that night would move on. */
const bareSince = (state: State, food: FoodId, now: Moment): Day | undefined => {
  const sources = sourcesOf(state, food, now)
  const owed = plansAt(state, now).flatMap((plan) => {
    const tank = plan.food === food ? tankKept(state, plan.tank, now) : undefined
    const due = tank && dueOf(state, plan, now)
    if (!due) return []
    const tonight = nightOf(now, tank)
    // A fixed night that has gone by is over for the dose, and not for whoever asks since when there is none.
    const usual = plan.rhythm === 'fixedNights' ? usualAfter(state, plan, due.lastNight) : due.next
    const since = later(later(usual, due.heldUntil ?? usual), nightOf(goesOnSince(state, plan, now), tank))
    return since < tonight && servings(sources, plan.amount, tonight).length === 0 ? [since] : []
  })
  return owed.length > 0 ? owed.reduce(earlier) : undefined
}
