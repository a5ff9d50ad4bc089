/** What moving, touching and counting make of the trays of a lot. */
import type { PortionsMoved, WellsSeen } from './facts.ts'
import type { Growing } from './folding.ts'
import type { Lot } from './state.ts'
import { traysNow } from './trays.ts'

/** Whole trays go as they are: each is the first that holds as many. Anything else comes out of the wells like a dose. */
export const moveAway = (lot: Growing<Lot>, { count, kept }: PortionsMoved) => {
  const left = lot.left - count
  for (const { rows, columns, filled } of kept.as === 'trays' ? kept.trays : []) {
    const tray = traysNow(lot)?.trays.find(
      (each) => each.rows === rows && each.columns === columns && each.holds === filled,
    )
    if (!tray) continue
    lot.traysSeen.set(tray.tray, { ...lot.traysSeen.get(tray.tray), movedAway: true })
    lot.left -= filled
  }
  lot.left = left
}

/** Whoever touches a well sees the trays as they are drawn: those drawn empty are empty, and not filled again by a touch. */
export const seeWells = (lot: Growing<Lot>, { tray: touched, empty }: WellsSeen) => {
  for (const { tray, holds, filled } of traysNow(lot)?.trays ?? [])
    if (holds === 0 && tray !== touched)
      lot.traysSeen.set(tray, {
        ...lot.traysSeen.get(tray),
        empty: Array.from({ length: filled }, (_, well) => well),
      })
  lot.traysSeen.set(touched, { ...lot.traysSeen.get(touched), empty })
}

/** A count outranks the wells touched before it, where they do not agree. */
export const recount = (lot: Growing<Lot>, found: number) => {
  lot.left = found
  // Most trays are never touched, and drawing each of them for every count would cost half a fold.
  if (lot.traysSeen.size === 0 || (traysNow(lot)?.beyondBook ?? 0) === 0) return
  for (const [tray, { empty: _, ...seen }] of lot.traysSeen) lot.traysSeen.set(tray, seen)
}
