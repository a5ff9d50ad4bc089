/** A bag without its label: the form’s fields, and what the core makes of them. */
import {
  type FoodId,
  foodsAt,
  freezingsOf,
  isDay,
  type LotId,
  type Moment,
  ok,
  readMillilitres,
  recordUnlabelled,
  type World,
} from '../../../../core/index.ts'
import { newId } from '../../../state/ids.ts'
import { hereIn } from '../../useReading.ts'
import { type PlaceFields, placeFields, readPlace } from '../place.ts'
import { readName } from '../readName.ts'
import { type FormAsk, placed, trouble } from '../useAct.ts'

export type UnlabelledFields = PlaceFields & {
  readonly lot: LotId
  readonly food: FoodId | ''
  readonly count: number | null
  readonly each: string
  /** Lots, and `other`. */
  readonly mayBe: readonly string[]
  /** The month, where it may be something that is not on record. */
  readonly month: string
  /** A lot, or `none`. */
  readonly countedIn: string
  readonly mark: string
}

export const other = 'other'
export const none = 'none'

export const unlabelledFields = (world: World, mark: string, now: Moment): UnlabelledFields => {
  const last = [...world.lots.values()].at(-1)?.made
  const foods = foodsAt(world, now)
  return {
    ...placeFields(world, 'freezer', last?.place, now),
    lot: newId<LotId>(),
    food: (foods.find(({ food }) => food === last?.food) ?? foods[0])?.food ?? '',
    count: null,
    each: last ? String(last.each / 1000) : '1',
    mayBe: [],
    month: '',
    countedIn: none,
    mark,
  }
}

const places = {
  wholePortions: 'count',
  tooMany: 'count',
  portionEmpty: 'each',
  whichFreezing: 'mayBe',
  moreThanBagHas: 'countedIn',
  dayNotYet: 'month',
} as const

export const logUnlabelled =
  (fields: UnlabelledFields): FormAsk =>
  (world, { now }) => {
    // Sent before the app was killed, and restored as a draft since.
    if (world.lots.has(fields.lot)) return ok([])
    const { food, count } = fields
    if (food === '') return trouble('', { why: 'noSuchFood' })
    if (count === null) return trouble('count', { why: 'howMany' })
    const each = placed(readMillilitres(fields.each), 'each')
    if (!each.ok) return each
    const olderToo = fields.mayBe.includes(other)
    if (olderToo && !isDay(fields.month)) return trouble('month', { why: 'dayMissing' })
    const place = readPlace(fields, 'freezer', world, now)
    if (!place.ok) return place
    const mark = readName(fields.mark, 'mark')
    if (!mark.ok) return mark
    const lots = freezingsOf(world, food).filter(({ id }) => fields.mayBe.includes(id))
    const recorded = placed(
      recordUnlabelled(
        place.value.world,
        {
          lot: fields.lot,
          mark: mark.value,
          food,
          portions: count,
          each: each.value,
          kept: { as: 'loose' },
          place: place.value.place,
          mayBe: lots.map(({ id }) => id),
          ...(olderToo && isDay(fields.month) ? { noOlderThan: fields.month } : {}),
          ...(fields.countedIn === none ? {} : { countedIn: fields.countedIn as LotId }),
        },
        hereIn(world, now),
      ),
      places,
    )
    return recorded.ok ? ok([...place.value.facts, ...recorded.value]) : recorded
  }
