/** A bottle's form: its fields, and what stands in them before anything is typed. */
import type { BottleId, BottleUnit, Day, Moment, Price, World } from '../../../core/index.ts'
import { newId } from '../../state/ids.ts'
import { minorDigits, usualCurrency } from '../../words/money.ts'
import { asTyped, typedMillilitres } from '../../words/numbers.ts'
import { type PickFields, pickFields } from './pick.ts'
import { type PlaceFields, placeFields } from './place.ts'

export type BottleFields = PickFields &
  PlaceFields & {
    readonly bottle: BottleId
    readonly size: string
    readonly unit: BottleUnit
    readonly fullness: 'full' | 'share' | 'amount'
    /** Per cent. */
    readonly share: string
    /** Millilitres. */
    readonly amount: string
    readonly receivedOn: string
    readonly seal: 'opened' | 'sealed'
    readonly openedOn: string
    readonly bottledOn: string
    readonly useBy: string
    /** With other things: its share is asked once it is on record. */
    readonly paid: 'price' | 'free' | 'notKnown' | 'parcel'
    readonly price: string
    readonly currency: string
  }

const paidFields = (price: Price | undefined): Pick<BottleFields, 'paid' | 'price' | 'currency'> => {
  const currency = usualCurrency(navigator.language)
  if (price === undefined) return { paid: 'notKnown', price: '', currency }
  if (price === 'free') return { paid: 'free', price: '', currency }
  return { paid: 'price', price: asTyped(price.minor / 10 ** minorDigits(price.currency)), currency: price.currency }
}

/** Everything as it was with the last bottle, opened today: for a food she has had before there is nothing to type. */
export const newBottleFields = (world: World, today: Day, now: Moment): BottleFields => {
  const last = [...world.bottles.values()].at(-1)?.recorded
  return {
    ...pickFields(world, last?.food, now),
    ...placeFields(world, 'fridge', last?.place, now),
    bottle: newId<BottleId>(),
    size: '',
    unit: 'mL',
    ...paidFields(undefined),
    ...(last ? asLastOf(world, last.food) : {}),
    fullness: 'full',
    share: '80',
    amount: '',
    receivedOn: today,
    seal: 'opened',
    openedOn: today,
    bottledOn: '',
    useBy: '',
  }
}

/** Size and price as they were with the last bottle of a food; nothing for one she never had. */
export const asLastOf = (world: World, food: string): Partial<BottleFields> => {
  const last = [...world.bottles.values()].findLast(({ recorded }) => recorded.food === food)?.recorded
  return last ? { size: asTyped(last.size.value), unit: last.size.unit, ...paidFields(last.price) } : {}
}

/** As the book has it. */
export const knownBottleFields = (world: World, bottle: BottleId, now: Moment): BottleFields | undefined => {
  const known = world.bottles.get(bottle)
  if (!known) return undefined
  const { recorded, openedOn } = known
  return {
    ...pickFields(world, recorded.food, now, recorded.food),
    ...placeFields(world, 'fridge', recorded.place, now, recorded.place),
    bottle,
    size: asTyped(recorded.size.value),
    unit: recorded.size.unit,
    fullness: recorded.about ? 'amount' : 'full',
    share: '80',
    amount: recorded.about ? typedMillilitres(recorded.contents) : '',
    receivedOn: recorded.receivedOn ?? '',
    seal: openedOn ? 'opened' : 'sealed',
    openedOn: openedOn ?? '',
    bottledOn: recorded.bottledOn ?? '',
    useBy: recorded.useBy ?? '',
    ...paidFields(recorded.price),
  }
}
