/** What the core makes of a bottle's form. */
import {
  type BottleAsked,
  type BottleRefusal,
  correctBottle,
  type FoodDescribed,
  type Microlitres,
  type Moment,
  ok,
  type PlaceDescribed,
  type Price,
  type Result,
  readMillilitres,
  readNumber,
  readPrice,
  readSize,
  recordBottle,
  type World,
} from '../../../core/index.ts'
import { minorDigits } from '../../words/money.ts'
import { hereIn } from '../useReading.ts'
import type { BottleFields } from './bottleFields.ts'
import { readDay } from './dayFields.ts'
import { readPick } from './pick.ts'
import { readPlace } from './place.ts'
import { type FormAsk, placed, type Trouble, trouble } from './useAct.ts'

/** The part of it that is there, 1 for all. */
const readFull = (fields: BottleFields, whole: Microlitres): Result<number, Trouble> => {
  if (fields.fullness === 'full') return ok(1)
  if (fields.fullness === 'amount') {
    const left = placed(readMillilitres(fields.amount), 'amount')
    return left.ok ? ok(left.value / whole) : left
  }
  const share = placed(readNumber(fields.share), 'share')
  return share.ok ? ok(share.value / 100) : share
}

type BottleRead = {
  readonly asked: BottleAsked
  readonly food: FoodDescribed
  readonly facts: readonly (FoodDescribed | PlaceDescribed)[]
  readonly state: World
}

export const readBottle = (fields: BottleFields, world: World, now: Moment): Result<BottleRead, Trouble> => {
  const pick = readPick(fields, world, now)
  if (!pick.ok) return pick
  const size = placed(readSize(fields.size, fields.unit), 'size')
  if (!size.ok) return size
  const full = readFull(fields, size.value.amount)
  if (!full.ok) return full
  const days = readDays(fields)
  if (!days.ok) return days
  const place = readPlace(fields, 'fridge', world, now)
  if (!place.ok) return place
  const paid = fields.paid === 'price' ? readPaid(fields) : ok(fields.paid === 'free' ? ('free' as const) : undefined)
  if (!paid.ok) return paid
  const { value, unit } = size.value
  const asked: BottleAsked = {
    bottle: fields.bottle,
    food: pick.value.food.food,
    size: { value, unit },
    full: full.value,
    ...days.value,
    price: paid.value,
    place: place.value.place,
  }
  const { food, facts, world: state } = pick.value
  return ok({ asked, food, facts: [...facts, ...place.value.facts], state })
}

type Days = Pick<BottleAsked, 'bottledOn' | 'receivedOn' | 'openedOn' | 'useBy'>
const readDays = (fields: BottleFields): Result<Days, Trouble> => {
  const receivedOn = readDay(fields.receivedOn, 'receivedOn')
  if (!receivedOn.ok) return receivedOn
  const openedOn = readDay(fields.seal === 'sealed' ? '' : fields.openedOn, 'openedOn')
  if (!openedOn.ok) return openedOn
  const bottledOn = readDay(fields.bottledOn, 'bottledOn')
  if (!bottledOn.ok) return bottledOn
  const useBy = readDay(fields.useBy, 'useBy')
  if (!useBy.ok) return useBy
  if (fields.seal === 'opened' && !openedOn.value) return trouble('openedOn', { why: 'dayMissing' })
  return ok({
    bottledOn: bottledOn.value,
    receivedOn: receivedOn.value,
    openedOn: openedOn.value,
    useBy: useBy.value,
  })
}

const readPaid = ({ price, currency }: BottleFields): Result<Price, Trouble> => {
  const paid = readPrice(price, currency, minorDigits(currency))
  return placed(paid, !paid.ok && paid.refusal.why === 'currencyUnknown' ? 'currency' : 'price')
}

const dayFields = { bottled: 'bottledOn', received: 'receivedOn', opened: 'openedOn', frozen: '' } as const

/** A refusal of the core beside the field it concerns; of two days in the wrong order, the one that should be the later. */
const beside = <Value>(
  result: Result<Value, BottleRefusal | { readonly why: 'noSuchBottle' }>,
): Result<Value, Trouble> => {
  if (result.ok) return result
  const { refusal } = result
  if (refusal.why === 'outOfOrder') return trouble(dayFields[refusal.after], refusal)
  if (refusal.why === 'dayNotYet') return trouble(dayFields[refusal.which], refusal)
  return placed(result, { sizeNotPositive: 'size', fullOutOfRange: 'full' })
}

export const logBottle =
  (fields: BottleFields): FormAsk =>
  (world, { now }) => {
    // Sent before the app was killed, and restored as a draft since.
    if (world.bottles.has(fields.bottle)) return ok([])
    const read = readBottle(fields, world, now)
    if (!read.ok) return read
    const recorded = beside(recordBottle(read.value.state, read.value.asked, hereIn(world, now)))
    return recorded.ok ? ok([...read.value.facts, ...recorded.value]) : recorded
  }

export const mendBottle =
  (fields: BottleFields): FormAsk =>
  (world, { now }) => {
    const read = readBottle(fields, world, now)
    if (!read.ok) return read
    const { state, asked, facts } = read.value
    const mended = beside(correctBottle(state, asked, hereIn(world, now)))
    return mended.ok ? ok([...facts, ...mended.value]) : mended
  }
