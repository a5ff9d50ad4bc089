/** Refusals only the food room’s forms make, as sentences; every other goes its usual way. */
import type { AmountRefusal, MeasureRefusal, PriceRefusal } from '../../core/index.ts'
import { millilitres, number } from './numbers.ts'
import type { Reading } from './reading.ts'
import { type AnyRefusal, refusalText } from './refusals.ts'
import { type TroubleRefusal, troubleText } from './troubleRefusals.ts'

export type FieldRefusal =
  | AnyRefusal
  | AmountRefusal
  | MeasureRefusal
  | PriceRefusal
  | TroubleRefusal
  | { readonly why: 'nameMissing' | 'nameTooLong' | 'trayOutOfRange' | 'dayMissing' }
  /** Nothing, or no whole number, stands where portions are counted. */
  | { readonly why: 'howMany' }

export const fieldText = (refusal: FieldRefusal, reading: Reading): string => {
  switch (refusal.why) {
    case 'tooMuch':
      return `More than ${number(refusal.most / 1000)} litres of food? Look at the number and its unit again.`
    case 'priceOutOfRange':
      return 'A price is more than 0. If it cost nothing, say that it was free.'
    case 'priceTooLarge':
      return `More than ${number(refusal.most)} for one bottle? Look at the price again.`
    case 'moreThanFull':
      return `That is more than the bottle holds when full, ${millilitres(refusal.full)}. Is it so?`
    case 'howMany':
      return 'How many?'
    case 'currencyUnknown':
      return 'A currency has three letters, such as GBP, EUR or USD.'
    case 'nameMissing':
      return 'It needs a name: the one you say at the fridge is best.'
    case 'nameTooLong':
      return 'That is a very long name. A few words are enough.'
    case 'trayOutOfRange':
      return 'A tray has from 1 to 100 rows, and from 1 to 100 wells in each.'
    case 'dayMissing':
      return 'On which day? About is good enough.'
    case 'nothingLookedAt':
    case 'howFound':
    case 'goodOrNot':
    case 'whichBag':
    case 'foundNotYet':
    case 'offOutOfRange':
    case 'notFrozen':
    case 'howItSmelt':
    case 'asideAlready':
    case 'notAside':
    case 'sameBag':
    case 'otherFood':
    case 'otherSize':
    case 'nothingToJoin':
    case 'spoilsTheBag':
    case 'whichFreezing':
    case 'moreThanBagHas':
    case 'frozenAlready':
    case 'thawedOnce':
    case 'setAsideFirst':
    case 'thawedPortions':
    case 'contentsOutOfRange':
    case 'cellsUnweighed':
      return troubleText(refusal, reading)
    default:
      return refusalText(refusal, reading)
  }
}
