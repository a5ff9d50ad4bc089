/** Recording a dose. What has happened can always be recorded, if need be once confirmed. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import { type Day, daysBetween, later } from '../basis/days.ts'
import type { BottleId, FoodId, LotId, PlanId, TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { BottleOpened, FoodSmelled } from '../food/facts.ts'
import { type Aside, bottleLastGood, type FoodState, foodAt, liquidLeft, lotLastGood } from '../food/state.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import { nightOf, type TankState, tankAt } from '../tank/state.ts'
import { absurdRatio, bandOf, quietRatio } from './band.ts'
import type { DoseGiven, DoseGivenOffPlan, DoseSetAside, Served, ServedAny, Taken } from './facts.ts'
import { type DosingState, marksOf, type NightMark, planAt, plansAt } from './state.ts'

type State = TankState & FoodState & DosingState

/** One tank's share. Without a plan for this food it is recorded all the same, and nothing is due of it. */
export type DosePart = { readonly tank: TankId; readonly plan?: PlanId; readonly amount: Microlitres }

type Told = {
  readonly taken: readonly Taken[]
  readonly at: Moment
  /** She was asked about it and it is so. */
  readonly sure?: boolean
  /** More than the bottle holds by the book is set aside: whoever is asked how that was before says so. Absent: as `sure`. */
  readonly aside?: boolean
  /** The bottle held more than the book knew: what the book has is taken, and it is empty. */
  readonly heldMore?: boolean
  /** There is a dose for this night already, and this is another. */
  readonly again?: boolean
  /** It was set aside, she was told so, and it was given. */
  readonly asideIsFine?: boolean
  readonly why?: string
}
export type SharedDoseAsked = Told & { readonly food: FoodId; readonly parts: readonly DosePart[] }
export type DoseAsked = Told & {
  readonly plan: PlanId
  /** What reached the tank. */
  readonly amount: Microlitres
}

export type DoseRefusal =
  | { readonly why: 'noSuchPlan' | 'nothingGiven' | 'wholePortions' }
  | { readonly why: 'notYet'; readonly at: Moment }
  /** The same touch twice on a wet screen. */
  | { readonly why: 'justRecorded'; readonly mark: NightMark }
  | { readonly why: 'alreadyGiven'; readonly tank: TankId; readonly night: Day; readonly mark: NightMark }
  | RangeRefusal
  | {
      readonly why: 'moreThanBottleHolds'
      readonly bottle: BottleId
      readonly holds: Microlitres
      readonly asked: Microlitres
    }
  | { readonly why: 'pastItsDay'; readonly lastGood: Day; readonly days: number }
  /** `sniff`: the last one, if there was one. */
  | {
      readonly why: 'fromAside'
      readonly thing: BottleId | LotId
      readonly aside: Aside
      readonly sniff: FoodSmelled | undefined
    }

export type RangeRefusal = {
  readonly why: 'aboveRange' | 'farAboveRange'
  readonly tank: TankId
  readonly asked: Microlitres
  readonly ratio: number
  readonly top: number
}

/** Two touches within this are one. */
const doubleTouch = 5_000

export type DoseFact = DoseGiven | DoseGivenOffPlan | DoseSetAside | BottleOpened

/** One tank by its plan: the large button. */
export const giveDose = (
  state: State,
  { plan: id, amount, ...told }: DoseAsked,
  now: Moment,
): Result<readonly DoseFact[], DoseRefusal> => {
  const plan = planAt(state, id, now)
  if (!plan) return refuse({ why: 'noSuchPlan' })
  return giveShared(state, { ...told, food: plan.food, parts: [{ tank: plan.tank, plan: id, amount }] }, now)
}

/**
 * One act, however many tanks shared it. The night of each is its own, by the wall clock there. A dose that keeps to the
 * plan is never questioned; a larger one or a past day is confirmed once with `sure`, one far above the range with a word
 * of why as well; what is set aside is asked about by itself, since no amount makes up for it. More than the bottle holds is set aside when she is sure: noted, asked about, not taken off the stock.
 */
export const giveShared = (
  state: State,
  asked: SharedDoseAsked,
  now: Moment,
): Result<readonly DoseFact[], DoseRefusal> => {
  if (asked.parts.length === 0 || asked.parts.some(({ amount }) => amount <= 0)) return refuse({ why: 'nothingGiven' })
  if (asked.taken.some((part) => part.from === 'portions' && !(Number.isInteger(part.count) && part.count > 0)))
    return refuse({ why: 'wholePortions' })
  if (asked.at > now + clockGrace) return refuse({ why: 'notYet', at: asked.at })
  const served: ServedAny[] = []
  for (const { tank: id, plan, amount } of inOne(asked.parts)) {
    const tank = tankAt(state, id, asked.at)
    if (!tank || !foodAt(state, asked.food, asked.at)) return refuse({ why: 'noSuchPlan' })
    if (plan && !state.plans.get(plan)?.some((made) => made.tank === id && made.food === asked.food))
      return refuse({ why: 'noSuchPlan' })
    served.push({ tank: id, ...(plan ? { plan } : {}), night: nightOf(asked.at, tank), amount })
  }
  for (const part of served) {
    const refusal = partRefusal(state, asked, part, now)
    if (refusal) return refuse(refusal)
  }
  const night = served.map((part) => part.night).reduce(later)
  const taken = asked.heldMore ? cappedByBook(state, asked.taken) : asked.taken
  const empty = emptier(state, taken)
  if (empty && !(asked.aside ?? asked.sure)) return refuse(empty)
  const past = asked.sure ? undefined : pastRefusal(state, asked, night, now)
  if (past) return refuse(past)
  const aside = asideRefusal(state, asked)
  if (aside && !asked.asideIsFine) return refuse(aside)
  const { at, food, why } = asked
  const told = { at, food, taken, ...(aside ? { fromAside: true as const } : {}), ...(why ? { why } : {}) }
  if (empty) return ok([{ kind: 'doseSetAside', ...told, served }])
  const onPlan = served.flatMap((part): Served[] => (part.plan ? [{ ...part, plan: part.plan }] : []))
  return ok([
    ...openings(state, taken, night, at),
    onPlan.length === served.length
      ? { kind: 'doseGiven', ...told, served: onPlan }
      : { kind: 'doseGivenOffPlan', ...told, served },
  ])
}

/** A tank named twice had both: one part, and judged as one. */
export const inOne = <Part extends DosePart>(parts: readonly Part[]): readonly Part[] => {
  const byTank = new Map<TankId, Part>()
  for (const part of parts) {
    const before = byTank.get(part.tank)
    byTank.set(part.tank, before ? { ...part, ...before, amount: microlitres(before.amount + part.amount) } : part)
  }
  return [...byTank.values()]
}

const partRefusal = (
  state: State,
  asked: SharedDoseAsked,
  { tank: id, plan: planned, night, amount }: ServedAny,
  now: Moment,
): DoseRefusal | undefined => {
  const before = planned && marksOf(state, planned, night).findLast(({ what }) => what === 'given')
  if (before && !asked.again) {
    const touch = Math.abs(asked.at - before.at) < doubleTouch
    return touch ? { why: 'justRecorded', mark: before } : { why: 'alreadyGiven', tank: id, night, mark: before }
  }
  return rangeRefusal(state, asked, { tank: id, plan: planned, amount }, now)
}

/** What is asked of an amount that is more than its plan and above the range of the tank it is for. */
export const rangeRefusal = (
  state: State,
  asked: Pick<SharedDoseAsked, 'at' | 'food' | 'sure' | 'why'>,
  {
    tank: id,
    plan: planned,
    amount,
  }: { readonly tank: TankId; readonly plan: PlanId | undefined; readonly amount: Microlitres },
  now: Moment,
): RangeRefusal | undefined => {
  const tank = tankAt(state, id, asked.at)
  const food = foodAt(state, asked.food, asked.at)
  const top = tank && food && bandOf(tank, food)?.high
  const plan = planned && planAt(state, planned, now)
  if (top === undefined || (plan && amount <= plan.amount)) return undefined
  const ratio = amount / top
  const limit = { tank: id, asked: amount, ratio, top }
  if (ratio > absurdRatio && !(asked.sure && asked.why)) return { why: 'farAboveRange', ...limit }
  return ratio > quietRatio && !asked.sure ? { why: 'aboveRange', ...limit } : undefined
}

const emptier = (state: FoodState, taken: readonly Taken[]): DoseRefusal | undefined => {
  for (const part of taken) {
    const bottle = part.from === 'bottle' ? state.bottles.get(part.bottle) : undefined
    if (part.from === 'bottle' && bottle && part.amount > liquidLeft(bottle))
      return { why: 'moreThanBottleHolds', bottle: bottle.id, holds: liquidLeft(bottle), asked: part.amount }
  }
  return undefined
}

const cappedByBook = (state: FoodState, taken: readonly Taken[]): readonly Taken[] =>
  taken.map((part) => {
    const bottle = part.from === 'bottle' ? state.bottles.get(part.bottle) : undefined
    return part.from === 'bottle' && bottle
      ? { ...part, amount: microlitres(Math.min(part.amount, liquidLeft(bottle))) }
      : part
  })

const pastRefusal = (state: State, asked: SharedDoseAsked, night: Day, now: Moment): DoseRefusal | undefined => {
  for (const part of asked.taken) {
    const lastGood = lastGoodOf(state, asked.food, part, now)
    if (lastGood !== undefined && lastGood < night)
      return { why: 'pastItsDay', lastGood, days: daysBetween(lastGood, night) }
  }
  return undefined
}

/** Set aside when it was given, not only since. */
const asideRefusal = (state: FoodState, { taken, at }: SharedDoseAsked): DoseRefusal | undefined => {
  for (const part of taken) {
    const thing = part.from === 'bottle' ? state.bottles.get(part.bottle) : state.lots.get(part.lot)
    if (thing?.aside && thing.aside.at <= at)
      return { why: 'fromAside', thing: thing.id, aside: thing.aside, sniff: thing.smelled.at(-1) }
  }
  return undefined
}

const lastGoodOf = (state: State, food: FoodId, taken: Taken, now: Moment): Day | undefined => {
  const described = foodAt(state, food, now)
  if (!described) return undefined
  const lot = taken.from === 'portions' ? state.lots.get(taken.lot) : undefined
  const bottle = taken.from === 'bottle' ? state.bottles.get(taken.bottle) : undefined
  return lot ? lotLastGood(lot, described) : bottle && bottleLastGood(bottle, described)
}

/** A sealed bottle that a dose came from is open now. */
export const openings = (state: State, taken: readonly Taken[], night: Day, at: Moment): BottleOpened[] =>
  taken.flatMap((part): BottleOpened[] => {
    const bottle = part.from === 'bottle' ? state.bottles.get(part.bottle) : undefined
    return bottle && bottle.openedOn === undefined
      ? [{ kind: 'bottleOpened', at, bottle: bottle.id, openedOn: night }]
      : []
  })

export type DoseMarks = {
  /** Times the top of the label's range for the tank as it was, where a part was above it by more than a quarter. */
  readonly above: number | undefined
  /** Days past its last good day. */
  readonly past: number | undefined
  /** It was set aside, and given all the same. */
  readonly aside: true | undefined
}

/** What an entry bears visibly: an amount above the range, food past its day. Judged by the tank and food of its time. */
export const doseMarks = (state: State, fact: DoseGiven | DoseGivenOffPlan | DoseSetAside): DoseMarks => {
  const food = foodAt(state, fact.food, fact.at)
  let above: number | undefined
  for (const { tank: id, amount } of fact.served) {
    const tank = tankAt(state, id, fact.at)
    const top = tank && food && bandOf(tank, food)?.high
    if (top && amount / top > quietRatio) above = Math.max(above ?? 0, amount / top)
  }
  let past: number | undefined
  for (const part of fact.taken) {
    const lastGood = lastGoodOf(state, fact.food, part, fact.at)
    for (const { night } of fact.served)
      if (lastGood !== undefined && lastGood < night) past = Math.max(past ?? 0, daysBetween(lastGood, night))
  }
  return { above, past, aside: fact.fromAside }
}

/** The plan a tank has for a food, for whoever shares a portion or puts a wrong tank right. */
export const partFor = (state: State, tank: TankId, food: FoodId, amount: Microlitres, now: Moment): DosePart => {
  const plan = plansAt(state, now).find((going) => going.tank === tank && going.food === food)
  return { tank, amount, ...(plan ? { plan: plan.plan } : {}) }
}
