/** The answers to the one question about dose nights that went by without a word. */

import { type Microlitres, microlitres } from '../basis/amounts.ts'
import type { Day } from '../basis/days.ts'
import type { FoodId, LotId, PlanId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import { type FoodState, mostPortions } from '../food/state.ts'
import { gather } from '../ledger/gather.ts'
import { lampOut } from '../tank/lamp.ts'
import { type TankState, tankAt } from '../tank/state.ts'
import { portionsPerDose } from './cover.ts'
import type { DoseGiven, NightsCounted, NightsMissed, PlanMade, Served, Taken } from './facts.ts'
import { saidMissed } from './openNights.ts'
import { seenAfter } from './outAlready.ts'
import { afterwards, reaching, type Serving, type Source, servings, sourcesOf } from './serve.ts'
import { type DosingState, type NightRange, planAt } from './state.ts'

type State = TankState & FoodState & DosingState

/** The nights of one plan that an answer is about. */
export type Round = { readonly plan: PlanId; readonly nights: readonly Day[] }
export type RoundRefusal =
  | { readonly why: 'noSuchPlan' }
  | { readonly why: 'noNights' }
  /** Another phone or tab has written something for one of them since. */
  | { readonly why: 'nightKnown'; readonly night: Day }

type Known = { readonly plan: PlanMade; readonly nights: readonly Day[] }

const known = (state: State, rounds: readonly Round[], now: Moment): Result<readonly Known[], RoundRefusal> => {
  const all: Known[] = []
  for (const { plan: id, nights } of rounds) {
    const plan = planAt(state, id, now)
    if (!plan) return refuse({ why: 'noSuchPlan' })
    const written = nights.find((night) => state.nights.get(id)?.has(night) || saidMissed(state, id, night))
    if (written) return refuse({ why: 'nightKnown', night: written })
    if (nights.length > 0) all.push({ plan, nights })
  }
  return all.length > 0 ? ok(all) : refuse({ why: 'noNights' })
}

/** What was seen by eye since is what was left after those nights: they take nothing off it any more. */
const seenSince = (state: State, { taken }: Serving, at: Moment): boolean => {
  const thing = taken.from === 'portions' ? state.lots.get(taken.lot) : state.bottles.get(taken.bottle)
  return thing !== undefined && seenAfter(thing, at)
}

/** There already in a night, as far as its dates tell. */
const thereBy =
  (night: Day) =>
  ({ since }: Source): boolean =>
    since === undefined || since <= night

const addTaken = (all: Taken[], part: Taken) => {
  const at = all.findIndex((other) =>
    part.from === 'portions'
      ? other.from === 'portions' && other.lot === part.lot
      : other.from === 'bottle' && other.bottle === part.bottle,
  )
  const before = all[at]
  if (before?.from === 'portions' && part.from === 'portions') all[at] = { ...before, count: before.count + part.count }
  else if (before?.from === 'bottle' && part.from === 'bottle')
    all[at] = { ...before, amount: microlitres(before.amount + part.amount) }
  else all.push(part)
}

const asUsual = (state: State, food: FoodId, rounds: readonly Known[], now: Moment): DoseGiven => {
  const served: Served[] = []
  const taken: Taken[] = []
  let sources = sourcesOf(state, food, now)
  const nights = rounds
    .flatMap(({ plan, nights: all }) => all.map((night) => ({ plan, night })))
    .sort((a, b) => (a.night < b.night ? -1 : a.night > b.night ? 1 : 0))
  for (const { plan, night } of nights) {
    const tank = tankAt(state, plan.tank, now)
    const [serving] = servings(sources.filter(thereBy(night)), plan.amount, night)
    served.push({ tank: plan.tank, plan: plan.plan, night, amount: serving?.amount ?? plan.amount })
    if (!serving) addAgain(taken, plan.amount, state)
    if (!serving || !tank || seenSince(state, serving, lampOut(state, tank, night))) continue
    sources = sources.map((source) => (source === serving.source ? afterwards(serving, night) : source))
    addTaken(taken, serving.taken)
  }
  return { kind: 'doseGiven', at: now, food, served, taken }
}

/** Nothing is left by the book, and it was given all the same: out of what was used last, which is then asked about. */
const addAgain = (all: Taken[], amount: Microlitres, { lots }: FoodState) => {
  const last = all.at(-1)
  if (last?.from === 'bottle') addTaken(all, { ...last, amount })
  const each = last?.from === 'portions' ? lots.get(last.lot)?.made.each : undefined
  if (last?.from === 'portions' && each) addTaken(all, { ...last, count: portionsPerDose(amount, each) })
}

/** It went on as usual: one entry for each food, with every night and what it took, first to expire first. */
export const keptGoing = (
  state: State,
  rounds: readonly Round[],
  now: Moment,
): Result<readonly DoseGiven[], RoundRefusal> => {
  const all = known(state, rounds, now)
  if (!all.ok) return all
  const byFood = new Map<FoodId, Known[]>()
  for (const round of all.value) gather(byFood, round.plan.food, round)
  return ok([...byFood].map(([food, of]) => asUsual(state, food, of, now)))
}

/** From and to, as often as a night that is known lies between: of that one nothing is said. */
export const nightRanges = (
  { nights: known }: DosingState,
  plan: PlanId,
  nights: readonly Day[],
): readonly NightRange[] => {
  const runs: NightRange[] = []
  const there = [...(known.get(plan)?.keys() ?? [])]
  for (const night of [...nights].sort()) {
    const run = runs.at(-1)
    if (run && !there.some((other) => run.to < other && other < night)) runs[runs.length - 1] = { ...run, to: night }
    else runs.push({ from: night, to: night })
  }
  return runs
}

/** Nothing was given. The round waited: tonight may be due. */
export const stoppedFeeding = (
  state: State,
  rounds: readonly Round[],
  now: Moment,
): Result<readonly NightsMissed[], RoundRefusal> => {
  const all = known(state, rounds, now)
  if (!all.ok) return all
  return ok(
    all.value.flatMap(({ plan: { plan, tank, food }, nights }) =>
      nightRanges(state, plan, nights).map(
        (range): NightsMissed => ({ kind: 'nightsMissed', at: now, plan, tank, food, ...range }),
      ),
    ),
  )
}

export type NightsCountRefusal =
  | RoundRefusal
  | { readonly why: 'noSuchLot' }
  | { readonly why: 'tooMany' }
  | { readonly why: 'notACount'; readonly asked: number }

/** She counted: what is gone was given in those nights, on which of them is not invented. One food at a time. */
export const nightsByCount = (
  state: State,
  asked: {
    readonly rounds: readonly Round[]
    readonly lots: readonly { readonly lot: LotId; readonly counted: number }[]
  },
  now: Moment,
): Result<readonly [NightsCounted], NightsCountRefusal> => {
  const all = known(state, asked.rounds, now)
  if (!all.ok) return all
  const [first] = all.value
  if (!first) return refuse({ why: 'noNights' })
  if (all.value.some(({ plan }) => plan.food !== first.plan.food)) return refuse({ why: 'noSuchPlan' })
  const lots: { lot: LotId; counted: number; book: number }[] = []
  let doses = 0
  let amount = 0
  for (const { lot, counted } of asked.lots) {
    const there = state.lots.get(lot)
    if (there?.made.food !== first.plan.food || lots.some((other) => other.lot === lot))
      return refuse({ why: 'noSuchLot' })
    if (!Number.isInteger(counted) || counted < 0) return refuse({ why: 'notACount', asked: counted })
    if (counted > mostPortions) return refuse({ why: 'tooMany' })
    const used = Math.max(0, there.left - counted)
    lots.push({ lot, counted, book: there.left })
    const { each } = there.made
    const perDose = portionsPerDose(first.plan.amount, each)
    doses += used / perDose
    amount += Math.round((used / perDose) * reaching(perDose, each, first.plan.amount))
  }
  const rounds = all.value.flatMap(({ plan: { plan, tank }, nights }) =>
    nightRanges(state, plan, nights).map((range) => ({ plan, tank, ...range })),
  )
  return ok([
    {
      kind: 'nightsCounted',
      at: now,
      food: first.plan.food,
      rounds,
      lots,
      doses: Math.ceil(doses),
      amount: microlitres(amount),
    },
  ])
}
