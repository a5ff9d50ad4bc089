/** What the core makes of portions as they were made. */
import { isDay, ok, readMillilitres, recordFreezing } from '../../../core/index.ts'
import { typedMillilitres } from '../../words/numbers.ts'
import { hereIn } from '../useReading.ts'
import type { FreezeFields } from './freezeFields.ts'
import { readPlace } from './place.ts'
import type { PlanRead } from './readFreezing.ts'
import { readName } from './readName.ts'
import { readKeptAs } from './trays.ts'
import { type FormAsk, placed, trouble } from './useAct.ts'

/** What she was asked about and says is so. */
export type Confirmed = {
  readonly lateIsFine?: boolean
  readonly bottleHeldMore?: boolean
  readonly freezeAnyway?: boolean
}

/** What stands in the field of each portion's size: her own figure, else the plan's. */
export const eachTyped = (fields: FreezeFields, plan: PlanRead | undefined): string =>
  fields.each ?? (plan ? typedMillilitres(plan.portion) : '')
export const madeTyped = (fields: FreezeFields, plan: PlanRead | undefined): number | null =>
  fields.made === undefined ? (plan?.plan.portions ?? null) : fields.made

const places = {
  wholePortions: 'made',
  portionEmpty: 'each',
  outOfOrder: 'frozenOn',
  dayNotYet: 'frozenOn',
} as const

export const recordMade =
  (
    fields: FreezeFields,
    bottle: Parameters<typeof recordFreezing>[1]['bottle'],
    plan: PlanRead | undefined,
    sure: Confirmed,
  ): FormAsk =>
  (world, { now }) => {
    // Sent before the app was killed, and restored as a draft since.
    if (world.lots.has(fields.lot)) return ok([])
    const portions = madeTyped(fields, plan)
    if (portions === null) return trouble('made', { why: 'howMany' })
    const each = placed(readMillilitres(eachTyped(fields, plan)), 'each')
    if (!each.ok) return each
    const { frozenOn } = fields
    if (!isDay(frozenOn)) return trouble('frozenOn', { why: 'dayMissing' })
    const kept = readKeptAs(fields, portions)
    if (!kept.ok) return kept
    const place = readPlace(fields, 'freezer', world, now)
    if (!place.ok) return place
    const mark = readName(fields.mark, 'mark')
    if (!mark.ok) return mark
    const asked = {
      lot: fields.lot,
      mark: mark.value,
      portions,
      each: each.value,
      frozenOn,
      kept: kept.value,
      place: place.value.place,
      bottle,
      ...sure,
    }
    const made = placed(recordFreezing(world, asked, hereIn(world, now)), places)
    return made.ok ? ok([...place.value.facts, ...made.value]) : made
  }
