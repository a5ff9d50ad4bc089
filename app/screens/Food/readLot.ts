/** What the core makes of portions she has already. */
import {
  type Day,
  isDay,
  lastGoodFrozen,
  type Moment,
  ok,
  type Result,
  readMillilitres,
  recordPortionsOnHand,
  type World,
} from '../../../core/index.ts'
import { hereIn } from '../useReading.ts'
import type { LotFields } from './lotFields.ts'
import { readPick } from './pick.ts'
import { readPlace } from './place.ts'
import { readName } from './readName.ts'
import { readKeptAs } from './trays.ts'
import { type FormAsk, placed, type Trouble, trouble } from './useAct.ts'

const readWhen = ({ when, month, frozenOn }: LotFields): Result<Day, Trouble> => {
  const typed = when === 'month' ? month : frozenOn
  return isDay(typed) ? ok(typed) : trouble(when === 'month' ? 'month' : 'frozenOn', { why: 'dayMissing' })
}

/** Until when they would be good, as far as the form says. */
export const lotAnswer = (fields: LotFields, world: World, now: Moment): Day | undefined => {
  const when = readWhen(fields)
  const pick = readPick({ ...fields, foodName: fields.foodName.trim() || '?' }, world, now)
  if (!when.ok || !pick.ok) return undefined
  return lastGoodFrozen({ frozenOn: when.value, late: false }, pick.value.food)
}

const places = { wholePortions: 'made', portionEmpty: 'each', outOfOrder: 'frozenOn', dayNotYet: 'frozenOn' } as const

export const logLot =
  (fields: LotFields): FormAsk =>
  (world, { now }) => {
    // Sent before the app was killed, and restored as a draft since.
    if (world.lots.has(fields.lot)) return ok([])
    const portions = fields.made
    if (portions === undefined) return trouble('made', { why: 'howMany' })
    const each = placed(readMillilitres(fields.each), 'each')
    if (!each.ok) return each
    const when = readWhen(fields)
    if (!when.ok) return when
    const pick = readPick(fields, world, now)
    if (!pick.ok) return pick
    const kept = readKeptAs(fields, portions)
    if (!kept.ok) return kept
    const place = readPlace(fields, 'freezer', world, now)
    if (!place.ok) return place
    const mark = readName(fields.mark, 'mark')
    if (!mark.ok) return mark
    const asked = {
      lot: fields.lot,
      food: pick.value.food.food,
      mark: mark.value,
      portions,
      each: each.value,
      frozenOn: when.value,
      about: fields.when === 'month',
      kept: kept.value,
      place: place.value.place,
    }
    const recorded = placed(recordPortionsOnHand(pick.value.world, asked, hereIn(world, now)), places)
    return recorded.ok ? ok([...pick.value.facts, ...place.value.facts, ...recorded.value]) : recorded
  }
