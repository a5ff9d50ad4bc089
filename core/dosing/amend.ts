/** A dose is put right: another tank, or where it came from. Crossed out and written again, in one append. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import { later } from '../basis/days.ts'
import type { BottleId, TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { BottleOpened } from '../food/facts.ts'
import { type FoodState, foodAt, liquidLeft } from '../food/state.ts'
import type { AnyFact, Entry, EntryStruckOut } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { nightOf, type TankState, tankAt } from '../tank/state.ts'
import { bandOf } from './band.ts'
import type { DoseGiven, DoseGivenOffPlan, DoseSetAside, ServedAny, Taken } from './facts.ts'
import { type DoseRefusal, inOne, openings, partFor, rangeRefusal, type SharedDoseAsked } from './give.ts'
import { slipReadings } from './slip.ts'
import { type DosingState, marksOf } from './state.ts'

type State = TankState & FoodState & DosingState & { readonly history: History<AnyFact> }
type Dose = DoseGiven | DoseGivenOffPlan | DoseSetAside

export type AmendRefusal =
  | { readonly why: 'noSuchEntry' | 'alreadyCrossedOut' | 'noSuchTank' }
  | {
      readonly why: 'moreThanBottleHolds'
      readonly bottle: BottleId
      readonly holds: Microlitres
      readonly asked: Microlitres
    }
/** In the tank it is now said to have reached, it is asked about as a dose of that size would be. */
export type OtherTankRefusal =
  | AmendRefusal
  | Extract<DoseRefusal, { readonly why: 'alreadyGiven' | 'aboveRange' | 'farAboveRange' }>
type MoveAsked = {
  readonly entry: Stamp
  readonly from: TankId
  readonly to: TankId
} & Pick<SharedDoseAsked, 'again' | 'sure' | 'why'>
export type Amended = readonly [EntryStruckOut, Dose]
/** A sealed bottle that it turns out to have come from is open. */
export type TakenUp = readonly (EntryStruckOut | BottleOpened | Dose)[]

const isDose = (entry: Entry<AnyFact>): entry is Entry<Dose> =>
  entry.fact.kind === 'doseGiven' || entry.fact.kind === 'doseGivenOffPlan' || entry.fact.kind === 'doseSetAside'

const standing = ({ history }: State, id: Stamp): Result<Dose, AmendRefusal> => {
  const entry = history.all.find((other) => other.id === id)
  if (!entry || !isDose(entry)) return refuse({ why: 'noSuchEntry' })
  return history.struck.has(id) ? refuse({ why: 'alreadyCrossedOut' }) : ok(entry.fact)
}

/** Written anew under the kind its parts ask for; a dose set aside is taken up. */
const writtenAgain = (
  dose: Dose,
  served: readonly ServedAny[],
  taken: readonly Taken[],
): DoseGiven | DoseGivenOffPlan => {
  const { at, food, fromAside, why } = dose
  const told = { at, food, taken, ...(fromAside ? { fromAside } : {}), ...(why ? { why } : {}) }
  const onPlan = served.flatMap((part) => (part.plan ? [{ ...part, plan: part.plan }] : []))
  return onPlan.length === served.length
    ? { kind: 'doseGiven', ...told, served: onPlan }
    : { kind: 'doseGivenOffPlan', ...told, served }
}

/** It went into another tank: both are reckoned again, the stock is as it was. */
export const moveDose = (
  state: State,
  { entry, from, to, ...told }: MoveAsked,
  now: Moment,
): Result<Amended, OtherTankRefusal> => {
  const found = standing(state, entry)
  if (!found.ok) return found
  const why = told.why ?? found.value.why
  const dose = ok({ ...found.value, ...(why ? { why } : {}) })
  const tank = tankAt(state, to, dose.value.at)
  if (!tank || from === to || dose.value.served.every((part) => part.tank !== from))
    return refuse({ why: 'noSuchTank' })
  const moved = dose.value.served.map(
    (part): ServedAny =>
      part.tank === from
        ? { ...partFor(state, to, dose.value.food, part.amount, now), night: nightOf(dose.value.at, tank) }
        : part,
  )
  const served = inOne(moved)
  const part = served.find((other) => other.tank === to)
  const asked = part && moveDoubt(state, dose.value, part, { entry, ...told }, now)
  if (asked) return refuse(asked)
  return ok([
    { kind: 'entryStruckOut', at: now, target: entry, why: 'wrongTank' },
    // Set aside it stays: which tank it was says nothing of the bottle.
    dose.value.kind === 'doseSetAside' ? { ...dose.value, served } : writtenAgain(dose.value, served, dose.value.taken),
  ])
}

const moveDoubt = (
  state: State,
  { at, food, why }: Dose,
  { tank, plan, night, amount }: ServedAny,
  { entry, again, sure }: Omit<MoveAsked, 'from' | 'to'>,
  now: Moment,
): OtherTankRefusal | undefined => {
  // A share of the same act is no other dose.
  const before = plan && marksOf(state, plan, night).findLast((mark) => mark.what === 'given' && mark.entry !== entry)
  if (before && !again) return { why: 'alreadyGiven', tank, night, mark: before }
  const confirmed = { ...(sure === undefined ? {} : { sure }), ...(why === undefined ? {} : { why }) }
  return rangeRefusal(state, { at, food, ...confirmed }, { tank, plan, amount }, now)
}

export type HowItWas =
  /** More was in it than the book knew: what the book has is taken, and the bottle is empty. */
  | { readonly is: 'bottleHeldMore' }
  | { readonly is: 'fromAnother'; readonly bottle: BottleId }
  /** A slip of the decimal point. */
  | { readonly is: 'amount'; readonly amount: Microlitres }

/** A dose that was set aside is taken up again, as she now says it was. */
export const takeUp = (
  state: State,
  { entry, how }: { readonly entry: Stamp; readonly how: HowItWas },
  now: Moment,
): Result<TakenUp, AmendRefusal> => {
  const dose = standing(state, entry)
  if (!dose.ok) return dose
  const { served, taken } = dose.value
  const holds = (id: BottleId): Microlitres => {
    const bottle = state.bottles.get(id)
    return bottle ? liquidLeft(bottle) : microlitres(0)
  }
  const capped = (part: Taken): Taken =>
    part.from === 'bottle' ? { ...part, amount: microlitres(Math.min(part.amount, holds(part.bottle))) } : part
  const other = (part: Taken): Taken =>
    part.from === 'bottle' && how.is === 'fromAnother' ? { ...part, bottle: how.bottle } : part
  // Shared between tanks it is shared as it was.
  const poured = pouredIn(dose.value)
  const scaled = (amount: Microlitres): Microlitres =>
    how.is === 'amount' && poured > 0 ? microlitres(Math.round((amount * how.amount) / poured)) : amount
  const slipped = (part: Taken): Taken => (part.from === 'bottle' ? { ...part, amount: scaled(part.amount) } : part)
  const sources = taken.map(how.is === 'bottleHeldMore' ? capped : how.is === 'fromAnother' ? other : slipped)
  if (how.is !== 'bottleHeldMore')
    for (const part of sources)
      if (part.from === 'bottle' && part.amount > holds(part.bottle))
        return refuse({
          why: 'moreThanBottleHolds',
          bottle: part.bottle,
          holds: holds(part.bottle),
          asked: part.amount,
        })
  const given = served.map((part) => ({ ...part, amount: scaled(part.amount) }))
  return ok([
    { kind: 'entryStruckOut', at: now, target: entry, why: 'mistake' },
    ...openings(state, sources, served.map(({ night }) => night).reduce(later), dose.value.at),
    writtenAgain(dose.value, given, sources),
  ])
}

const pouredIn = ({ taken }: Pick<Dose, 'taken'>): number =>
  taken.reduce((sum, part) => (part.from === 'bottle' ? sum + part.amount : sum), 0)

/** What a dose set aside may have been: a slip of the decimal point that the bottle holds and the tanks can take. */
export const slipsOf = (state: TankState & FoodState, dose: DoseSetAside): readonly Microlitres[] => {
  const poured = pouredIn(dose)
  const food = foodAt(state, dose.food, dose.at)
  const tops = dose.served.map(({ tank: id }) => {
    const tank = tankAt(state, id, dose.at)
    return (tank && food && bandOf(tank, food)?.high) ?? 0
  })
  const held = (amount: Microlitres): boolean =>
    dose.taken.every((part) => {
      const bottle = part.from === 'bottle' ? state.bottles.get(part.bottle) : undefined
      return !bottle || (part.from === 'bottle' && (part.amount * amount) / poured <= liquidLeft(bottle))
    })
  return slipReadings(
    microlitres(poured),
    tops.reduce((sum, top) => sum + top, 0),
  ).filter(held)
}

/** Other bottles of the food that hold as much by the book. */
export const bottlesThatHold = (state: FoodState, dose: DoseSetAside): readonly BottleId[] => {
  const poured = pouredIn(dose)
  const named = new Set(dose.taken.flatMap((part) => (part.from === 'bottle' ? [part.bottle] : [])))
  return [...state.bottles.values()]
    .filter((bottle) => bottle.recorded.food === dose.food && !named.has(bottle.id) && liquidLeft(bottle) >= poured)
    .map(({ id }) => id)
}
