/** Portions for another door: the fields, and what the core makes of them. */
import {
  type Kept,
  type Lot,
  type LotId,
  type Moment,
  movePortions,
  ok,
  type PlaceId,
  portionsLeft,
  type TrayNow,
  traysNow,
  type World,
} from '../../../core/index.ts'
import { newId } from '../../state/ids.ts'
import { partMark } from '../../words/moving.ts'
import { type PlaceFields, placeFields, placesOffered, readPlace } from './place.ts'
import { readName } from './readName.ts'
import { type FormAsk, placed, trouble } from './useAct.ts'

export type MoveFields = PlaceFields & {
  readonly how: 'all' | 'trays' | 'open' | 'some'
  readonly trays: number | null
  readonly some: number | null
  readonly lot: LotId
  readonly mark: string
  /** What has thawed may go to a fridge as well. */
  readonly door: 'fridge' | 'freezer'
}

/** Another door than the one it stands behind; a new one where there is no other. */
export const elsewhere = (world: World, door: 'fridge' | 'freezer', here: PlaceId, now: Moment): PlaceFields => {
  const other = placesOffered(world, door, undefined, now).find(({ place }) => place !== here)
  return { ...placeFields(world, door, other?.place, now), place: other?.place ?? 'new' }
}

export const moveFields = (world: World, lot: Lot, now: Moment): MoveFields => ({
  ...elsewhere(world, lot.meltedOn ? 'fridge' : 'freezer', lot.place, now),
  how: 'all',
  trays: 1,
  some: 1,
  lot: newId<LotId>(),
  mark: partMark(world, lot),
  door: lot.meltedOn ? 'fridge' : 'freezer',
})

const isFull = ({ holds, rows, columns }: TrayNow): boolean => holds === rows * columns

/** The full trays that may go as they are: not all there is, which goes under its own mark. */
export const traysToGo = (lot: Lot): readonly TrayNow[] => {
  const now = traysNow(lot)
  const full = now?.trays.filter(isFull) ?? []
  return now?.open ? full : full.slice(1)
}

type Part = { readonly count: number; readonly kept: Kept }
const asTrays = (trays: readonly TrayNow[]): Part => ({
  count: trays.reduce((sum, { holds }) => sum + holds, 0),
  kept: { as: 'trays', trays: trays.map(({ rows, columns, holds }) => ({ rows, columns, filled: holds })) },
})

/** Undefined while no number stands where one is asked. */
export const partOf = ({ how, trays, some }: MoveFields, lot: Lot): Part | undefined => {
  if (how === 'all') return { count: portionsLeft(lot), kept: lot.made.kept }
  if (how === 'some') return some === null ? undefined : { count: some, kept: { as: 'loose' } }
  const open = traysNow(lot)?.open
  if (how === 'open') return open && asTrays([open])
  return trays === null ? undefined : asTrays(traysToGo(lot).slice(0, trays))
}

export const moveLot =
  (fields: MoveFields, from: LotId, asTheyAre = false): FormAsk =>
  (world, { now }) => {
    // Sent before the app was killed, and restored as a draft since.
    if (world.lots.has(fields.lot)) return ok([])
    const lot = world.lots.get(from)
    if (!lot) return trouble('', { why: 'noSuchLot' })
    const place = readPlace(fields, lot.meltedOn ? fields.door : 'freezer', world, now)
    if (!place.ok) return place
    const part = partOf(fields, lot)
    if (!part) return trouble('count', { why: 'howMany' })
    const mark = readName(fields.mark, 'mark')
    if (!mark.ok && fields.how !== 'all') return mark
    const asked = { from, to: place.value.place, ...part, lot: fields.lot, mark: mark.ok ? mark.value : '', asTheyAre }
    const moved = placed(movePortions(place.value.world, asked, now), { notACount: 'count', moreThanLeft: 'count' })
    return moved.ok ? ok([...place.value.facts, ...moved.value]) : moved
  }
