/**
 * The coming dose nights of every tank that shares a food, walked once, in the order they come: what each takes, until no
 * tank finds anything. Whatever is asked of days to come is asked of this walk, so that no two answers can differ. Nights
 * are whole day numbers here, for three years of three tanks are walked while a finger is still on the glass.
 */
import type { Microlitres } from '../basis/amounts.ts'
import { dayFromNumber, dayNumber } from '../basis/days.ts'
import type { FoodId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import { nightOf, type TankState, tankKept } from '../tank/state.ts'
import { dueOf } from './due.ts'
import type { PlanMade, Taken } from './facts.ts'
import { afterwards, goesFirst, type Serving, type Source, servingFrom, sourcesOf } from './serve.ts'
import { type DosingState, plansAt } from './state.ts'

/** Something food is taken from. Nights are days since 1970-01-01. */
export type Walked = {
  /** As it stands when the walk is over: a bottle opened on the way is open. */
  readonly source: Source
  readonly doses: number
  readonly first: number | undefined
  readonly last: number | undefined
}
/** One dose of one tank. */
export type Step = {
  /** The night, in days since 1970-01-01. */
  readonly on: number
  readonly plan: PlanMade
  readonly from: Walked
  readonly taken: Taken
  /** What reaches the tank. */
  readonly amount: Microlitres
}
/** The first due night on which a tank finds nothing usable. */
export type Bare = {
  readonly on: number
  readonly plan: PlanMade
  /** Nothing left for a dose, or food for one that is past its time. */
  readonly ends: 'food' | 'time'
}
export type Walk = {
  /** In the order they come; of one night in the order Tonight lists the tanks. */
  readonly steps: readonly Step[]
  /** In the order of `sourcesOf`. */
  readonly sources: readonly Walked[]
  /** One a plan, the earliest first; never empty. */
  readonly bare: readonly Bare[]
}
/** A plan and its next dose night, in days since 1970-01-01. */
export type WalkRound = { readonly plan: PlanMade; readonly next: number }

/** Nights ahead that are walked, a hundred years: food of unknown age lasts for ever on paper, and a screen must not wait. */
export const horizon = 36_525

/** What is due of a food from tonight on, plan by plan. */
export const roundsOf = (state: FoodState & DosingState & TankState, food: FoodId, now: Moment): readonly WalkRound[] =>
  plansAt(state, now).flatMap((plan): WalkRound[] => {
    const tank = plan.food === food ? tankKept(state, plan.tank, now) : undefined
    const due = tank && dueOf(state, plan, now)
    return due ? [{ plan, next: Math.max(dayNumber(due.next), dayNumber(nightOf(now, tank))) }] : []
  })

/** Undefined where no plan feeds this food. */
export const walk = (state: FoodState & DosingState & TankState, food: FoodId, now: Moment): Walk | undefined => {
  const rounds = roundsOf(state, food, now)
  return rounds.length > 0 ? walkOf(rounds, sourcesOf(state, food, now)) : undefined
}

type Running = { source: Source & { left: number }; until: number; doses: number; first?: number; last?: number }

/** @param rounds not empty */
export const walkOf = (rounds: readonly WalkRound[], sources: readonly Source[]): Walk => {
  const running = sources.map((source): Running => ({ source: { ...source }, until: lastNumber(source), doses: 0 }))
  // Sorted once: only a bottle opened on the way changes its place.
  const queue = [...running].sort((a, b) => a.until - b.until)
  const waiting = rounds.map(({ plan, next }) => ({ plan, next, end: next + horizon }))
  const steps: Step[] = []
  const bare: Bare[] = []
  for (let round = soonest(waiting); round; round = soonest(waiting)) {
    const { plan, next } = round
    // Nights never go back, so what is past its day now is past it for good.
    let past = 0
    while ((queue[past]?.until ?? next) < next) past += 1
    if (past > 0) queue.splice(0, past)
    const found = next < round.end ? firstOf(queue, plan.amount) : undefined
    if (!found) {
      const could = running.some(({ source }) => servingFrom(source, plan.amount))
      bare.push({ on: next, plan, ends: could ? 'time' : 'food' })
      // A tank whose dose is larger may go without while a smaller one is still fed.
      waiting.splice(waiting.indexOf(round), 1)
      continue
    }
    const { from, serving } = found
    steps.push({ on: next, plan, from: from as Walked, taken: serving.taken, amount: serving.amount })
    take(from, serving, next, queue)
    round.next = next + plan.everyNights
  }
  return { steps, sources: running as readonly Walked[], bare }
}

const lastNumber = ({ lastGood }: Source): number =>
  lastGood === undefined ? Number.POSITIVE_INFINITY : dayNumber(lastGood)

/** Of one night the one that is listed first. */
export const soonest = <Due extends { readonly next: number }>(waiting: readonly Due[]): Due | undefined => {
  let found = waiting[0]
  for (const each of waiting) if (found === undefined || each.next < found.next) found = each
  return found
}

/** What goes first and still holds a dose. Only those that share its last good day are weighed against each other. */
const firstOf = (
  queue: readonly Running[],
  amount: Microlitres,
): { readonly from: Running; readonly serving: Serving } | undefined => {
  let from: Running | undefined
  let serving: Serving | undefined
  for (const each of queue) {
    if (from && each.until > from.until) break
    if (from && goesFirst(from.source, each.source, amount) <= 0) continue
    const holds = servingFrom(each.source, amount)
    if (holds) [from, serving] = [each, holds]
  }
  return from && serving && { from, serving }
}

const take = (from: Running, serving: Serving, night: number, queue: Running[]) => {
  from.doses += 1
  from.first ??= night
  from.last = night
  const { source, left } = serving
  if (source.from === 'bottle' && source.sealed) {
    from.source = { ...afterwards(serving, dayFromNumber(night)) }
    from.until = lastNumber(from.source)
    queue.splice(queue.indexOf(from), 1)
    const place = queue.findIndex(({ until }) => until > from.until)
    queue.splice(place < 0 ? queue.length : place, 0, from)
  } else from.source.left = left
  if (left <= 0) queue.splice(queue.indexOf(from), 1)
}
