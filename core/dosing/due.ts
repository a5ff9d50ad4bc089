/** Which night is a dose night. */
import { addDays, type Day, daysBetween, later } from '../basis/days.ts'
import type { Moment } from '../basis/zones.ts'
import { type FoodState, foodAt } from '../food/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { nightOf, type TankState, tankAt } from '../tank/state.ts'
import { bandOf, quietRatio } from './band.ts'
import type { PlanMade } from './facts.ts'
import { type DosingState, holdOf, lastNightBy, marksOf, planAt } from './state.ts'

type State = TankState & FoodState & DosingState
type Rhythm = Pick<PlanMade, 'firstNight' | 'everyNights' | 'rhythm'>

/** The first of the fixed nights that is not before a night: those so many nights apart, counted from the first. */
export const fixedFrom = ({ firstNight, everyNights }: Rhythm, night: Day): Day => {
  const on = daysBetween(firstNight, night)
  return on <= 0 ? firstNight : addDays(firstNight, Math.ceil(on / everyNights) * everyNights)
}

/**
 * The dose night after the last one anything is known of. From the last dose it is so many nights later: missed nights do
 * not stack, and a skipped or forgotten one counts as if the round went on, since giving less is safe. Fixed nights go on
 * whatever was given.
 */
const nextDue = (plan: Rhythm, lastNight: Day | undefined): Day => {
  if (lastNight === undefined) return plan.firstNight
  return plan.rhythm === 'fixedNights'
    ? fixedFrom(plan, addDays(lastNight, 1))
    : later(plan.firstNight, addDays(lastNight, plan.everyNights))
}

export type Overfed = {
  readonly night: Day
  /** What reached the tank that night, microlitres. */
  readonly total: number
  /** The top of the label's range on that day. */
  readonly top: number
  /** A whole round later than usual. */
  readonly suggested: Day
  readonly usual: Day
  /** What she decided, if she has. */
  readonly chosen: Day | undefined
}

/**
 * A night in which more reached the tank than the label's range and the plan account for, each by a quarter. One dose that
 * keeps to the plan never does; two portions inside the range are no event either.
 */
const overfedOn = (state: State, plan: PlanMade, night: Day): Overfed | undefined => {
  const given = marksOf(state, plan.plan, night).filter(({ what }) => what === 'given')
  const [first] = given
  if (!first) return undefined
  const total = given.reduce((sum, { amount }) => sum + amount, 0)
  // By the plan of that evening: one made smaller since must not make an event of it.
  const planned = planAt(state, plan.plan, first.at) ?? plan
  if (total <= planned.amount * quietRatio) return undefined
  const tank = tankAt(state, plan.tank, first.at)
  const food = foodAt(state, plan.food, first.at)
  const top = tank && food && bandOf(tank, food)?.high
  if (top === undefined || total <= top * quietRatio) return undefined
  const usual = nextDue(plan, night)
  const chosen = state.choices.get(plan.plan)?.findLast(({ after }) => after === night)?.next
  return { night, total, top, suggested: addDays(usual, plan.everyNights), usual, chosen }
}

export type Due = {
  /** The next dose night: tonight, or later; with a dose from an earlier night owed, that night. */
  readonly next: Day
  readonly lastNight: Day | undefined
  /** The last night was too much: the next one waits longer unless she chose otherwise. */
  readonly overfed: Overfed | undefined
  /** Nothing before this night, by her wish; gone once she has lifted the hold. */
  readonly heldUntil: Day | undefined
}

/** How a plan stands in a night. A hold, and a night that was too much, put off what the rhythm asks for. */
export const dueOf = (state: State, plan: PlanMade, now: Moment): Due | undefined => {
  const tank = tankAt(state, plan.tank, now)
  if (!tank) return undefined
  const night = nightOf(now, tank)
  return dueAfter(state, plan, lastNightBy(state, plan.plan, night), { tank, night, now })
}

/** The dose night after one, hold or not: a night that was too much puts it off. */
export const usualAfter = (state: State, plan: PlanMade, lastNight: Day | undefined): Day =>
  usualOf(plan, lastNight, lastNight === undefined ? undefined : overfedOn(state, plan, lastNight))

const usualOf = (plan: PlanMade, lastNight: Day | undefined, overfed: Overfed | undefined): Day =>
  overfed ? (overfed.chosen ?? overfed.suggested) : nextDue(plan, lastNight)

type Evening = { readonly tank: TankDescribed; readonly night: Day; readonly now: Moment }

const dueAfter = (state: State, plan: PlanMade, lastNight: Day | undefined, { tank, night, now }: Evening): Due => {
  const overfed = lastNight === undefined ? undefined : overfedOn(state, plan, lastNight)
  const usual = usualOf(plan, lastNight, overfed)
  const held = holdOf(state, plan.plan, now)
  // A hold that ended before the last dose has nothing more to say.
  const holds = held !== undefined && (lastNight === undefined || held.until > lastNight) ? held.until : undefined
  // "Go on now" is a hold until the night it was said in: nobody is asked whether it is over.
  const lifted = held !== undefined && held.until <= nightOf(held.at, tank)
  const put = holds === undefined ? usual : later(usual, holds)
  const fixed = plan.rhythm === 'fixedNights'
  // A fixed night that has gone by is over; a hold ends on one of them.
  const next = fixed ? fixedFrom(plan, later(put, night)) : put
  return { next, lastNight, overfed, heldUntil: lifted ? undefined : holds }
}

/** The dose nights from tonight to a night, both included, if each is kept. */
export const nightsUntil = (state: State, plan: PlanMade, until: Day, now: Moment): readonly Day[] => {
  const tank = tankAt(state, plan.tank, now)
  const due = dueOf(state, plan, now)
  if (!tank || !due) return []
  const nights: Day[] = []
  for (let night = later(due.next, nightOf(now, tank)); night <= until; night = addDays(night, plan.everyNights))
    nights.push(night)
  return nights
}
