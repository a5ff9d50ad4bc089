/** The walk as a calendar has it: a month, its nights, and what falls on each. */
import { addMonths, type Day, dayFromNumber, dayNumber } from '../basis/days.ts'
import type { Bare, Step, Walk, Walked } from './walk.ts'

export type Night = {
  readonly day: Day
  readonly steps: readonly Step[]
  /** Tanks that find nothing from this night on. */
  readonly bare: readonly Bare[]
  /** What is good for the last time: of what is taken from on the way, or left over at its end. */
  readonly lastGood: readonly Walked[]
}
export type MonthPage = {
  /** The first of the month. */
  readonly month: Day
  /** Days of the week before the first, Monday counted as the first of a week: 0 to 6. */
  readonly before: number
  readonly nights: readonly Night[]
}

const firstOf = (day: Day): Day => `${day.slice(0, 7)}-01` as Day

/** The first days of the months from tonight's to that of the last tank's first night without food. */
export const monthsOf = ({ bare }: Walk, tonight: Day): readonly Day[] => {
  const last = bare.at(-1)
  const until = last ? dayFromNumber(last.on) : tonight
  const months: Day[] = []
  for (let month = firstOf(tonight); month <= until || months.length === 0; month = addMonths(month, 1))
    months.push(month)
  return months
}

/** 1970 began on a Thursday. */
const mondayFirst = (number: number): number => (((number + 3) % 7) + 7) % 7

export const monthPage = ({ steps, sources, bare }: Walk, month: Day): MonthPage => {
  const [from, to] = [dayNumber(month), dayNumber(addMonths(month, 1))]
  const here = steps.filter(({ on }) => on >= from && on < to)
  const told = sources.filter(({ source, doses }) => doses > 0 || source.left > 0)
  const nights = Array.from({ length: to - from }, (_, after): Night => {
    const on = from + after
    const day = dayFromNumber(on)
    return {
      day,
      steps: here.filter((step) => step.on === on),
      bare: bare.filter((each) => each.on === on),
      lastGood: told.filter(({ source }) => source.lastGood === day),
    }
  })
  return { month, before: mondayFirst(from), nights }
}
