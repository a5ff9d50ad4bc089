/** What is said of moving food about: behind another door, to somebody else, out of its wells. */
import type { FirstBecause, Lot, OnHand, TrayNow, World } from '../../core/index.ts'
import { onHandWords } from './food.ts'
import { capital, inWords, number, portions } from './numbers.ts'

/** "tray bag 1, part 2": a part of a part is the next part of the whole. */
export const partMark = (world: World, { made }: Lot): string => {
  const whole = made.mark.replace(/, part \d+$/, '')
  const taken = new Set([...world.lots.values()].map((lot) => lot.made.mark))
  let part = 2
  while (taken.has(`${whole}, part ${part}`)) part += 1
  return `${whole}, part ${part}`
}

/** "5 portions go to the kitchen freezer; 26 stay here." */
export const movedWords = (count: number, left: number, to: string): string => {
  const where = to.trim() === '' ? 'another door' : to.trim()
  const going = `${capital(portions(count))} ${count === 1 ? 'goes' : 'go'} to ${where}`
  return count === left
    ? `${going}.`
    : `${going}; ${number(left - count)} ${left - count === 1 ? 'stays' : 'stay'} here.`
}
/** "Moved: 5 portions to kitchen freezer; 26 stay here." */
export const haveMovedWords = (count: number, left: number, to: string): string => {
  const stay = left - count
  return `Moved: ${portions(count)} to ${to.trim() || 'another door'}${stay > 0 ? `; ${number(stay)} ${stay === 1 ? 'stays' : 'stay'} here` : ''}.`
}
/** "Given away: 12 portions, to Sam; 14 stay here." */
export const givenWords = (count: number, left: number, to: string): string => {
  const stay = left - count
  return `Given away: ${portions(count)}${to === '' ? '' : `, to ${to}`}; ${stay === 0 ? 'none' : number(stay)} ${stay === 1 ? 'stays' : 'stay'} here.`
}
export const standsWords = (to: string): string => `Moved: it stands in ${to.trim()} now.`
export const leavesWords = (left: number): string => `That leaves ${portions(left)}.`
export const comesToWords = (all: number): string => `That makes ${portions(all)}.`

/** "27 portions and 96 mL of green food": what stands behind one door. */
export const behindWords = (name: string, has: OnHand): string | undefined => {
  const amount = onHandWords(has)
  return amount === '' ? undefined : `${capital(amount)} of ${name}.`
}

/** What decided the order, in words: "it runs out of time first". */
export const firstWords: Record<FirstBecause, string> = {
  soonest: 'it runs out of time first',
  fewest: 'it has the fewest left',
  oldest: 'it is the oldest',
}

/** Said where a deed has changed it: "These are to be taken first now: it has the fewest left." */
export const turnWords = (isFirst: boolean, because: FirstBecause | undefined): string =>
  isFirst
    ? `These are to be taken first now${because ? `: ${firstWords[because]}` : ''}.`
    : 'Others are to be taken first now.'

/**
 * "Tray 2, the open one: 12 portions left." The last filled is used first, and why it is drawn before tray 1 is said.
 * @param tray its place in the lot, from 0
 * @param turn undefined for one she only looks at
 */
export const usedTrayWords = (
  tray: number,
  holds: number,
  turn: 'open' | 'next' | undefined,
  trays: number,
): string => {
  const which =
    trays > 1 ? `Tray ${tray + 1}${turn ? `, the ${turn} one` : ''}` : `The ${turn === 'open' ? 'open ' : ''}tray`
  return `${which}: ${portions(holds)} left. Touch a well when its portion has been taken.`
}

const wellName = (well: number, columns: number): string =>
  `row ${Math.floor(well / columns) + 1}, well ${(well % columns) + 1}`

/** "Row 2, well 3 is out: 12 left in this tray. Next is row 2, well 2." */
export const touchedWords = (well: number, tray: TrayNow, next: number | undefined): string => {
  const holds = tray.wells[well] === true
  const left = `${number(tray.holds)} left in this tray`
  const turn = next === undefined ? '' : ` Next is ${wellName(next, tray.columns)}.`
  return `${capital(wellName(well, tray.columns))} ${holds ? 'is in after all' : 'is out'}: ${left}.${turn}`
}

/** Where touches go beyond the book. */
export const beyondWords = (byWells: number, book: number): string =>
  `By these wells ${number(byWells)} ${byWells === 1 ? 'is' : 'are'} left; the book says ${number(book)}.`

/** "Cut after column 2: two pieces." */
export const cutWords = (after: readonly number[]): string =>
  after.length === 0
    ? 'The tray is whole.'
    : `Cut after ${after.length === 1 ? 'column' : 'columns'} ${after.join(', ')}: ${inWords(after.length + 1)} pieces.`

export const thingsWords = (things: number): string =>
  things === 1 ? 'One thing stands behind it' : `${capital(inWords(things))} things stand behind it`
