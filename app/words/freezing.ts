/** What the freezing page says: the plan, whether a portion suits a tank, what to write on the bag. */
import type { Day, FoodDescribed, FreezePlan, Microlitres, PortionFit, World } from '../../core/index.ts'
import { dayInFull } from './dates.ts'
import { inWords, millilitres, portions, times, trays } from './numbers.ts'

/** "96 portions in 7 trays, 0.4 mL over." */
export const batchWords = (plan: FreezePlan, owned: number | undefined): string => {
  const over = plan.over > 0 ? `, ${millilitres(plan.over)} over` : ''
  const rounds =
    owned !== undefined && plan.rounds > 1 ? ` With ${trays(owned)} that is ${inWords(plan.rounds)} rounds.` : ''
  return `${portions(plan.portions)} in ${trays(plan.trays)}${over}.${rounds}`
}

/** Does one portion suit this tank? It suggests and forbids nothing. */
export const tankFitWords = (
  tank: string,
  fit: PortionFit,
  dose: Microlitres,
  each: Microlitres,
  perDose: number,
): string => {
  if (fit.is === 'suits')
    return `${tank}: ${perDose === 1 ? 'one portion is' : `${inWords(perDose)} portions are`} one dose${
      perDose * each === dose ? '' : ` (${millilitres(perDose * each)}; the plan says ${millilitres(dose)})`
    }.`
  const smaller = fit.well ? `take ${millilitres(fit.well)} wells` : 'make portions smaller than any usual well'
  return `${tank}: one portion is ${times(fit.ratio)} the top of the range for it. You can ${smaller}, thin it with clean salt water, or share one portion between tanks the same night.`
}

/** "tray bag 3": the next number free. */
export const nextMark = (world: World): string => {
  const numbers = [...world.lots.values()].map(({ made }) => Number(/^tray bag (\d{1,6})$/.exec(made.mark)?.[1] ?? 0))
  return `tray bag ${numbers.reduce((most, one) => Math.max(most, one), 0) + 1}`
}

export type LabelOf = {
  readonly mark: string
  readonly food: FoodDescribed
  readonly each: Microlitres
  readonly frozenOn: Day
  readonly about: boolean
  readonly lastGood: Day | undefined
}
/** Line by line, to be copied by hand. Every date in words: 05/03 is two days. */
export const labelLines = ({ mark, food, each, frozenOn, about, lastGood }: LabelOf): readonly string[] => [
  mark,
  `${food.name}, ${millilitres(each)} each`,
  `Frozen ${about ? 'about ' : ''}${dayInFull(frozenOn)}`,
  lastGood ? `Good until ${dayInFull(lastGood)}` : 'No promise how long it keeps',
  'Fish tank. NOT FOOD for people.',
]
