/** Whether a parcel ordered on a day would come at a good time: calendar questions, and none of them moves the day to order by. */
import { addDays, addSpan, type Day, dayNumber, daysBetween, earlier, later } from '../basis/days.ts'
import type { FoodDescribed } from '../food/facts.ts'

/** Days nobody is at home, the first and the last included. */
export type Away = { readonly from: Day; readonly to: Day }

/** Days a parcel may come later than it should: where it would lie meanwhile counts too. Our own judgement. */
export const slipDays = 1
/** Nights before a trip in which new food is no help: it wants freezing or shaking. Common practice, no source. */
export const tripNights = 3
/** Days away in which a bottle in the fridge goes unshaken for longer than a weekend. Our own judgement. */
export const longAway = 4
/** How far a better day is looked for. Our own judgement. */
const searchDays = 30

/** `weekend`: it would come on one. `beforeWeekend`: a day late it would lie over one. */
export type Untimely =
  | { readonly is: 'weekend' | 'beforeWeekend' }
  | ({ readonly is: 'away' } & Away)
  | ({ readonly is: 'tripSoon' } & Away)

export type Arrival = {
  readonly orderedOn: Day
  readonly comes: Day
  readonly untimely: readonly Untimely[]
  /** The nearest days on which an order would come at a good time; looked for only where this one would not. */
  readonly earlier: Day | undefined
  readonly later: Day | undefined
}

export type ArrivalAsked = {
  readonly orderedOn: Day
  readonly leadDays: number
  readonly away: readonly Away[]
  readonly today: Day
  /** An order later than this would come after the first night without food. */
  readonly latest?: Day | undefined
}

export const arrivalOf = ({ orderedOn, leadDays, away, today, latest }: ArrivalAsked): Arrival => {
  const comesOf = (on: Day) => addDays(on, leadDays)
  const untimely = untimelyOf(comesOf(orderedOn), away)
  const isGood = (on: Day) => on >= today && untimelyOf(comesOf(on), away).length === 0
  const near = (step: 1 | -1): Day | undefined => {
    for (let days = 1; days <= searchDays; days++) {
      const on = addDays(orderedOn, step * days)
      if (isGood(on)) return on
    }
    return undefined
  }
  const after = untimely.length > 0 ? near(1) : undefined
  // Where it is too late already, later is all there is.
  const inTime = latest === undefined || latest < orderedOn || after === undefined || after <= latest
  return {
    orderedOn,
    comes: comesOf(orderedOn),
    untimely,
    earlier: untimely.length > 0 ? near(-1) : undefined,
    later: inTime ? after : undefined,
  }
}

const untimelyOf = (comes: Day, away: readonly Away[]): readonly Untimely[] => {
  const late = addDays(comes, slipDays)
  const found: Untimely[] = []
  if (isWeekend(comes)) found.push({ is: 'weekend' })
  else if (isWeekend(late)) found.push({ is: 'beforeWeekend' })
  for (const { from, to } of away) {
    if (comes <= to && late >= from) found.push({ is: 'away', from, to })
    else if (isTrip({ from, to }) && from > late && daysBetween(comes, from) <= tripNights)
      found.push({ is: 'tripSoon', from, to })
  }
  return found
}

/** 1970 began on a Thursday. */
const isWeekend = (day: Day): boolean => [2, 3].includes(((dayNumber(day) % 7) + 7) % 7)
/** A night away at least: one day without anybody at the door is no trip. */
const isTrip = ({ from, to }: Away): boolean => to > from

export type Unattended = Away & {
  /** How many of the days it keeps in the fridge pass meanwhile. */
  readonly days: number
  readonly lastGood: Day
}

/**
 * The first trip on which a bottle that comes on a day would stand in the fridge with its time running and nobody to shake
 * it. None where its time begins with opening: it stays sealed.
 */
export const unattended = (
  comes: Day,
  { countsFrom, fridgeLife }: Pick<FoodDescribed, 'countsFrom' | 'fridgeLife'>,
  away: readonly Away[],
): Unattended | undefined => {
  if (countsFrom === 'opening') return undefined
  const lastGood = addSpan(comes, fridgeLife)
  return away
    .flatMap(({ from, to }): Unattended[] => {
      const days = daysBetween(later(from, comes), earlier(to, lastGood)) + 1
      return days >= longAway ? [{ from, to, days, lastGood }] : []
    })
    .sort((a, b) => daysBetween(b.from, a.from))[0]
}
