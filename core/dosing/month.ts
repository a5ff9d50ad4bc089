/** A month's dose nights, if each is kept, with what each takes: what a sheet of paper needs to run the round by itself. */
import { byText } from '../basis/compare.ts'
import { addDays, addMonths, type Day, daysBetween } from '../basis/days.ts'
import type { BottleId, LotId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodDescribed } from '../food/facts.ts'
import { type FoodState, foodAt } from '../food/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lampOut } from '../tank/lamp.ts'
import { type TankState, tanksAt } from '../tank/state.ts'
import { nightsUntil } from './due.ts'
import type { PlanMade } from './facts.ts'
import { afterwards, comesFrom, type Serving, servings, sourcesOf } from './serve.ts'
import { type DosingState, plansAt } from './state.ts'

type State = TankState & FoodState & DosingState

export type Month = { readonly from: Day; readonly to: Day }

/** A sheet for the last few days of a month is thrown away at once. Our own judgement. */
const lastDays = 7

/** This month from today on, and the next; `usual` is the one to offer first. */
export const monthsAhead = (
  today: Day,
): { readonly this: Month; readonly next: Month; readonly usual: 'this' | 'next' } => {
  const first = addMonths(`${today.slice(0, 7)}-01` as Day, 1)
  const to = addDays(first, -1)
  return {
    this: { from: today, to },
    next: { from: first, to: addDays(addMonths(first, 1), -1) },
    usual: daysBetween(today, to) < lastDays ? 'next' : 'this',
  }
}

export type NightAhead = {
  readonly night: Day
  readonly lightsOut: Moment
  /** Undefined: by then nothing usable is left. */
  readonly serving: Serving | undefined
}
export type RoundAhead = {
  readonly plan: PlanMade
  readonly food: FoodDescribed
  readonly nights: readonly NightAhead[]
}
/** One for each tank that is kept; without rounds where no plan feeds it. */
export type TankAhead = { readonly tank: TankDescribed; readonly rounds: readonly RoundAhead[] }

/**
 * The dose nights of a stretch of days, tank by tank. The stock is walked from tonight on, first to expire first out, as
 * `lasts` does: what is used before the stretch begins is gone by then.
 */
export const nightsAhead = (state: State, { from, to }: Month, now: Moment): readonly TankAhead[] => {
  const plans = plansAt(state, now)
  const served = new Map(
    [...new Set(plans.map(({ food }) => food))].flatMap((food) => [...servedUntil(state, plans, food, to, now)]),
  )
  return tanksAt(state, now).map((tank) => ({
    tank,
    rounds: plans.flatMap((plan): RoundAhead[] => {
      const food = plan.tank === tank.tank ? foodAt(state, plan.food, now) : undefined
      if (!food) return []
      const nights = (served.get(plan) ?? [])
        .filter(({ night }) => night >= from)
        .map((each) => ({ ...each, lightsOut: lampOut(state, tank, each.night) }))
      return [{ plan, food, nights }]
    }),
  }))
}

type Served = Pick<NightAhead, 'night' | 'serving'>

/** Night by night over every tank that shares a food, in the order Tonight lists them. */
const servedUntil = (
  state: State,
  plans: readonly PlanMade[],
  food: PlanMade['food'],
  to: Day,
  now: Moment,
): ReadonlyMap<PlanMade, readonly Served[]> => {
  const nights = plans
    .filter((plan) => plan.food === food)
    .flatMap((plan) => nightsUntil(state, plan, to, now).map((night) => ({ plan, night })))
    .sort((a, b) => byText(a.night, b.night))
  let sources = sourcesOf(state, food, now)
  const served = new Map<PlanMade, Served[]>()
  for (const { plan, night } of nights) {
    const [serving] = servings(sources, plan.amount, night)
    if (serving) sources = sources.map((each) => (each === serving.source ? afterwards(serving, night) : each))
    served.set(plan, [...(served.get(plan) ?? []), { night, serving }])
  }
  return served
}

/** One bag or bottle after the other: since when a round takes from it, and for how many doses. */
export type Turn = { readonly serving: Serving; readonly from: Day; readonly to: Day; readonly doses: number }

const thingAndCount = ({ taken }: Serving): readonly [LotId | BottleId, number] => [
  comesFrom(taken),
  taken.from === 'portions' ? taken.count : taken.amount,
]

/** Which bag after which: nights in a row that take the same from the same. */
export const turnsOf = (nights: readonly NightAhead[]): readonly Turn[] => {
  const turns: Turn[] = []
  for (const { night, serving } of nights) {
    if (!serving) continue
    const last = turns.at(-1)
    const same = last && thingAndCount(last.serving).every((part, at) => part === thingAndCount(serving)[at])
    if (last && same) turns[turns.length - 1] = { ...last, to: night, doses: last.doses + 1 }
    else turns.push({ serving, from: night, to: night, doses: 1 })
  }
  return turns
}

/** The first night of a round that finds nothing usable, if there is one among these. */
export const bareAmong = (nights: readonly NightAhead[]): Day | undefined =>
  nights.find(({ serving }) => !serving)?.night

/** Lamps that know nothing of summer time go out at another hour half-way through: nights in a row with one hour. */
export const sameHour = <Hour>(
  nights: readonly NightAhead[],
  hourOf: (night: NightAhead) => Hour,
): readonly { readonly from: Day; readonly hour: Hour }[] => {
  const hours: { readonly from: Day; readonly hour: Hour }[] = []
  for (const each of nights) {
    const hour = hourOf(each)
    if (hours.at(-1)?.hour !== hour) hours.push({ from: each.night, hour })
  }
  return hours
}
