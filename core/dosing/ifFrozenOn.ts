/** What becomes of a bottle if it is frozen on a day, or never: doses from the fridge, portions, and what is left unused. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import { addDays, type Day, later } from '../basis/days.ts'
import type { LotId } from '../basis/ids.ts'
import { stepsWithin } from '../basis/numbers.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodDescribed } from '../food/facts.ts'
import { type Bottle, bottleLastGood, lastGoodFrozen, liquidLeft, usableLiquid } from '../food/state.ts'
import { nightsFrom, type Planned } from './ahead.ts'
import { afterwards, comesFrom, type Source, sourcesOf } from './serve.ts'
import { roundsOf, type WalkRound } from './walk.ts'

export type FreshUse = {
  /** Doses given from the bottle, over all tanks that share the food. */
  readonly doses: number
  readonly amount: Microlitres
}
export type IfFrozen = {
  readonly day: Day
  /** After its last good day in the fridge. */
  readonly late: boolean
  /** On the nights before that day. */
  readonly fresh: FreshUse
  readonly portions: number
  /** The last day they are good; undefined where the food is promised no life in the freezer. */
  readonly lastGood: Day | undefined
  /** Less than one portion. */
  readonly over: Microlitres
  /** Portions that would pass their last good day. */
  readonly strands: number
  /** What is over, and what would pass its day in the freezer. */
  readonly wasted: Microlitres
  /** As portions that reach a tank. */
  readonly used: Microlitres
  /** The nights on which the first and the last of the portions would be given. */
  readonly begins: Day | undefined
  readonly lastNight: Day | undefined
}
export type IfNot = {
  readonly fresh: FreshUse
  /** What passes its last good day in the fridge, or is too little for a dose. */
  readonly wasted: Microlitres
}

export type FreezingAhead = {
  readonly contents: Microlitres
  /** What stays on the walls, whatever is done. */
  readonly residue: Microlitres
  readonly usable: Microlitres
  /** The last day it is good in the fridge, as it would be opened on the way; undefined when nobody can say. */
  readonly until: Day | undefined
  readonly ifNot: IfNot
  /** Quick when a day is asked again, and a walk of some hundred nights when not. No earlier than today. */
  readonly ifFrozenOn: (day: Day) => IfFrozen
}

type Poured = { readonly night: Day; readonly left: number }

/** No household plans so far: where a sealed bottle has no date, its turn is waited for so long. */
const patience = 400
/** No lot of hers: an id has no spaces. */
const frozenThen = 'if frozen' as LotId

/**
 * What does not depend on the day of freezing is reckoned once, each day's answer when it is first asked for. Other stock
 * of the food is used in its turn; nothing is said of what becomes of that.
 * @param each microlitres in one portion, more than 0
 */
export const freezingAhead = (
  state: Planned,
  { bottle, food, each }: { readonly bottle: Bottle; readonly food: FoodDescribed; readonly each: Microlitres },
  { now, today }: { readonly now: Moment; readonly today: Day },
): FreezingAhead => {
  const contents = liquidLeft(bottle)
  const usable = usableLiquid(bottle, food)
  const sources = sourcesOf(state, food.food, now)
  const rounds = roundsOf(state, food.food, now)
  const { poured, lastGood: until } = pourOut(rounds, { bottle, food }, sources, today)
  const freshOf = (nights: readonly Poured[]): FreshUse => ({
    doses: nights.length,
    amount: microlitres(usable - (nights.at(-1)?.left ?? usable)),
  })
  const frozenOn = (day: Day): IfFrozen => {
    const late = until !== undefined && day > until
    const fresh = freshOf(poured.filter(({ night }) => night < day))
    const rest = usable - fresh.amount
    const portions = stepsWithin(rest, each)
    const lastGood = lastGoodFrozen({ frozenOn: day, late }, food)
    const lot: Source = { from: 'portions', lot: frozenThen, each, left: portions, lastGood, since: day }
    const others = sources.flatMap((source) =>
      comesFrom(source) !== bottle.id ? [source] : fresh.amount > 0 ? [{ ...source, left: fresh.amount }] : [],
    )
    const nights = portionNights(rounds, [...others, lot], day)
    const strands = portions - nights.used
    return {
      day,
      late,
      fresh,
      portions,
      lastGood,
      over: microlitres(rest - portions * each),
      strands,
      wasted: microlitres(rest - nights.used * each),
      used: microlitres(nights.used * each),
      begins: nights.begins,
      lastNight: nights.lastNight,
    }
  }
  const asked = new Map<Day, IfFrozen>()
  const all = freshOf(poured)
  return {
    contents,
    residue: microlitres(contents - usable),
    usable,
    until,
    ifNot: { fresh: all, wasted: microlitres(usable - all.amount) },
    ifFrozenOn: (day) => {
      const known = asked.get(day) ?? frozenOn(day)
      asked.set(day, known)
      return known
    },
  }
}

/** The nights on which the bottle is poured from while it is good, and until when that is. */
const pourOut = (
  rounds: readonly WalkRound[],
  { bottle, food }: { readonly bottle: Bottle; readonly food: FoodDescribed },
  sources: readonly Source[],
  today: Day,
): { readonly poured: readonly Poured[]; readonly lastGood: Day | undefined } => {
  const poured: Poured[] = []
  let lastGood = bottleLastGood(bottle, food)
  for (const { night, serving } of nightsFrom(rounds, { sources })) {
    if (night > (lastGood ?? addDays(today, patience))) break
    if (!serving || comesFrom(serving.source) !== bottle.id) continue
    poured.push({ night, left: serving.left })
    // Opened for a dose it may keep less long than sealed, but that night it was good.
    const opened = afterwards(serving, night).lastGood
    lastGood = opened && later(opened, night)
  }
  return { poured, lastGood }
}

type PortionNights = {
  /** Portions that reach a tank. */
  readonly used: number
  readonly begins: Day | undefined
  readonly lastNight: Day | undefined
}
const portionNights = (rounds: readonly WalkRound[], sources: readonly Source[], day: Day): PortionNights => {
  const lot = sources.find((source) => comesFrom(source) === frozenThen)
  let left = lot?.left ?? 0
  let begins: Day | undefined
  let lastNight: Day | undefined
  if (left > 0)
    for (const { night, serving } of nightsFrom(rounds, { sources, notBefore: new Map([[frozenThen, day]]) })) {
      if (lot?.lastGood !== undefined && night > lot.lastGood) break
      if (!serving || comesFrom(serving.source) !== frozenThen) continue
      begins ??= night
      lastNight = night
      left = serving.left
      if (left === 0) break
    }
  return { used: (lot?.left ?? 0) - left, begins, lastNight }
}
