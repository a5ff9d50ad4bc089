/** Portions she has already: the form’s fields. No bottle, no history, no reason is asked. */
import type { Day, LotId, Moment, World } from '../../../core/index.ts'
import { newId } from '../../state/ids.ts'
import { nextMark } from '../../words/freezing.ts'
import { type PickFields, pickFields } from './pick.ts'
import { type PlaceFields, placeFields } from './place.ts'
import { type TrayFields, trayFields } from './trays.ts'

export type LotFields = PickFields &
  PlaceFields &
  TrayFields & {
    readonly lot: LotId
    readonly made: number | undefined
    readonly each: string
    readonly when: 'month' | 'day'
    /** The first of it. */
    readonly month: string
    readonly frozenOn: string
    readonly mark: string
  }

export const lotFields = (world: World, today: Day, now: Moment): LotFields => {
  const last = [...world.lots.values()].at(-1)?.made
  return {
    ...pickFields(world, last?.food ?? [...world.bottles.values()].at(-1)?.recorded.food, now),
    ...placeFields(world, 'freezer', last?.place, now),
    ...trayFields(world),
    lot: newId<LotId>(),
    made: undefined,
    each: '1',
    when: 'month',
    month: '',
    frozenOn: today,
    mark: nextMark(world),
  }
}

/** Months offered: frozen food is seldom older than five years. */
export const monthsOffered = 60
