/** What to take for a dose: first to expire, first out. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import { byText } from '../basis/compare.ts'
import type { Day } from '../basis/days.ts'
import type { BottleId, FoodId, LotId } from '../basis/ids.ts'
import { stepsWithin } from '../basis/numbers.ts'
import type { Moment } from '../basis/zones.ts'
import {
  type Bottle,
  bottleLastGood,
  type FoodState,
  foodAt,
  type Lot,
  lastGoodInFridge,
  lotLastGood,
  pourableLiquid,
} from '../food/state.ts'
import { quietRatio } from './band.ts'
import type { Taken } from './facts.ts'

type Common = {
  /** Portions, or microlitres that can still be poured. */
  readonly left: number
  readonly lastGood: Day | undefined
  /** Frozen or opened on, to prefer the older of two. */
  readonly since: Day | undefined
  /** It has thawed once: two nights, and none after them. */
  readonly thawed?: true
}
export type Source = Common &
  (
    | { readonly from: 'portions'; readonly lot: LotId; readonly each: Microlitres }
    | {
        readonly from: 'bottle'
        readonly bottle: BottleId
        readonly sealed: boolean
        /** Its last good day once it is opened in a night to come. */
        readonly lastGoodIfOpened: (night: Day) => Day | undefined
      }
  )

/** Everything of a food that has anything left, past its day or not. What is set aside is not among it. */
export const sourcesOf = (state: FoodState, food: FoodId, now: Moment): readonly Source[] =>
  allOf(state, food, now, (thing) => thing.aside === undefined)

/** What is set aside of a food, for whoever has taken it all the same: it is never proposed. */
export const asideSources = (state: FoodState, food: FoodId, now: Moment): readonly Source[] =>
  allOf(state, food, now, (thing) => thing.aside !== undefined)

const allOf = (
  state: FoodState,
  food: FoodId,
  now: Moment,
  wanted: (thing: Bottle | Lot) => boolean,
): readonly Source[] => {
  const described = foodAt(state, food, now)
  if (!described) return []
  const portions = [...state.lots.values()].flatMap((lot): Source[] =>
    lot.made.food === food && lot.left > 0 && wanted(lot)
      ? [
          {
            from: 'portions',
            lot: lot.id,
            each: lot.made.each,
            left: lot.left,
            lastGood: lotLastGood(lot, described),
            since: lot.made.frozenOn,
            ...(lot.meltedOn ? { thawed: true as const } : {}),
          },
        ]
      : [],
  )
  const bottles = [...state.bottles.values()].flatMap((bottle): Source[] => {
    const left = pourableLiquid(bottle, described)
    if (bottle.recorded.food !== food || left <= 0 || !wanted(bottle)) return []
    return [
      {
        from: 'bottle',
        bottle: bottle.id,
        sealed: bottle.openedOn === undefined,
        left,
        lastGood: bottleLastGood(bottle, described),
        lastGoodIfOpened: (night) => lastGoodInFridge({ ...bottle.recorded, openedOn: night }, described),
        since: bottle.openedOn ?? bottle.recorded.receivedOn,
        ...(bottle.thawedOn ? { thawed: true as const } : {}),
      },
    ]
  })
  return [...portions, ...bottles]
}

export type Serving = {
  readonly source: Source
  readonly taken: Taken
  /** What reaches the tank. */
  readonly amount: Microlitres
  /** Portions or microlitres left in the source afterwards. */
  readonly left: number
}

/** The source after a serving; a sealed bottle opened on the way gets the last good day of an open one. */
export const afterwards = ({ source, left }: Serving, night: Day): Source =>
  source.from === 'bottle' && source.sealed
    ? { ...source, left, sealed: false, lastGood: source.lastGoodIfOpened(night), since: night }
    : { ...source, left }

/** Only part of the one portion taken is for this tank. */
export const inPart = ({ source, taken, amount }: Serving): boolean =>
  source.from === 'portions' && taken.from === 'portions' && amount < taken.count * source.each

/** Whole portions for an amount: as many as fit, at least one, no more than there are. Less is safe. */
const portionsFor = (amount: Microlitres, each: Microlitres, left: number): number =>
  Math.min(left, Math.max(1, stepsWithin(amount, each)))

/**
 * What reaches the tank of the portions taken. One that is far larger than the dose is given in part: the rest goes to
 * another tank the same night, or is thrown away; the stock is one less either way.
 */
export const reaching = (count: number, each: Microlitres, amount: Microlitres): Microlitres =>
  count === 1 && amount > 0 && each > amount * quietRatio ? amount : microlitres(count * each)

/** What a dose takes from one source; undefined if a bottle no longer holds a whole dose. */
export const servingFrom = (source: Source, amount: Microlitres): Serving | undefined => {
  if (source.from === 'portions') {
    const count = portionsFor(amount, source.each, source.left)
    if (count < 1) return undefined
    return {
      source,
      taken: { from: 'portions', lot: source.lot, count },
      amount: reaching(count, source.each, amount),
      left: source.left - count,
    }
  }
  if (amount <= 0 || source.left < amount) return undefined
  return { source, taken: { from: 'bottle', bottle: source.bottle, amount }, amount, left: source.left - amount }
}

/** The lot or bottle it comes from. */
export const comesFrom = (what: Source | Taken): LotId | BottleId => (what.from === 'portions' ? what.lot : what.bottle)

/**
 * What is past its last good day in a night, for whoever takes it by hand: it is never proposed. Least far past first. What
 * has thawed is not among it: it has no usual time to be a little past.
 */
export const pastServings = (sources: readonly Source[], amount: Microlitres, night: Day): readonly Serving[] =>
  sources
    .filter(({ lastGood, thawed }) => lastGood !== undefined && lastGood < night && !thawed)
    .sort((a, b) => byText(b.lastGood ?? '', a.lastGood ?? '') || byText(comesFrom(a), comesFrom(b)))
    .flatMap((source) => servingFrom(source, amount) ?? [])

const dosesLeft = (source: Source, amount: Microlitres): number =>
  source.from === 'portions' ? source.left / portionsFor(amount, source.each, source.left) : source.left / amount
const late = '9999'

/** Which goes first for such a dose: earliest last good day; then fewer doses left; then the older one. */
export const goesFirst = (a: Source, b: Source, amount: Microlitres): number =>
  byText(a.lastGood ?? late, b.lastGood ?? late) ||
  dosesLeft(a, amount) - dosesLeft(b, amount) ||
  byText(a.since ?? late, b.since ?? late) ||
  byText(comesFrom(a), comesFrom(b))

/** What to take in a night, best first; what is past its last good day is passed over. */
export const servings = (sources: readonly Source[], amount: Microlitres, night: Day): readonly Serving[] =>
  sources
    .filter(({ lastGood }) => lastGood === undefined || lastGood >= night)
    .sort((a, b) => goesFirst(a, b, amount))
    .flatMap((source) => servingFrom(source, amount) ?? [])
