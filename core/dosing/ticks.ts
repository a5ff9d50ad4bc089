/**
 * "14 ticked": squares ticked with a pen on a bag's label, told to the book later. What the book already had stays; the rest
 * are doses on nights that are not invented.
 */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import { type Day, later } from '../basis/days.ts'
import type { LotId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import { type FoodState, type Lot, portionsLeft } from '../food/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lampOut } from '../tank/lamp.ts'
import { nightOf, type TankState, tankAt } from '../tank/state.ts'
import { portionsPerDose } from './cover.ts'
import { dueOf } from './due.ts'
import type { NightsCounted, PlanMade } from './facts.ts'
import { openNights } from './openNights.ts'
import { reaching } from './serve.ts'
import { squaresOf } from './squares.ts'
import { type DosingState, marksOf, plansAt } from './state.ts'
import { nightRanges, type Round } from './unlogged.ts'

type State = TankState & FoodState & DosingState

export type TicksAsked = {
  readonly lot: LotId
  /** All the squares that are ticked by now, those of doses the book knows included. */
  readonly ticked: number
  /** What is out in another way than as a dose was ticked too, as the label asks. */
  readonly othersTicked: boolean
}
export type TicksRefusal =
  | { readonly why: 'noSuchLot' }
  | { readonly why: 'notACount'; readonly asked: number }
  /** `squares` can be ticked at most. */
  | { readonly why: 'moreThanSquares'; readonly squares: number }
  /** The book has more out than the pen. Were the squares right, `wouldBeLeft` are in the bag. */
  | {
      readonly why: 'fewerThanBook'
      readonly ticked: number
      readonly given: number
      readonly other: number
      readonly wouldBeLeft: number
    }
  /** Nothing that the book does not have. */
  | { readonly why: 'asTheBook'; readonly ticked: number }

export type TicksRead = {
  /** What is left in the bag, and what the book had left, below zero where more was taken than it knew of. */
  readonly counted: number
  readonly book: number
  /** Portions the book has given, and those it learns of now. */
  readonly given: number
  readonly more: number
  readonly doses: number
  readonly amount: Microlitres
  /** The nights they were given on are among these; none where every dose night is known. */
  readonly rounds: readonly Round[]
  /** More doses than dose nights gone by: tonight's is among them, and tonight is not due any more. Less is safe. */
  readonly tonight: boolean
}

/** What so many ticks come to, before they are written down. */
export const readTicks = (
  state: State,
  { lot: id, ticked, othersTicked }: TicksAsked,
  now: Moment,
): Result<TicksRead, TicksRefusal> => {
  const lot = state.lots.get(id)
  if (!lot) return refuse({ why: 'noSuchLot' })
  if (!Number.isInteger(ticked) || ticked < 0) return refuse({ why: 'notACount', asked: ticked })
  const { all, given, other } = squaresOf(state, lot)
  const squares = othersTicked ? all : all - other
  if (ticked > squares) return refuse({ why: 'moreThanSquares', squares })
  const counted = squares - ticked
  const more = portionsLeft(lot) - counted
  if (more < 0)
    return refuse({
      why: 'fewerThanBook',
      ticked,
      given,
      other: othersTicked ? other : 0,
      wouldBeLeft: counted,
    })
  if (more === 0) return refuse({ why: 'asTheBook', ticked })
  const plans = plansAt(state, now).filter(({ food }) => food === lot.made.food)
  const { each } = lot.made
  const doseOf = (plan: PlanMade | undefined) => (plan ? portionsPerDose(plan.amount, each) : 1)
  const found = nightsOf(state, lot, plans, (plan) => more / doseOf(plan), now)
  const plan = plans.find((one) => one.plan === found.rounds[0]?.plan) ?? plans[0]
  const perDose = doseOf(plan)
  const amount = plan ? Math.round((more / perDose) * reaching(perDose, each, plan.amount)) : more * each
  return ok({
    counted,
    book: lot.left,
    given,
    more,
    doses: Math.ceil(more / perDose),
    amount: microlitres(amount),
    ...found,
  })
}

/** Written down as a count is: it resets the figure, and settles the dose nights it is about. */
export const countTicks = (
  state: State,
  asked: TicksAsked,
  now: Moment,
): Result<readonly [NightsCounted], TicksRefusal> => {
  const read = readTicks(state, asked, now)
  const lot = state.lots.get(asked.lot)
  if (!read.ok) return read
  if (!lot) return refuse({ why: 'noSuchLot' })
  const { counted, book, doses, amount } = read.value
  const rounds = read.value.rounds.flatMap(({ plan, nights }) =>
    nightRanges(state, plan, nights).flatMap((range) => {
      const tank = plansAt(state, now).find((made) => made.plan === plan)?.tank
      return tank === undefined ? [] : [{ plan, tank, ...range }]
    }),
  )
  return ok([
    {
      kind: 'nightsCounted',
      at: now,
      food: lot.made.food,
      rounds,
      lots: [{ lot: lot.id, counted, book }],
      doses,
      amount,
    },
  ])
}

/** The open dose nights since the bag is there; tonight too once its lamp is out, if they are too few for what was ticked. */
const nightsOf = (
  state: State,
  lot: Lot,
  plans: readonly PlanMade[],
  doses: (plan: PlanMade) => number,
  now: Moment,
): Pick<TicksRead, 'rounds' | 'tonight'> => {
  const open = plans.flatMap((plan) => {
    const tank = tankAt(state, plan.tank, now)
    if (!tank) return []
    const since = sinceNight(lot, tank)
    return [{ plan, tank, nights: openNights(state, plan, now).filter((night) => night >= since) }]
  })
  const [first] = open
  const room = open.reduce((sum, { nights }) => sum + nights.length, 0)
  const over = first !== undefined && doses(first.plan) > room
  let tonight = false
  const rounds = open.flatMap(({ plan, tank, nights }): Round[] => {
    const also = over && mayBeTonight(state, plan, tank, now) ? [nightOf(now, tank)] : []
    if (also.length > 0) tonight = true
    return nights.length + also.length > 0 ? [{ plan: plan.plan, nights: [...nights, ...also] }] : []
  })
  return { rounds, tonight }
}

/** Portions that were put on record as they stood have no tick from before that. */
const sinceNight = ({ made, partOf }: Lot, tank: TankDescribed): Day =>
  made.kind === 'portionsOnHand' && partOf === undefined ? later(made.frozenOn, nightOf(made.at, tank)) : made.frozenOn

const mayBeTonight = (state: State, plan: PlanMade, tank: TankDescribed, now: Moment): boolean => {
  const night = nightOf(now, tank)
  const due = dueOf(state, plan, now)
  if (!due || due.next > night || (due.heldUntil ?? night) > night || now < lampOut(state, tank, night)) return false
  // Another bag's ticks have settled the nights before: these belong to the same nights, and say nothing of tonight.
  const { lastNight } = due
  return lastNight === undefined || !marksOf(state, plan.plan, lastNight).some(({ what }) => what === 'counted')
}
