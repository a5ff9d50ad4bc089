/** The closing sheet: where all that was in a bottle went, to the microlitre, and what it was good for. */
import { type Day, daysBetween } from '../basis/days.ts'
import type { Account, Loss, LotAccount } from './accounts.ts'
import type { When } from './cost.ts'
import { type FoodState, foodAt, residueOf } from './state.ts'

/** Microlitres; together what was in it. */
export type Sheet = {
  /** Portions that went to a tank, were dropped, thrown away, given away, and those still in a freezer. */
  readonly given: number
  readonly lost: number
  readonly binned: number
  readonly givenAway: number
  readonly there: number
  readonly fresh: number
  /** Still in the bottle; of one that is finished, what stayed on its walls, and what was too little for a dose. */
  readonly stillIn: number
  readonly residue: number
  readonly over: number
  readonly spilt: number
  readonly thrown: number
  readonly drips: number
  /** Gaps that counting and measuring showed: what is missing, below zero where there was more than the book knew. */
  readonly unexplained: number
}
export type PortionCounts = Record<'made' | 'given' | 'lost' | 'binned' | 'givenAway' | 'there' | 'missing', number>

export type Closing = {
  readonly held: number
  readonly sheet: Sheet
  readonly portions: PortionCounts
  /** Of what sizes, microlitres. */
  readonly sizes: readonly number[]
  /** Nights on which a tank got food from it. Those settled by a count are a number, and on no date. */
  readonly nights: number
  readonly nightsCounted: number
  readonly firstNight: Day | undefined
  readonly lastNight: Day | undefined
  /** Doses, parts of doses included. */
  readonly freshDoses: number
  readonly frozenDoses: number
  /** Of what was in it, the part that went to a tank, 0 to 1. */
  readonly reached: number
  /** The last fresh dose, so many days after it came or was opened; undefined without both. */
  readonly daysFresh: number | undefined
  /** The longest a portion waited in the freezer before it was given. */
  readonly daysFrozen: number | undefined
  readonly worstLoss: Loss | undefined
  /** Nothing of it is left anywhere, by the book. */
  readonly closed: boolean
}

/**
 * Its sheet as it stands, "so far" until it is closed. What the book still has of a finished bottle is residue up to the
 * food's share; beyond that, less than a dose is "over", and as much as a dose or more is unexplained.
 * @param dose microlitres
 */
export const closing = (state: FoodState, account: Account, dose: number, { now }: When): Closing => {
  const { bottle, held, lots, meals } = account
  const portions = sumOf(lots, (lot) => lot)
  const inAll = (way: (lot: LotAccount) => number): number => lots.reduce((sum, lot) => sum + way(lot) * lot.each, 0)
  const rest = restOf(state, account, dose, now)
  const beyondBook = inAll(({ standing }) => sum(standing, ({ count }) => Math.min(0, count)))
  const sheet: Sheet = {
    given: inAll(({ given }) => given),
    lost: inAll(({ lost }) => lost),
    binned: inAll(({ discarded }) => discarded),
    givenAway: inAll(({ givenAway }) => givenAway),
    there: inAll(thereOf),
    fresh: account.fresh,
    ...rest.parts,
    spilt: account.spilt,
    thrown: account.thrown,
    drips: Math.max(0, account.drips),
    unexplained:
      inAll(({ missing }) => missing) +
      beyondBook +
      account.missing +
      account.astray +
      Math.min(0, account.drips) +
      rest.unexplained,
  }
  const dated = meals.filter(({ counted }) => !counted)
  const nights = [...new Set(dated.map(({ night }) => night))].sort()
  const { openedOn, recorded } = bottle
  const lastFresh = latest(dated.filter(({ from }) => from === 'fresh').map(({ night }) => night))
  const begun = recorded.receivedOn ?? openedOn
  const waits = dated.flatMap(({ frozenOn, night }) => (frozenOn === undefined ? [] : [daysBetween(frozenOn, night)]))
  return {
    held,
    sheet,
    portions,
    sizes: [...new Set(lots.map(({ each }) => each))].sort((a, b) => a - b),
    nights: nights.length,
    nightsCounted: Math.round(sum(meals, ({ counted, doses }) => (counted ? doses : 0))),
    firstNight: nights[0],
    lastNight: nights.at(-1),
    freshDoses: sum(meals, ({ from, doses }) => (from === 'fresh' ? doses : 0)),
    frozenDoses: sum(meals, ({ from, doses }) => (from === 'frozen' ? doses : 0)),
    reached: held > 0 ? Math.min(1, (sheet.given + sheet.fresh) / held) : 0,
    daysFresh: begun && lastFresh ? Math.max(0, daysBetween(begun, lastFresh)) : undefined,
    daysFrozen: waits.length > 0 ? Math.max(0, ...waits) : undefined,
    worstLoss: account.losses.toSorted((a, b) => b.amount - a.amount)[0],
    closed: isClosed(account),
  }
}

/** It is finished, and by the book no portion of it stands anywhere. */
export const isClosed = ({ bottle, lots }: Account): boolean =>
  (bottle.finished || bottle.left <= 0) && lots.every((lot) => thereOf(lot) === 0)

const sum = <Each>(all: readonly Each[], of: (each: Each) => number): number =>
  all.reduce((total, each) => total + of(each), 0)
const latest = (days: readonly Day[]): Day | undefined => days.toSorted().at(-1)

const thereOf = ({ standing }: LotAccount): number => sum(standing, ({ count }) => Math.max(0, count))

const sumOf = (lots: readonly LotAccount[], of: (lot: LotAccount) => LotAccount): PortionCounts => ({
  made: sum(lots, (lot) => of(lot).made),
  given: sum(lots, (lot) => of(lot).given),
  lost: sum(lots, (lot) => of(lot).lost),
  binned: sum(lots, (lot) => of(lot).discarded),
  givenAway: sum(lots, (lot) => of(lot).givenAway),
  there: sum(lots, thereOf),
  missing: sum(lots, (lot) => of(lot).missing + sum(lot.standing, ({ count }) => Math.min(0, count))),
})

type Rest = {
  readonly parts: Pick<Sheet, 'stillIn' | 'residue' | 'over'>
  readonly unexplained: number
}
/** What the book still has of the liquid. */
const restOf = (state: FoodState, { bottle, lots }: Account, dose: number, now: When['now']): Rest => {
  const { left, finished } = bottle
  const none = { stillIn: 0, residue: 0, over: 0 }
  if (left <= 0) return { parts: none, unexplained: left }
  if (!finished) return { parts: { ...none, stillIn: left }, unexplained: 0 }
  const food = foodAt(state, bottle.recorded.food, now)
  const residue = Math.min(left, food ? residueOf(bottle, food) : 0)
  const over = left - residue
  const tooLittle = Math.min(dose, ...lots.map(({ each }) => each))
  return over < tooLittle
    ? { parts: { ...none, residue, over }, unexplained: 0 }
    : { parts: { ...none, residue }, unexplained: over }
}
