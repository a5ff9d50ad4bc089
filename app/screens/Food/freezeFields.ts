/** Freezing a bottle: the fields of the plan and of what came of it. */
import type { Day, LotId, Moment, World } from '../../../core/index.ts'
import { newId } from '../../state/ids.ts'
import { nextMark } from '../../words/freezing.ts'
import { type PlaceFields, placeFields } from './place.ts'
import { type TrayFields, trayFields } from './trays.ts'

/** Undefined: as proposed, until she types her own. */
export type FreezeFields = PlaceFields &
  TrayFields & {
    readonly lot: LotId
    readonly portion: string | undefined
    /** Microlitres of a usual well, or 'own'. */
    readonly well: string
    readonly ownWell: string
    readonly traysOwned: string
    readonly keep: 'nothing' | 'plan' | 'own'
    readonly keepOwn: string
    /** Null: what stands there is no count. */
    readonly made: number | null | undefined
    readonly each: string | undefined
    readonly frozenOn: string
    readonly mark: string
  }

export const freezeFields = (world: World, today: Day, now: Moment): FreezeFields => {
  const last = [...world.lots.values()].at(-1)?.made
  return {
    ...placeFields(world, 'freezer', last?.place, now),
    ...trayFields(world),
    lot: newId<LotId>(),
    portion: undefined,
    well: '1200',
    ownWell: '',
    traysOwned: '',
    keep: 'nothing',
    keepOwn: '',
    made: undefined,
    each: undefined,
    frozenOn: today,
    mark: nextMark(world),
  }
}
