/** What the card reads: the portion and the day as she has them, and what the core makes of every day. */
import { useEffect, useMemo } from 'react'
import {
  addDays,
  type Bottle,
  type BottleId,
  couldBeShared,
  type Day,
  daysBetween,
  dosesPerYear,
  doseToFreeze,
  earlier,
  type FoodDescribed,
  type FreezingAhead,
  freezingAhead,
  isDay,
  later,
  type Microlitres,
  microlitres,
  mostPerWell,
  plansAt,
  portionsCover,
  proposePortion,
  readMillilitres,
  usualWell,
  type WouldMake,
} from '../../../../core/index.ts'
import { whenIdle } from '../../../state/idle.ts'
import { useDraft } from '../../../state/useDraft.ts'
import type { FieldRefusal } from '../../../words/foodRefusals.ts'
import { typedMillilitres } from '../../../words/numbers.ts'
import { useReading } from '../../useReading.ts'

/** Undefined: as proposed. */
type PortionFields = { readonly portion: string | undefined }
const proposedPortion: PortionFields = { portion: undefined }
/** Undefined: today. */
type DayFields = { readonly day: string | undefined }
const noDay: DayFields = { day: undefined }

export type Worth = {
  readonly freezing: FreezingAhead
  readonly each: Microlitres
  /** The dose it is reckoned in, and how many of them a year takes; undefined where no plan feeds it. */
  readonly dose: Microlitres
  readonly yearly: number | undefined
  /** All of it, frozen today. */
  readonly makes: WouldMake | undefined
  /** The last day of the slider, and how many it has beyond today. */
  readonly until: Day
  readonly days: number
  readonly portion: string
  readonly choosePortion: (typed: string) => void
  /** What is wrong with the portion as typed; the proposed one is reckoned with meanwhile. */
  readonly trouble: FieldRefusal | undefined
}

export const useWorth = (bottle: Bottle, food: FoodDescribed): Worth => {
  const { world, now, today } = useReading()
  const { fields, change } = useDraft(`worth/${bottle.id}`, proposedPortion)
  const { dose, mark } = doseToFreeze(world, food.food, now)
  const proposed = proposePortion(dose, mark, mostPerWell(usualWell))?.portion ?? microlitres(1000)
  const portion = fields.portion ?? typedMillilitres(proposed)
  const read = readMillilitres(portion)
  const each = read.ok ? read.value : proposed
  const freezing = useMemo(
    () => freezingAhead(world, { bottle, food, each }, { now, today }),
    [world, bottle, food, each, now, today],
  )
  const until = later(today, freezing.until ?? today)
  const days = daysBetween(today, until)
  useReckonedAhead(freezing, today, food.freezerLife ? days : 0)
  const all = food.freezerLife ? freezing.ifFrozenOn(today).portions : 0
  return {
    freezing,
    each,
    dose,
    yearly: plansAt(world, now).some((plan) => plan.food === food.food)
      ? dosesPerYear(world, food.food, now, dose)
      : undefined,
    makes:
      all > 0
        ? {
            portions: all,
            each,
            nights: portionsCover(world, food.food, { each, count: all }, now),
            couldBeShared: couldBeShared(world, food.food, each, now),
          }
        : undefined,
    until,
    days,
    portion,
    choosePortion: (typed) => change({ portion: typed }),
    trouble: read.ok ? undefined : read.refusal,
  }
}

/** Before a thumb is on the slider, and between two of its places: a day reckoned is a frame that need not wait for it. */
const useReckonedAhead = ({ ifFrozenOn }: FreezingAhead, today: Day, days: number) =>
  useEffect(() => {
    let left = false
    let next = 1
    const reckon = () => {
      if (left || next > days) return
      ifFrozenOn(addDays(today, next))
      next += 1
      whenIdle(reckon)
    }
    whenIdle(reckon)
    return () => {
      left = true
    }
  }, [ifFrozenOn, today, days])

/** Kept apart from the rest: only what the day changes is drawn again while it moves. */
export const useChosenDay = (bottle: BottleId, until: Day): readonly [Day, (day: Day) => void] => {
  const { today } = useReading()
  const { fields, change } = useDraft(`worth-day/${bottle}`, noDay)
  const chosen = fields.day !== undefined && isDay(fields.day) ? fields.day : today
  // A day chosen on an evening gone by may have passed, or the bottle may keep less long than it did.
  return [later(today, earlier(chosen, until)), (day) => change({ day })]
}
