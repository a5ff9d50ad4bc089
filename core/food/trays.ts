/** How the wells of a lot's trays stand, when portions are pushed out one after the other. */
import type { Tray } from './facts.ts'
import { type Lot, portionsLeft, type TraySeen } from './state.ts'

export type TrayNow = Tray & {
  /** Its place in the lot, from 0. */
  readonly tray: number
  /** Wells that still hold a portion. */
  readonly holds: number
  /** Along the rows; true holds a portion. */
  readonly wells: readonly boolean[]
  /** The columns after which it is cut through. */
  readonly cuts: readonly number[]
}
export type TraysNow = {
  readonly trays: readonly TrayNow[]
  readonly full: number
  /** The one being used, unless all are as they were filled. */
  readonly open: TrayNow | undefined
  /** What she has touched out of the wells goes beyond the book by so many: worth a count. */
  readonly beyondBook: number
}

/** Wells she saw empty, of those that were filled. */
const seenEmpty = ({ filled }: Tray, seen: TraySeen | undefined): ReadonlySet<number> =>
  new Set(seen?.empty?.filter((well) => well >= 0 && well < filled))

const wellsOf = ({ rows, columns, filled }: Tray, empty: ReadonlySet<number>, more: number): readonly boolean[] => {
  const wells = Array.from({ length: rows * columns }, (_, well) => well < filled && !empty.has(well))
  // Nobody said which: they are pushed out from the end.
  for (let well = filled - 1; well >= 0 && more > 0; well -= 1) {
    if (!wells[well]) continue
    wells[well] = false
    more -= 1
  }
  return wells
}

/**
 * One tray is emptied before the next is begun, the last filled first: a part-filled tray is the one she reaches for. Wells
 * she has touched are out before any other. Found portions beyond what the trays were filled with stand in none of them,
 * and a tray that was moved to another lot is not among them. Undefined for portions kept loose.
 */
export const traysNow = (lot: Lot): TraysNow | undefined => {
  if (lot.made.kept.as !== 'trays') return undefined
  const all = lot.made.kept.trays.map((tray, place) => ({
    tray,
    place,
    seen: lot.traysSeen.get(place),
    empty: seenEmpty(tray, lot.traysSeen.get(place)),
  }))
  const filled = all.filter(({ seen }) => !seen?.movedAway)
  const elsewhere = all.reduce((sum, { tray, seen }) => sum + (seen?.movedAway ? tray.filled : 0), 0)
  const byEye = filled.reduce((sum, { empty }) => sum + empty.size, 0)
  const gone = Math.max(0, lot.made.portions - elsewhere - portionsLeft(lot))
  let untold = Math.max(0, gone - byEye)
  const trays = filled
    .toReversed()
    .map(({ tray, place, seen, empty }): TrayNow => {
      const more = Math.min(untold, tray.filled - empty.size)
      untold -= more
      const wells = wellsOf(tray, empty, more)
      return { ...tray, tray: place, holds: tray.filled - empty.size - more, wells, cuts: seen?.cuts ?? [] }
    })
    .toReversed()
  const begun = trays.findLast(({ holds, rows, columns }) => holds > 0 && holds < rows * columns)
  return {
    trays,
    full: trays.filter(({ holds, rows, columns }) => holds === rows * columns).length,
    open: begun,
    beyondBook: Math.max(0, byEye - gone),
  }
}

/** The well whose turn it is: the last that holds a portion. */
export const nextWell = ({ wells }: Pick<TrayNow, 'wells'>): number | undefined => {
  const last = wells.lastIndexOf(true)
  return last === -1 ? undefined : last
}

/** Portions laid into equal trays, all full but the last. */
export const fillTrays = (portions: number, rows: number, columns: number): readonly Tray[] => {
  const wells = rows * columns
  const full = Math.floor(portions / wells)
  const rest = portions - full * wells
  const tray = (filled: number): Tray => ({ rows, columns, filled })
  return [...Array.from({ length: full }, () => tray(wells)), ...(rest > 0 ? [tray(rest)] : [])]
}
