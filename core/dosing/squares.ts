/**
 * The squares on a bag's label: one for each portion that was put into it, ticked with a pen whenever one is taken out and
 * no phone is at hand.
 */
import { type FoodState, type Lot, portionsLeft } from '../food/state.ts'

export type Squares = {
  /** Portions that were ever in the bag. */
  readonly all: number
  /** By the book, out of it and given to a tank. */
  readonly given: number
  /** By the book, out of it some other way: lost, thrown away, given to somebody, moved, or missing at a count. */
  readonly other: number
}

/** What was put into a bag from another one; what had come into that one before is part of it. */
const putIn = ({ lots }: FoodState, { id, joined }: Lot): number =>
  joined.reduce((sum, part) => sum + (lots.get(part.lot)?.joinedInto === id ? part.count : 0), 0)

/** One a portion, whole, never fewer than what is out and what is left come to. */
export const squaresOf = (state: FoodState, lot: Lot): Squares => {
  const left = portionsLeft(lot)
  const all = Math.max(lot.made.portions + putIn(state, lot), left + lot.fed)
  const given = Math.min(lot.fed, all - left)
  return { all, given, other: all - left - given }
}

/** Squares in a row: tens are counted at a glance. */
export const squaresInRow = 10
/** More squares than this on one label nobody finds their way in. Our own judgement. */
export const mostSquares = 120

export type SquaresDrawn = {
  /** The first and the last that are drawn, counted from 1; rows that are wholly out already are left out. */
  readonly first: number
  readonly last: number
  /** Up to this one they are out by the book, and drawn as ticked. */
  readonly out: number
  /** How many come after the last: for another label, once these are used up. */
  readonly later: number
}

/** Which squares a label printed now bears; the numbers beside the rows go on where the label before it ended. */
export const drawnSquares = ({ all, given, other }: Squares): SquaresDrawn => {
  const out = given + other
  const first = Math.floor(Math.min(out, Math.max(0, all - 1)) / squaresInRow) * squaresInRow + 1
  const last = Math.min(all, first - 1 + mostSquares)
  return { first, last, out, later: all - last }
}
