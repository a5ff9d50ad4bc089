/** How the wells of a lot's trays stand, when portions are pushed out one after the other. */
import type { Tray } from './facts.ts'
import { type Lot, portionsLeft } from './state.ts'

export type TrayNow = Tray & {
  /** Wells that still hold a portion. */
  readonly holds: number
}
export type TraysNow = {
  readonly trays: readonly TrayNow[]
  readonly full: number
  /** The one being used, unless all are as they were filled. */
  readonly open: TrayNow | undefined
}

/**
 * One tray is emptied before the next is begun, the last filled first: a part-filled tray is the one she reaches for. Found
 * portions beyond what the trays were filled with stand in none of them. Undefined for portions kept loose.
 */
export const traysNow = (lot: Lot): TraysNow | undefined => {
  if (lot.made.kept.as !== 'trays') return undefined
  let gone = Math.max(0, lot.made.portions - portionsLeft(lot))
  const trays = lot.made.kept.trays
    .toReversed()
    .map((tray): TrayNow => {
      const out = Math.min(gone, tray.filled)
      gone -= out
      return { ...tray, holds: tray.filled - out }
    })
    .toReversed()
  const begun = trays.findLast(({ holds, rows, columns }) => holds > 0 && holds < rows * columns)
  return { trays, full: trays.filter(({ holds, rows, columns }) => holds === rows * columns).length, open: begun }
}

/** Portions laid into equal trays, all full but the last. */
export const fillTrays = (portions: number, rows: number, columns: number): readonly Tray[] => {
  const wells = rows * columns
  const full = Math.floor(portions / wells)
  const rest = portions - full * wells
  const tray = (filled: number): Tray => ({ rows, columns, filled })
  return [...Array.from({ length: full }, () => tray(wells)), ...(rest > 0 ? [tray(rest)] : [])]
}
