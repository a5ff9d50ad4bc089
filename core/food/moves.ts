/** Behind another door, to somebody else, out of their wells. */
import type { Day } from '../basis/days.ts'
import type { BottleId, LotId, PlaceId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type {
  BottleMoved,
  Door,
  Kept,
  LotMoved,
  PortionsGivenAway,
  PortionsMoved,
  TrayCut,
  WellsSeen,
} from './facts.ts'
import { type FoodState, isBlock, type Lot, placesAt, portionsLeft } from './state.ts'
import { traysNow } from './trays.ts'

export type MoveRefusal =
  | { readonly why: 'noSuchBottle' | 'noSuchLot' | 'noSuchPlace' }
  | { readonly why: 'alreadyThere' }
  | { readonly why: 'notACount'; readonly asked: number }
  | { readonly why: 'moreThanLeft'; readonly left: number }
  /** Trays that do not add up to what is moved. */
  | { readonly why: 'traysDisagree'; readonly inTrays: number; readonly portions: number }

/** Thawed portions are not put into a freezer as frozen goods. */
export type ThawedMoveRefusal = { readonly why: 'thawedPortions'; readonly on: Day }

/** A door of that sort, and not one that is gone: in the fridge portions thaw. */
const isThere = (state: FoodState, place: PlaceId, door: Door, now: Moment): boolean =>
  placesAt(state, now).some((known) => known.place === place && known.door === door)

export const moveBottle = (
  state: FoodState,
  { bottle, to }: { readonly bottle: BottleId; readonly to: PlaceId },
  now: Moment,
): Result<readonly [BottleMoved], MoveRefusal> => {
  const known = state.bottles.get(bottle)
  if (!known) return refuse({ why: 'noSuchBottle' })
  // A block of ice goes to a freezer, and comes back to a fridge when it is let thaw.
  if (!isThere(state, to, 'fridge', now) && !(isBlock(known) && isThere(state, to, 'freezer', now)))
    return refuse({ why: 'noSuchPlace' })
  return known.place === to ? refuse({ why: 'alreadyThere' }) : ok([{ kind: 'bottleMoved', at: now, bottle, to }])
}

export type PortionsMoveAsked = {
  readonly from: LotId
  readonly to: PlaceId
  /** All that is left moves as it is; fewer become a lot of their own. */
  readonly count: number
  /** For that lot: its id, its mark and how it is kept. */
  readonly lot: LotId
  readonly mark: string
  readonly kept: Kept
  /** Thawed portions change doors as they are: the house is moved, or the freezer stands in for a fridge. */
  readonly asTheyAre?: boolean
}

/** A tray or part of a bag goes behind another door. Nothing is thawed, and nothing is newer or frozen again for it. */
export const movePortions = (
  state: FoodState,
  asked: PortionsMoveAsked,
  now: Moment,
): Result<readonly [LotMoved] | readonly [PortionsMoved], MoveRefusal | ThawedMoveRefusal> => {
  const lot = state.lots.get(asked.from)
  if (!lot) return refuse({ why: 'noSuchLot' })
  // What has thawed may stand in a fridge as well; frozen, it would thaw there.
  const toFridge = lot.meltedOn !== undefined && isThere(state, asked.to, 'fridge', now)
  if (!toFridge && !isThere(state, asked.to, 'freezer', now)) return refuse({ why: 'noSuchPlace' })
  // The form sent twice: the part is there already.
  if (lot.place === asked.to || state.lots.has(asked.lot)) return refuse({ why: 'alreadyThere' })
  if (lot.meltedOn !== undefined && !toFridge && !asked.asTheyAre)
    return refuse({ why: 'thawedPortions', on: lot.meltedOn })
  const { count, kept } = asked
  const left = portionsLeft(lot)
  if (!Number.isInteger(count) || count <= 0) return refuse({ why: 'notACount', asked: count })
  if (count > left) return refuse({ why: 'moreThanLeft', left })
  if (count === left) return ok([{ kind: 'lotMoved', at: now, lot: asked.from, to: asked.to }])
  const inTrays = kept.as === 'trays' ? kept.trays.reduce((sum, { filled }) => sum + filled, 0) : count
  if (inTrays !== count) return refuse({ why: 'traysDisagree', inTrays, portions: count })
  const { from, mark, to } = asked
  return ok([{ kind: 'portionsMoved', at: now, from, lot: asked.lot, mark, count, kept, to }])
}

/** For a friend's tank, a school, a neighbour. */
export const giveAway = (
  state: FoodState,
  { lot, count, to }: { readonly lot: LotId; readonly count: number; readonly to?: string },
  now: Moment,
): Result<readonly [PortionsGivenAway], MoveRefusal> => {
  const known = state.lots.get(lot)
  if (!known) return refuse({ why: 'noSuchLot' })
  if (!Number.isInteger(count) || count <= 0) return refuse({ why: 'notACount', asked: count })
  if (count > portionsLeft(known)) return refuse({ why: 'moreThanLeft', left: portionsLeft(known) })
  return ok([{ kind: 'portionsGivenAway', at: now, lot, count, ...(to ? { to } : {}) }])
}

export type TrayRefusal =
  | { readonly why: 'noSuchLot' }
  | { readonly why: 'noSuchTray' }
  | { readonly why: 'noSuchWell' }
  /** The book has it out without anybody having said which: touching the well it came from puts it right. */
  | { readonly why: 'outByTheBook' }

const trayOf = (lot: Lot | undefined, tray: number) =>
  lot?.made.kept.as === 'trays' ? lot.made.kept.trays[tray] : undefined

/**
 * "That one is out", or in after all: a touch on a well. The book's own figure is not changed by it: of the wells that are
 * out only because the book says so many are, one fewer is.
 */
export const touchWell = (
  state: FoodState,
  { lot: id, tray, well }: { readonly lot: LotId; readonly tray: number; readonly well: number },
  now: Moment,
): Result<readonly [WellsSeen], TrayRefusal> => {
  const lot = state.lots.get(id)
  if (!lot) return refuse({ why: 'noSuchLot' })
  const shown = traysNow(lot)?.trays.find((each) => each.tray === tray)
  if (!shown) return refuse({ why: 'noSuchTray' })
  if (!Number.isInteger(well) || well < 0 || well >= shown.filled) return refuse({ why: 'noSuchWell' })
  const seen = lot.traysSeen.get(tray)?.empty ?? []
  if (!seen.includes(well) && !shown.wells[well]) return refuse({ why: 'outByTheBook' })
  const empty = seen.includes(well) ? seen.filter((at) => at !== well) : [...seen, well].sort((a, b) => a - b)
  return ok([{ kind: 'wellsSeen', at: now, lot: id, tray, empty }])
}

/** The tray is cut through after these columns: snipped to size, or in pieces. */
export const cutTray = (
  state: FoodState,
  { lot: id, tray, after }: { readonly lot: LotId; readonly tray: number; readonly after: readonly number[] },
  now: Moment,
): Result<readonly [TrayCut], TrayRefusal> => {
  const lot = state.lots.get(id)
  if (!lot) return refuse({ why: 'noSuchLot' })
  const known = trayOf(lot, tray)
  if (!known) return refuse({ why: 'noSuchTray' })
  if (after.some((column) => !Number.isInteger(column) || column < 1 || column >= known.columns))
    return refuse({ why: 'noSuchWell' })
  return ok([{ kind: 'trayCut', at: now, lot: id, tray, after: [...new Set(after)].sort((a, b) => a - b) }])
}
