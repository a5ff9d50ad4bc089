/** The label's range, and whether portions suit a dose. */
import {
  type Band,
  type Day,
  type Due,
  type FoodDescribed,
  isCommonBand,
  type Microlitres,
  type PlanMade,
  type PortionFit,
  quietRatio,
  type WaterAmount,
} from '../../core/index.ts'
import { dayWords, nightFrom } from './dates.ts'
import { everyNights } from './entries.ts'
import { list } from './list.ts'
import { capital, inWords, millilitreRange, millilitres, times, water } from './numbers.ts'

/** Two may share a name, but not unseen. */
export const nameTakenWords = (name: string): string =>
  `There is a tank called ${name} already. On Tonight only the name tells them apart.`

/** "about 400 litres". */
export const howMuch = (amount: WaterAmount | undefined, roughly: boolean): string =>
  amount ? `${roughly ? 'about ' : ''}${water(amount)}` : 'volume not known'

/** "The range for this tank is 0.55 to 1.05 mL." Where it comes from is said beside it. */
export const bandWords = (band: Band | undefined): string => {
  if (!band) return 'How much water is in the tank? Then I can say what one dose is.'
  if (band.shown === 'tooSmall')
    return `The most for this tank, ${millilitres(band.high)}, is less than one mark of the pipette. Dilute the food, or use a finer pipette.`
  const { low, high } = band.shown
  return low === high
    ? `One dose for this tank is ${millilitres(low)}.`
    : `The range for this tank is ${millilitreRange(low, high)}.`
}

/** Where the range comes from. */
export const bandSource = (food: FoodDescribed): string =>
  `${isCommonBand(food.band) ? 'common practice: ' : 'the range you typed: '}${millilitreRange(food.band.low, food.band.high)} per ${water(food.band.per)}, ${everyNights(food.everyNights)}.`

export const planWords = (plan: PlanMade, food: FoodDescribed): string =>
  `${millilitres(plan.amount)} of ${food.name}, ${everyNights(plan.everyNights)}${plan.rhythm ? ', on fixed nights' : ''}`

/** "On hold until Friday night, 4 December." or "Next: tomorrow night." */
export const nextWords = ({ next, heldUntil }: Due, tonight: Day): string => {
  if (heldUntil === undefined || heldUntil <= tonight)
    return `Next: ${nightFrom(next < tonight ? tonight : next, tonight)}.`
  const first = next > heldUntil ? ` Then ${nightFrom(next, tonight)} is the first.` : ''
  return `On hold until ${nightFrom(heldUntil, tonight)}.${first}`
}

/** How a plan counts its nights, each in a sentence. */
export const rhythmWords = {
  lastDose: {
    label: 'From the last dose',
    hint: 'If a night is missed, the next ones move along. Right for most homes.',
  },
  fixedNights: {
    label: 'Fixed nights',
    hint: 'The nights stay as they are, whatever was given. Right where somebody else looks after the tank, or for a lab.',
  },
} as const

/** "Green food and Amber food meet tonight and on 7, 13 and 19 April: 2 mL together." */
export const meetingWords = (
  foods: readonly string[],
  meet: readonly Day[],
  total: number | undefined,
  tonight: Day,
): string => {
  const names = list(foods)
  if (meet.length === 0) return `${names} do not meet in the coming four weeks.`
  const [first, ...rest] = meet
  const later = first === tonight ? rest : meet
  const days = later.length > 0 ? [`on ${nightList(later, tonight)}`] : []
  const when = list([...(first === tonight ? ['tonight'] : []), ...days])
  return `${names} meet ${when}${total === undefined ? '' : `: ${millilitres(total)} together`}.`
}

/** "1, 7 April and 1 May": a month is said once. */
const nightList = (nights: readonly Day[], tonight: Day): string =>
  list(
    nights.map((night, place) => {
      const after = nights[place + 1]
      return after?.slice(0, 7) === night.slice(0, 7) ? String(Number(night.slice(8))) : dayWords(night, tonight)
    }),
  )

export const turnsWords = (may: boolean): string =>
  may
    ? 'That does no harm. They may take turns if you like: one of them begins a night later.'
    : 'That does no harm. With these two rhythms they meet now and then, whenever they begin.'

/** Does one portion of this size suit the tank, and what to do if not. Suggests, never forbids. */
export const fitWords = (each: Microlitres, fit: PortionFit): string => {
  if (fit.is === 'tooBig') {
    const wells = fit.well ? `smaller wells (${millilitres(fit.well)})` : 'smaller wells'
    return `A portion of ${millilitres(each)} is ${times(fit.ratio)} the top of the range for this tank. Next time ${wells} or a dilution; or share one portion over two tanks the same night.`
  }
  return fit.portions === 1
    ? `One portion of ${millilitres(each)} suits this tank.`
    : `${capital(inWords(fit.portions))} portions of ${millilitres(each)} make a dose for this tank.`
}

/** Before anything is saved: what one dose will be, and that it starts low. */
export const firstDoseWords = (band: Band | undefined, every: number): string => {
  if (!band || band.shown === 'tooSmall') return bandWords(band)
  const { low, high } = band.shown
  return `One dose for this tank: ${millilitreRange(low, high)}, ${everyNights(every)}, after lights-out. Start low: ${millilitres(low)}, tonight first. That is common practice (1 to 2 mL per 200 US gallons); your label’s own figures can be typed later.`
}

/** Said where the plan is looked at, not at the dose: the water or the label may have changed since it was made. */
export const aboveWords = (plan: PlanMade, band: Band | undefined): string =>
  band && plan.amount > band.high * quietRatio ? `, ${times(plan.amount / band.high)} the top of the range` : ''
