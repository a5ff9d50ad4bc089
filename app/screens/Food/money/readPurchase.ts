/** What the core makes of a parcel's form, and all that is wrong with it at once. */
import {
  type BottleId,
  type Moment,
  type Price,
  type PurchaseAsked,
  type PurchaseRefusal,
  purchaseTroubles,
  readNumber,
  readPrice,
  recordPurchase,
  refuse,
  type Thing,
  type World,
} from '../../../../core/index.ts'
import { minorDigits } from '../../../words/money.ts'
import type { MoneyRefusal } from '../../../words/parcel.ts'
import { hereIn } from '../../useReading.ts'
import { readDay } from '../dayFields.ts'
import type { PurchaseFields } from './purchaseFields.ts'

/** `at` names the field, with the place of its thing: "share 1"; empty for the whole form. */
export type MoneyTrouble = { readonly at: string; readonly refusal: MoneyRefusal }

/** Nothing typed is not known, and 0 is free. What cannot be read is a trouble, and is not known either. */
export const readPurchase = (
  fields: PurchaseFields,
): { readonly asked: PurchaseAsked; readonly troubles: readonly MoneyTrouble[] } => {
  const troubles: MoneyTrouble[] = []
  const wrong = (at: string, refusal: MoneyRefusal) => {
    if (!troubles.some((known) => known.at === at)) troubles.push({ at, refusal })
  }
  const money = (typed: string, at: string, currency = fields.currency, currencyAt = 'currency'): Price | undefined => {
    if (typed.trim() === '') return undefined
    const number = readNumber(typed)
    if (number.ok && number.value === 0) return 'free'
    const read = readPrice(typed, currency, minorDigits(currency))
    if (read.ok) return read.value
    wrong(read.refusal.why === 'currencyUnknown' ? currencyAt : at, read.refusal)
    return undefined
  }
  const on = readDay(fields.on, 'on')
  if (!on.ok) wrong(on.refusal.at, on.refusal.refusal)
  const paid = fields.paid === 'price' ? money(fields.price, 'price') : fields.paid === 'free' ? 'free' : undefined
  if (fields.paid === 'price' && fields.price.trim() === '') wrong('price', { why: 'empty' })
  const postage = money(fields.postage, 'postage', fields.postageCurrency || fields.currency, 'postageCurrency')
  const things = fields.things.map(({ bottle, what, count, share, alone }, place): Thing => {
    const number = readNumber(count)
    if (count.trim() !== '' && !number.ok) wrong(`count ${place}`, number.refusal)
    const its = { share: money(share, `share ${place}`), alone: money(alone, `alone ${place}`) }
    return {
      ...(bottle ? { bottle: bottle as BottleId } : { what }),
      ...(number.ok && !bottle ? { count: number.value } : {}),
      ...(its.share ? { share: its.share } : {}),
      ...(its.alone ? { alone: its.alone } : {}),
    }
  })
  const asked = { purchase: fields.purchase, on: on.ok ? on.value : undefined, paid, postage, things }
  return { asked, troubles }
}

const beside = (refusal: PurchaseRefusal): string => {
  switch (refusal.why) {
    case 'boughtNotYet':
      return 'on'
    case 'thingUnnamed':
      return `what ${refusal.thing}`
    case 'thingsNotCounted':
      return `count ${refusal.thing}`
    case 'twoCurrencies':
      return 'sum'
    case 'sharedTooMuch':
      return 'sum'
    case 'nothingInIt':
    case 'bottleTwice':
    case 'noSuchBottle':
      return 'things'
  }
}

export const savePurchase =
  (fields: PurchaseFields) =>
  (world: World, { now }: { readonly now: Moment }) => {
    const { asked, troubles } = readPurchase(fields)
    const here = hereIn(world, now)
    const all = [
      ...troubles,
      ...purchaseTroubles(world, asked, here).map((refusal): MoneyTrouble => ({ at: beside(refusal), refusal })),
    ]
    if (all.length > 0) return refuse(all)
    const recorded = recordPurchase(world, asked, here)
    return recorded.ok ? recorded : refuse([{ at: beside(recorded.refusal), refusal: recorded.refusal }])
  }
