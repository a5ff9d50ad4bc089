/** How long the food lasts: the coming dose nights of every tank that shares it, walked one by one. */
import { byText } from '../basis/compare.ts'
import { addDays, type Day, later } from '../basis/days.ts'
import type { FoodId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import { nightOf, type TankState, tankKept } from '../tank/state.ts'
import { dueOf } from './due.ts'
import { afterwards, type Source, servingFrom, servings, sourcesOf } from './serve.ts'
import { type DosingState, plansAt } from './state.ts'

export type Lasts = {
  /** Doses given on the way, those of a tank that is still fed when another goes without included. */
  readonly doses: number
  /** The last dose night on which every tank that is due is served; undefined when there is none. */
  readonly lastNight: Day | undefined
  /** The first due night on which a tank finds nothing usable. */
  readonly bareNight: Day
  /** What passes its last good day, or is too little for a dose, before it is used. */
  readonly wasted: readonly Source[]
  /** What ends it: nothing left for a dose, or food for one that is past its time. */
  readonly ends: 'food' | 'time'
}

/** Nights ahead that are walked, a hundred years: food of unknown age lasts for ever on paper, and a screen must not wait. */
const horizon = 36_525

/** Undefined where no plan feeds this food. */
export const lasts = (state: FoodState & DosingState & TankState, food: FoodId, now: Moment): Lasts | undefined => {
  const rounds = plansAt(state, now).flatMap((plan) => {
    const tank = plan.food === food ? tankKept(state, plan.tank, now) : undefined
    const due = tank && dueOf(state, plan, now)
    if (!due) return []
    const night = nightOf(now, tank)
    const next = later(due.next, night)
    return [{ plan, next, end: addDays(next, horizon) }]
  })

  let sources = sourcesOf(state, food, now)
  const served: Day[] = []
  let bareNight: Day | undefined
  let ends: Lasts['ends'] = 'food'
  const waiting = new Set(rounds)
  while (waiting.size > 0) {
    // Of one night, in the order Tonight lists them: sorting keeps it.
    const [round] = [...waiting].sort((a, b) => byText(a.next, b.next))
    if (!round) break
    const { amount } = round.plan
    const [serving] = round.next < round.end ? servings(sources, amount, round.next) : []
    if (!serving) {
      if (bareNight === undefined) {
        bareNight = round.next
        ends = sources.some((source) => servingFrom(source, amount)) ? 'time' : 'food'
      }
      // A tank whose dose is larger may go without while a smaller one is still fed.
      waiting.delete(round)
      continue
    }
    const used = afterwards(serving, round.next)
    sources = sources.map((source) => (source === serving.source ? used : source))
    served.push(round.next)
    round.next = addDays(round.next, round.plan.everyNights)
  }
  if (bareNight === undefined) return undefined
  const bare = bareNight
  return {
    doses: served.length,
    lastNight: served.findLast((night) => night < bare),
    bareNight,
    wasted: sources.filter(({ left }) => left > 0),
    ends,
  }
}
