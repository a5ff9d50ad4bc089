/** A bottle comes home, is opened, shaken, measured, spilt, finished. */
import { type BottleUnit, bottleAmount, type Microlitres, microlitres } from '../basis/amounts.ts'
import type { Day } from '../basis/days.ts'
import { type Here, momentOn, monthAndDaySwapped, today } from '../basis/here.ts'
import type { BottleId, FoodId, PlaceId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type {
  BottleFinished,
  BottleOpened,
  BottleRecorded,
  BottlesShaken,
  Fate,
  LiquidGone,
  LiquidMeasured,
  Price,
} from './facts.ts'
import { type FoodState, liquidLeft } from './state.ts'

export type BottleAsked = {
  readonly bottle: BottleId
  readonly food: FoodId
  readonly size: { readonly value: number; readonly unit: BottleUnit }
  /** Share of it that is in the bottle, 0 to 1; 1 for a new one. */
  readonly full: number
  readonly bottledOn?: Day | undefined
  readonly receivedOn?: Day | undefined
  readonly openedOn?: Day | undefined
  readonly useBy?: Day | undefined
  readonly price?: Price | undefined
  readonly place: PlaceId
}
export type DateName = 'bottled' | 'received' | 'opened' | 'frozen'
/** Two dates the wrong way round, or one that has not come. `swapped` is the later-looking one with month and day changed about, where that mends it. */
export type DateRefusal =
  | {
      readonly why: 'outOfOrder'
      readonly before: DateName
      readonly beforeDay: Day
      readonly after: DateName
      readonly afterDay: Day
      readonly swapped: Day | undefined
    }
  | { readonly why: 'dayNotYet'; readonly which: DateName; readonly day: Day; readonly today: Day }
export type BottleRefusal =
  | DateRefusal
  | { readonly why: 'noSuchFood' | 'sizeNotPositive' }
  | { readonly why: 'fullOutOfRange'; readonly full: number }

/** In the order they must have come. */
export const checkDates = (
  dates: readonly (readonly [DateName, Day | undefined])[],
  todayIs: Day,
): DateRefusal | undefined => {
  let last: readonly [DateName, Day] | undefined
  for (const [which, day] of dates) {
    if (day === undefined) continue
    if (last && day < last[1]) {
      const swapped = monthAndDaySwapped(day)
      return {
        why: 'outOfOrder',
        before: last[0],
        beforeDay: last[1],
        after: which,
        afterDay: day,
        swapped: swapped && swapped >= last[1] && swapped <= todayIs ? swapped : undefined,
      }
    }
    if (day > todayIs) return { why: 'dayNotYet', which, day, today: todayIs }
    last = [which, day]
  }
  return undefined
}

/** A printed date already past is no refusal: old stock is sold, and is recorded as it is. */
export const recordBottle = (
  state: FoodState,
  asked: BottleAsked,
  here: Here,
): Result<readonly [BottleRecorded], BottleRefusal> => {
  if (!state.foods.has(asked.food)) return refuse({ why: 'noSuchFood' })
  if (!(asked.size.value > 0)) return refuse({ why: 'sizeNotPositive' })
  if (!(asked.full > 0 && asked.full <= 1)) return refuse({ why: 'fullOutOfRange', full: asked.full })
  const wrong = checkDates(
    [
      ['bottled', asked.bottledOn],
      ['received', asked.receivedOn],
      ['opened', asked.openedOn],
    ],
    today(here),
  )
  if (wrong) return refuse(wrong)
  const { bottledOn, receivedOn, openedOn, useBy, price } = asked
  const since = openedOn ?? receivedOn
  return ok([
    {
      kind: 'bottleRecorded',
      // A full bottle has been full since it was opened, so what was frozen or poured meanwhile comes out of it.
      at: asked.full === 1 && since ? momentOn(since, here) : here.now,
      bottle: asked.bottle,
      food: asked.food,
      size: asked.size,
      contents: microlitres(Math.round(bottleAmount(asked.size.value, asked.size.unit) * asked.full)),
      about: asked.full < 1,
      ...(bottledOn ? { bottledOn } : {}),
      ...(receivedOn ? { receivedOn } : {}),
      ...(openedOn ? { openedOn } : {}),
      ...(useBy ? { useBy } : {}),
      ...(price ? { price } : {}),
      place: asked.place,
    },
  ])
}

export type BottleChangeRefusal =
  | { readonly why: 'noSuchBottle' }
  | { readonly why: 'notPositive' }
  | DateRefusal
  | { readonly why: 'moreThanThere'; readonly there: Microlitres }

export const openBottle = (
  state: FoodState,
  { bottle, openedOn }: { readonly bottle: BottleId; readonly openedOn: Day },
  here: Here,
): Result<readonly [BottleOpened], BottleChangeRefusal> => {
  const known = state.bottles.get(bottle)
  if (!known) return refuse({ why: 'noSuchBottle' })
  const wrong = checkDates(
    [
      ['received', known.recorded.receivedOn],
      ['opened', openedOn],
    ],
    today(here),
  )
  return wrong ? refuse(wrong) : ok([{ kind: 'bottleOpened', at: momentOn(openedOn, here), bottle, openedOn }])
}

export const finishBottle = (
  state: FoodState,
  bottle: BottleId,
  now: Moment,
): Result<readonly [BottleFinished], BottleChangeRefusal> =>
  state.bottles.has(bottle) ? ok([{ kind: 'bottleFinished', at: now, bottle }]) : refuse({ why: 'noSuchBottle' })

/** Names which bottles, never "all that are in the fridge". */
export const shakeBottles = (bottles: readonly BottleId[], now: Moment): readonly BottlesShaken[] =>
  bottles.length > 0 ? [{ kind: 'bottlesShaken', at: now, bottles }] : []

export type MeasureAsked = {
  readonly bottle: BottleId
  readonly left: Microlitres
  readonly why?: string
  /** She was asked, and there is more in it than its label says. */
  readonly sure?: boolean
}
export type MeasureRefusal = BottleChangeRefusal | { readonly why: 'moreThanFull'; readonly full: Microlitres }

/** More than its label says is a slip of the finger, or a bottle filled up from another: asked once. */
export const measureLiquid = (
  state: FoodState,
  { bottle, left, why, sure = false }: MeasureAsked,
  now: Moment,
): Result<readonly [LiquidMeasured], MeasureRefusal> => {
  const known = state.bottles.get(bottle)
  if (!known) return refuse({ why: 'noSuchBottle' })
  if (left < 0) return refuse({ why: 'notPositive' })
  const { size } = known.recorded
  const full = bottleAmount(size.value, size.unit)
  if (left > full && !sure) return refuse({ why: 'moreThanFull', full })
  const book = known.left as Microlitres
  return ok([{ kind: 'liquidMeasured', at: now, bottle, left, book, ...(why ? { why } : {}) }])
}

export const liquidGone = (
  state: FoodState,
  asked: { readonly bottle: BottleId; readonly amount: Microlitres; readonly fate: Fate; readonly why?: string },
  now: Moment,
): Result<readonly [LiquidGone], BottleChangeRefusal> => {
  const known = state.bottles.get(asked.bottle)
  if (!known) return refuse({ why: 'noSuchBottle' })
  if (asked.amount <= 0) return refuse({ why: 'notPositive' })
  if (asked.amount > liquidLeft(known)) return refuse({ why: 'moreThanThere', there: liquidLeft(known) })
  return ok([{ kind: 'liquidGone', at: now, ...asked }])
}
