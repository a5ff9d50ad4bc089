/** What the card reads: the day and the portion as she has them, and what the core makes of every day. */
import { useMemo } from 'react'
import {
  type Bottle,
  couldBeShared,
  type Day,
  daysBetween,
  doseToFreeze,
  earlier,
  type FoodDescribed,
  type FreezingAhead,
  freezingAhead,
  later,
  type Microlitres,
  microlitres,
  mostPerWell,
  portionsCover,
  proposePortion,
  readMillilitres,
  usualWell,
  type WouldMake,
} from '../../../../core/index.ts'
import { useDraft } from '../../../state/useDraft.ts'
import type { FieldRefusal } from '../../../words/foodRefusals.ts'
import { typedMillilitres } from '../../../words/numbers.ts'
import { useReading } from '../../useReading.ts'

/** Undefined: today; as proposed. */
type WorthFields = { readonly day: string | undefined; readonly portion: string | undefined }
const untouched: WorthFields = { day: undefined, portion: undefined }

export type Worth = {
  readonly freezing: FreezingAhead
  readonly each: Microlitres
  /** All of it, frozen today. */
  readonly makes: WouldMake | undefined
  /** The last day of the slider, and how many it has beyond today. */
  readonly until: Day
  readonly days: number
  readonly day: Day
  readonly chooseDay: (day: Day) => void
  readonly portion: string
  readonly choosePortion: (typed: string) => void
  /** What is wrong with the portion as typed; the proposed one is reckoned with meanwhile. */
  readonly trouble: FieldRefusal | undefined
}

export const useWorth = (bottle: Bottle, food: FoodDescribed): Worth => {
  const { world, now, today } = useReading()
  const { fields, change } = useDraft(`worth/${bottle.id}`, untouched)
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
  const chosen = (fields.day ?? today) as Day
  const all = food.freezerLife ? freezing.ifFrozenOn(today).portions : 0
  return {
    freezing,
    each,
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
    days: daysBetween(today, until),
    // A day chosen on an evening gone by may have passed, or the bottle may keep less long than it did.
    day: later(today, earlier(chosen, until)),
    chooseDay: (day) => change({ day }),
    portion,
    choosePortion: (typed) => change({ portion: typed }),
    trouble: read.ok ? undefined : read.refusal,
  }
}
