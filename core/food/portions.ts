/** Portions are frozen, had already, counted, lost, found. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import { type Day, daysBetween } from '../basis/days.ts'
import { type Here, momentOn, today } from '../basis/here.ts'
import type { BottleId, FoodId, LotId, PlaceId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import { type Moment, moment, wallDay } from '../basis/zones.ts'
import { checkDates, type DateRefusal } from './bottles.ts'
import type {
  Fate,
  FoodKind,
  Kept,
  PortionsCounted,
  PortionsFound,
  PortionsFrozen,
  PortionsGone,
  PortionsOnHand,
} from './facts.ts'
import {
  type Bottle,
  bottleLastGood,
  type FoodState,
  foodAt,
  isBlock,
  liquidLeft,
  mostPortions,
  portionsLeft,
} from './state.ts'

type PortionsAsked = {
  readonly lot: LotId
  readonly mark: string
  /** What she counted when done. */
  readonly portions: number
  readonly each: Microlitres
  readonly frozenOn: Day
  readonly kept: Kept
  readonly place: PlaceId
}
export type PortionsRefusal =
  | DateRefusal
  | { readonly why: 'noSuchFood' | 'noSuchBottle' | 'portionEmpty' }
  | { readonly why: 'wholePortions'; readonly asked: number }
  | { readonly why: 'tooMany' }
  /** Trays that do not add up to the portions. */
  | { readonly why: 'traysDisagree'; readonly inTrays: number; readonly portions: number }
  /** In time until `lastGood`; later is allowed with one touch, and keeps 12 months. */
  | { readonly why: 'frozenLate'; readonly lastGood: Day; readonly days: number }
  /** Diluted, wells underfilled, or the bottle held more: `eachWouldBe` is what each holds if nothing was added. */
  | {
      readonly why: 'moreThanBottleHeld'
      readonly holds: Microlitres
      readonly needs: Microlitres
      readonly eachWouldBe: Microlitres
    }
  | { readonly why: 'notForFreezing'; readonly sort: FoodKind }
export type RefreezeRefusal =
  /** It is a block of ice: portions cannot be metered from it. */
  | { readonly why: 'frozenAlready' }
  /** What has thawed is not frozen again. */
  | { readonly why: 'thawedOnce' }
  /** Whoever freezes it has looked at it first. */
  | { readonly why: 'setAsideFirst' }

/** What stands in the way of freezing a bottle, whatever its dates. */
export const refreezing = (bottle: Bottle): RefreezeRefusal | undefined => {
  if (isBlock(bottle)) return { why: 'frozenAlready' }
  if (bottle.thawedOn !== undefined) return { why: 'thawedOnce' }
  return bottle.aside ? { why: 'setAsideFirst' } : undefined
}

const whole = (count: number): boolean => Number.isInteger(count) && count > 0

const common = ({ portions, each, kept }: PortionsAsked): PortionsRefusal | undefined => {
  if (!whole(portions)) return { why: 'wholePortions', asked: portions }
  if (portions > mostPortions) return { why: 'tooMany' }
  if (each <= 0) return { why: 'portionEmpty' }
  if (kept.as === 'trays') {
    const inTrays = kept.trays.reduce((sum, { filled }) => sum + filled, 0)
    if (inTrays !== portions) return { why: 'traysDisagree', inTrays, portions }
  }
  return undefined
}

export type FreezeRecordAsked = PortionsAsked & {
  readonly bottle: BottleId
  /** Beyond the portions themselves: drips and what was thrown away on the way. */
  readonly spilt?: Microlitres
  readonly lateIsFine?: boolean
  /** The bottle held more than the book knew. */
  readonly bottleHeldMore?: boolean
  /** A food with no promised freezer life was frozen all the same. */
  readonly freezeAnyway?: boolean
}

/** Records a freezing as it was done: one act, whatever the plan said. */
export const recordFreezing = (
  state: FoodState,
  asked: FreezeRecordAsked,
  here: Here,
): Result<readonly [PortionsFrozen], PortionsRefusal | RefreezeRefusal> => {
  const bottle = state.bottles.get(asked.bottle)
  const food = bottle && foodAt(state, bottle.recorded.food, here.now)
  if (!bottle || !food) return refuse({ why: 'noSuchBottle' })
  const doubt = refreezing(bottle)
  if (doubt) return refuse(doubt)
  const wrong =
    common(asked) ??
    checkDates(
      [
        ['received', bottle.recorded.receivedOn],
        ['opened', bottle.openedOn],
        ['frozen', asked.frozenOn],
      ],
      today(here),
    )
  if (wrong) return refuse(wrong)
  if (!food.freezerLife && !asked.freezeAnyway) return refuse({ why: 'notForFreezing', sort: food.sort })
  const lastGood = bottleLastGood(bottle, food)
  const late = lastGood !== undefined && asked.frozenOn > lastGood
  if (late && !asked.lateIsFine)
    return refuse({ why: 'frozenLate', lastGood, days: daysBetween(lastGood, asked.frozenOn) })
  const taken = microlitres(asked.portions * asked.each + (asked.spilt ?? 0))
  const holds = liquidLeft(bottle)
  if (taken > holds && !asked.bottleHeldMore)
    return refuse({
      why: 'moreThanBottleHeld',
      holds,
      needs: taken,
      eachWouldBe: microlitres(Math.floor(holds / asked.portions)),
    })
  const { lot, mark, portions, each, frozenOn, kept, place } = asked
  const frozenAt = momentOn(frozenOn, here)
  // A bottle written down in the afternoon and frozen that day was full first: a bare day's noon would come before it.
  const seen = bottle.recorded.at
  return ok([
    {
      kind: 'portionsFrozen',
      at: moment(wallDay(seen, here.zone) === frozenOn ? Math.max(seen, frozenAt) : frozenAt),
      lot,
      food: bottle.recorded.food,
      mark,
      portions,
      each,
      frozenOn,
      kept,
      place,
      bottle: bottle.id,
      // What the bottle cannot have held came from somewhere: the figure is not driven below zero for it.
      taken: microlitres(Math.min(taken, holds)),
      late,
    },
  ])
}

export type PortionsOnHandAsked = PortionsAsked & { readonly food: FoodId; readonly about: boolean }

/** Portions she has already. A month alone is taken as its first day, the earliest it can be, and marked "about". */
export const recordPortionsOnHand = (
  state: FoodState,
  asked: PortionsOnHandAsked,
  here: Here,
): Result<readonly [PortionsOnHand], PortionsRefusal> => {
  if (!state.foods.has(asked.food)) return refuse({ why: 'noSuchFood' })
  const wrong = common(asked) ?? checkDates([['frozen', asked.frozenOn]], today(here))
  if (wrong) return refuse(wrong)
  return ok([{ kind: 'portionsOnHand', at: here.now, ...asked }])
}

export type CountRefusal =
  | { readonly why: 'noSuchLot' }
  | { readonly why: 'notACount'; readonly asked: number }
  | { readonly why: 'tooMany' }
  | { readonly why: 'moreThanLeft'; readonly left: number }

/** What she counted, with the figure the book showed her. */
export const countPortions = (
  state: FoodState,
  { lot, counted, why }: { readonly lot: LotId; readonly counted: number; readonly why?: string },
  now: Moment,
): Result<readonly [PortionsCounted], CountRefusal> => {
  const known = state.lots.get(lot)
  if (!known) return refuse({ why: 'noSuchLot' })
  if (!Number.isInteger(counted) || counted < 0) return refuse({ why: 'notACount', asked: counted })
  if (counted > mostPortions) return refuse({ why: 'tooMany' })
  return ok([{ kind: 'portionsCounted', at: now, lot, counted, book: known.left, ...(why ? { why } : {}) }])
}

/** Full trays and the wells left in the open one. */
export const countTrays = (full: number, wellsPerTray: number, inOpenTray: number): number =>
  full * wellsPerTray + inOpenTray

export const portionsGone = (
  state: FoodState,
  asked: { readonly lot: LotId; readonly count: number; readonly fate: Fate; readonly why?: string },
  now: Moment,
): Result<readonly [PortionsGone], CountRefusal> => {
  const known = state.lots.get(asked.lot)
  if (!known) return refuse({ why: 'noSuchLot' })
  if (!whole(asked.count)) return refuse({ why: 'notACount', asked: asked.count })
  if (asked.count > portionsLeft(known)) return refuse({ why: 'moreThanLeft', left: portionsLeft(known) })
  return ok([{ kind: 'portionsGone', at: now, ...asked }])
}

export const portionsFound = (
  state: FoodState,
  asked: { readonly lot: LotId; readonly count: number; readonly why?: string },
  now: Moment,
): Result<readonly [PortionsFound], CountRefusal> => {
  if (!state.lots.has(asked.lot)) return refuse({ why: 'noSuchLot' })
  if (!whole(asked.count)) return refuse({ why: 'notACount', asked: asked.count })
  if (asked.count > mostPortions) return refuse({ why: 'tooMany' })
  return ok([{ kind: 'portionsFound', at: now, ...asked }])
}
