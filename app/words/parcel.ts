/** What is said of a parcel: what was in it, what was paid, whose share is what. */
import type { Moment, Price, PurchaseRecorded, PurchaseRefusal, Sharing, World } from '../../core/index.ts'
import { dayInFull } from './dates.ts'
import { type FieldRefusal, fieldText } from './foodRefusals.ts'
import { list } from './list.ts'
import { price } from './money.ts'
import { bottleName } from './names.ts'
import { capital, number } from './numbers.ts'
import type { Reading } from './reading.ts'

export type MoneyRefusal = FieldRefusal | PurchaseRefusal

export const moneyText = (refusal: MoneyRefusal, reading: Reading): string => {
  switch (refusal.why) {
    case 'twoCurrencies':
      return `${list(refusal.currencies)} cannot be added together: the rate changes by the day. Put all of it in one currency.`
    case 'nothingInIt':
      return 'What was in it? Choose a bottle, or name something else.'
    case 'thingUnnamed':
      return 'What is it? A word or two are enough.'
    case 'bottleTwice':
      return 'This bottle stands in the parcel twice.'
    case 'noSuchBottle':
      return 'This bottle is not on record any more.'
    case 'thingsNotCounted':
      return `A whole number from 1 to ${number(refusal.most)}, please.`
    case 'sharedTooMuch':
      return `${price(refusal.over)} more is shared out than was paid.`
    case 'boughtNotYet':
      return `${dayInFull(refusal.day)} is still to come.`
    default:
      return fieldText(refusal, reading)
  }
}

type Thing = PurchaseRecorded['things'][number]

/** "6 × live bottles", "the 120 mL bottle of green food". */
export const thingWords = (thing: Thing, world: World, now: Moment): string => {
  const it = thing.bottle ? bottleName(world, thing.bottle, now) : thing.what || 'something else'
  return thing.count === undefined || thing.count === 1 ? it : `${number(thing.count)}\u00a0× ${it}`
}

/** "£84.00 for 6 × live bottles and the 120 mL bottle of green food." */
export const parcelWords = (whole: Price | undefined, things: readonly Thing[], world: World, now: Moment): string => {
  const named = things.map((thing) => thingWords(thing, world, now))
  const paid = whole === undefined ? 'A parcel whose price is not known' : whole === 'free' ? 'A gift' : price(whole)
  if (named.length === 0) return `${paid}.`
  return `${paid}${typeof whole === 'object' ? ' for' : ':'} ${list(named)}.`
}

/** How far it has been shared out. Undefined where there is nothing to share. */
export const sharingWords = ({ whole, rest, unshared }: Sharing): string | undefined => {
  if (typeof whole !== 'object' || !rest) return undefined
  const all = `${price(whole)} in all`
  if (rest.minor < 0) return `${all}; ${price({ ...rest, minor: -rest.minor })} too much is shared out.`
  if (rest.minor > 0) return `${all}; ${price(rest)} not shared yet.`
  return unshared > 0 ? `${all}; all of it is shared, and some things have no share.` : `${all}, all of it shared.`
}

/** "£54.00 and £30.00", in the order of the things. */
export const offerWords = (shares: readonly Price[]): string => list(shares.map((share) => price(share)))

export const shareWords = (share: Price | undefined): string => capital(price(share))
