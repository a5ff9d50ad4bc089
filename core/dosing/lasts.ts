/** How long the food lasts: the coming dose nights of every tank that shares it, walked one by one. */
import { byText } from '../basis/compare.ts'
import { addDays, type Day, later } from '../basis/days.ts'
import type { FoodId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import { nightOf, type TankState, tankAt } from '../tank/state.ts'
import { nextDue } from './due.ts'
import { type Serving, type Source, servings, sourcesOf } from './serve.ts'
import { type DosingState, plansAt } from './state.ts'

export type Lasts = {
  /** Doses given on the way. */
  readonly doses: number
  /** The last dose night that is served; undefined when not even the first is. */
  readonly lastNight: Day | undefined
  /** The first due night with nothing usable. */
  readonly bareNight: Day
  /** What passes its last good day, or is too little for a dose, before it is used. */
  readonly wasted: readonly Source[]
  /** What ends it: nothing left, or food left that is past its time. */
  readonly ends: 'food' | 'time'
}

/** The source after a serving; a sealed bottle opened on the way gets the last good day of an open one. */
const after = ({ source, left }: Serving, night: Day): Source =>
  source.from === 'bottle' && source.sealed
    ? { ...source, left, sealed: false, lastGood: source.lastGoodIfOpened(night) }
    : { ...source, left }

/** Undefined where no plan feeds this food. */
export const lasts = (state: FoodState & DosingState & TankState, food: FoodId, now: Moment): Lasts | undefined => {
  const rounds = plansAt(state, now).flatMap((plan) => {
    const tank = tankAt(state, plan.tank, now)
    if (plan.food !== food || !tank) return []
    return [{ plan, next: later(nextDue(plan, state.lastNight.get(plan.plan)), nightOf(now, tank)) }]
  })

  let sources = sourcesOf(state, food, now)
  let doses = 0
  let lastNight: Day | undefined
  let bareNight: Day | undefined
  const waiting = new Set(rounds)
  while (waiting.size > 0) {
    const [round] = [...waiting].sort((a, b) => byText(a.next, b.next) || byText(a.plan.plan, b.plan.plan))
    if (!round) break
    const [serving] = servings(sources, round.plan.amount, round.next)
    if (!serving) {
      // A tank whose dose is larger may go without while a smaller one is still fed.
      bareNight ??= round.next
      waiting.delete(round)
      continue
    }
    const used = after(serving, round.next)
    sources = sources.map((source) => (source === serving.source ? used : source))
    doses += 1
    if (bareNight === undefined) lastNight = round.next
    round.next = addDays(round.next, round.plan.everyNights)
  }
  if (bareNight === undefined) return undefined
  const wasted = sources.filter(({ left }) => left > 0)
  return {
    doses,
    lastNight,
    bareNight,
    wasted,
    ends: wasted.length > 0 ? 'time' : 'food',
  }
}
