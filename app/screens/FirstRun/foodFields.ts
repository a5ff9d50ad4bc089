/** "What food have you?": what is typed, and what the core makes of it. */
import {
  type BeginAsked,
  type BottleId,
  type BottleUnit,
  type Day,
  type FoodId,
  type FoodKind,
  isDay,
  type LotId,
  newFood,
  ok,
  type PlaceId,
  type Result,
  readMillilitres,
  readNumber,
  readSize,
  refuse,
} from '../../../core/index.ts'
import type { AnyRefusal } from '../../words/refusals.ts'

export type FoodFields = {
  readonly have: 'bottle' | 'portions' | 'nothing' | undefined
  readonly foodName: string
  readonly sort: FoodKind
  readonly placeName: string
  readonly size: string
  readonly sizeUnit: BottleUnit | undefined
  readonly begun: 'new' | 'begun'
  /** Per cent. */
  readonly full: string
  readonly arrived: string
  readonly count: number | null
  readonly each: string
  /** Its first day. */
  readonly month: string
  /** Made once with the form, so that a second try is the same bottle. */
  readonly food: FoodId
  readonly place: PlaceId
  readonly bottle: BottleId
  readonly lot: LotId
}
export type FoodField = 'have' | 'size' | 'sizeUnit' | 'full' | 'arrived' | 'count' | 'each'
export type FoodWrong = { readonly field: FoodField; readonly refusal: AnyRefusal | { readonly why: 'choose' } }

type FoodAnswer = Pick<BeginAsked, 'food' | 'place' | 'bottle' | 'portions'>

const wrong = (field: FoodField, refusal: FoodWrong['refusal']) => refuse<FoodWrong>({ field, refusal })

export const readFoodFields = (fields: FoodFields, today: Day): Result<FoodAnswer, FoodWrong> => {
  const { have } = fields
  if (have === undefined) return wrong('have', { why: 'choose' })
  if (have === 'nothing') return ok({})
  const door = have === 'bottle' ? 'fridge' : 'freezer'
  const food = newFood(fields.food, fields.foodName.trim() || 'Green food', fields.sort)
  const place = { place: fields.place, name: fields.placeName.trim() || `kitchen ${door}`, door } as const
  return have === 'bottle' ? readBottle(fields, today, { food, place }) : readPortions(fields, { food, place })
}

const readBottle = (fields: FoodFields, today: Day, rest: FoodAnswer): Result<FoodAnswer, FoodWrong> => {
  if (!fields.sizeUnit) return wrong('sizeUnit', { why: 'choose' })
  const size = readSize(fields.size, fields.sizeUnit)
  if (!size.ok) return wrong('size', size.refusal)
  const { value, unit } = size.value
  const bottle = { bottle: fields.bottle, size: { value, unit } }
  if (fields.begun === 'new') return ok({ ...rest, bottle: { ...bottle, full: 1, receivedOn: today, openedOn: today } })
  const full = readNumber(fields.full)
  if (!full.ok) return wrong('full', full.refusal)
  if (!(full.value > 0 && full.value <= 100)) return wrong('full', { why: 'fullOutOfRange', full: full.value / 100 })
  const arrived = isDay(fields.arrived) ? fields.arrived : undefined
  if (arrived && arrived > today) return wrong('arrived', { why: 'dayNotYet', which: 'received', day: arrived, today })
  // It is open; without a better day, since it came.
  return ok({
    ...rest,
    bottle: { ...bottle, full: full.value / 100, receivedOn: arrived, openedOn: arrived ?? today },
  })
}

const readPortions = (fields: FoodFields, rest: FoodAnswer): Result<FoodAnswer, FoodWrong> => {
  if (!fields.count) return wrong('count', { why: 'wholePortions', asked: fields.count ?? 0 })
  const each = readMillilitres(fields.each)
  if (!each.ok) return wrong('each', each.refusal)
  return ok({
    ...rest,
    portions: {
      lot: fields.lot,
      mark: 'bag 1',
      portions: fields.count,
      each: each.value,
      frozenOn: fields.month as Day,
      about: true,
      kept: { as: 'loose' },
    },
  })
}
