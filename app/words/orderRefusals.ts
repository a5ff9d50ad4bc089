/** Refusals only the pages about ordering make, as sentences; every other goes its usual way. */
import type { AwayRefusal, OrderingRefusal, OrderRefusal, StillWaitingRefusal } from '../../core/index.ts'
import { dayInFull, weekday } from './dates.ts'
import { type FieldRefusal, fieldText } from './foodRefusals.ts'
import { number } from './numbers.ts'
import type { Reading } from './reading.ts'

export type OrderFieldRefusal =
  | FieldRefusal
  | OrderRefusal
  | StillWaitingRefusal
  | OrderingRefusal
  | AwayRefusal
  | { readonly why: 'noSuchDays' }
  /** No whole number of days stands there. */
  | { readonly why: 'howManyDays' }

export const orderText = (refusal: OrderFieldRefusal, reading: Reading): string => {
  switch (refusal.why) {
    case 'orderedNotYet':
      return `${weekday(refusal.on)}, ${dayInFull(refusal.on)}, has not come yet. Note it on the day.`
    case 'comesBeforeOrdered':
      return `It cannot come on ${dayInFull(refusal.comes)}, before it was ordered on ${dayInFull(refusal.on)}.`
    case 'comesFarOff':
      return `${dayInFull(refusal.comes)} is more than a year off. Look at the year again.`
    case 'comesInThePast':
      return `${dayInFull(refusal.comes)} has passed. When is it to come now?`
    case 'noSuchOrder':
      return 'This order is not on record any more.'
    case 'daysOutOfRange':
      return `Whole days, from 0 to ${number(refusal.most)}.`
    case 'howManyDays':
      return 'How many days? A guess will do.'
    case 'awayUpsideDown':
      return `The last day, ${dayInFull(refusal.to)}, is before the first, ${dayInFull(refusal.from)}.`
    case 'awayTooLong':
      return `That is ${number(refusal.days)} days. Look at the years again.`
    case 'awayAlready':
      return 'These days are on the list.'
    case 'noSuchDays':
      return 'These days are not on the list any more.'
    default:
      return fieldText(refusal, reading)
  }
}
