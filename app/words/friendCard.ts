/** A card for a friend who is given some portions: what one is for their tank, and how long it keeps. */
import {
  type Day,
  type FoodDescribed,
  type FriendDose,
  type Microlitres,
  toMillilitres,
  type WaterAmount,
} from '../../core/index.ts'
import { dayInFull, weekday } from './dates.ts'
import { everyNights } from './entries.ts'
import { capital, inWords, millilitreRange, millilitres, water } from './numbers.ts'

const partWords = { 2: 'half', 3: 'a third', 4: 'a quarter' } as const

const cup = 'Melt it in a cup of tank water'
const rest = 'The rest goes to another tank the same night, or away.'

/** "One portion", "half a portion": what one dose is. */
const doseWords = (dose: FriendDose, each: Microlitres): string => {
  switch (dose.is) {
    case 'whole': {
      const whole = dose.portions === 1 ? 'one portion' : `${inWords(dose.portions)} portions`
      return `${capital(whole)} (${millilitres(dose.amount)}), dropped in frozen.`
    }
    case 'part':
      return `${capital(partWords[dose.of])} of one portion (about ${millilitres(Math.round(dose.amount / 10) * 10)}). ${cup}, and give ${partWords[dose.of]} of the cup. ${rest}`
    case 'measure':
      return `${millilitreRange(dose.low, dose.high)} of one portion. Let it melt in a small cup, and measure with a pipette. ${rest}`
    case 'tooSmall':
      return `So little that no pipette measures it: one portion (${millilitres(each)}) is far too much for this tank.`
  }
}

/** In one sentence, for the head of the page. */
export const cardAnswer = (dose: FriendDose | undefined, given: WaterAmount | undefined): string => {
  if (!dose || !given) return 'How much water does your friend’s tank have? The card says what one dose is for it.'
  const tank = `a tank of ${water(given)}`
  switch (dose.is) {
    case 'whole':
      return dose.portions === 1
        ? `One portion is one dose for ${tank}.`
        : `${capital(inWords(dose.portions))} portions are one dose for ${tank}.`
    case 'part':
      return `${capital(partWords[dose.of])} of a portion is one dose for ${tank}.`
    case 'measure':
      return `One portion is many doses for ${tank}: only a little of it goes in.`
    case 'tooSmall':
      return `One portion is far too much for ${tank}.`
  }
}

export type CardOf = {
  readonly food: FoodDescribed
  readonly each: Microlitres
  readonly lastGood: Day | undefined
  /** The freezing day is a guess. */
  readonly about: boolean
  readonly water: WaterAmount | undefined
  readonly dose: FriendDose | undefined
}

/** Line by line, to be printed, copied or read out. Every date in words. */
export const cardLines = ({ food, each, lastGood, about, water: given, dose }: CardOf): readonly string[] => {
  const { low, high, per } = food.band
  const night = `${everyNights(food.everyNights)}, after the lights are out`
  return [
    `${food.name}, frozen: ${millilitres(each)} in each portion`,
    ...(dose && given
      ? [
          `For ${water(given)}: ${doseWords(dose, each)}`,
          dose.is === 'tooSmall' ? '' : `${capital(night)}. One dose a night, never two to make up for a missed one.`,
          `The label’s range: ${toMillilitres(low)} to ${millilitres(high)} for ${water(per)}.`,
        ]
      : [`${toMillilitres(low)} to ${millilitres(high)} for ${water(per)}, ${night}.`]),
    lastGood
      ? `Good until ${about ? 'about ' : ''}${weekday(lastGood)}, ${dayInFull(lastGood)}, kept frozen at −18 °C or colder.`
      : 'Kept frozen at −18 °C or colder. Nobody promises how long it keeps.',
    'What has thawed is never frozen again.',
    ...(food.sort === 'freshNonViable' ? ['It feeds, and cannot grow: no culture can be begun with it.'] : []),
    'Fish tank. NOT FOOD for people.',
  ].filter((line) => line !== '')
}

export const cardSaid = {
  copied: 'Copied: it can be pasted into a message.',
  shared: 'Handed over.',
  chosen: 'This phone lets nothing be copied by a touch. The words are marked: copy them by hand.',
} as const
