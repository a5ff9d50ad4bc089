/** What is said when the book on a bottle is closed, and of its sheet before that. */
import type { Closing, Loss } from '../../core/index.ts'
import { dayInFull } from './dates.ts'
import { list } from './list.ts'
import { millilitres, nights, number, plural, portions, toDecimals } from './numbers.ts'
import { reasonText } from './reasons.ts'

/** Every microlitre: three decimals where there are so many. */
export const exactly = (microlitres: number): string => `${toDecimals(microlitres / 1000, 3)}\u00a0mL`
/** A minus that is seen. */
const signed = (microlitres: number): string => (microlitres < 0 ? `−${exactly(-microlitres)}` : exactly(microlitres))

/** "212 nights", "about 12 nights" where some of them are only known by a count. */
export const fedNights = ({ nights: dated, nightsCounted }: Closing): string =>
  nightsCounted > 0 ? `about ${nights(dated + nightsCounted)}` : nights(dated)

export const closingAnswer = (closing: Closing): string => {
  const { closed, firstNight, lastNight } = closing
  if (closing.nights + closing.nightsCounted === 0)
    return closed ? 'No tank had food from this bottle.' : 'No tank has had food from this bottle yet.'
  const says = closed ? `This bottle fed ${fedNights(closing)}` : `So far this bottle has fed ${fedNights(closing)}`
  if (!firstNight || !lastNight) return `${says}.`
  if (firstNight === lastNight) return `${says}, ${dayInFull(firstNight)}.`
  return closed
    ? `${says}, from ${dayInFull(firstNight)} to ${dayInFull(lastNight)}.`
    : `${says}, since ${dayInFull(firstNight)}.`
}

const counted = (count: number, what: string): string => `${portions(count)} ${what}`

/** The sheet's lines, those that say nothing left out; together they are what was in it. */
export const sheetLines = ({
  sheet,
  portions: of,
  sizes,
}: Pick<Closing, 'sheet' | 'portions' | 'sizes'>): readonly (readonly [string, string])[] => {
  const sized = sizes.length > 0 ? ` of ${list(sizes.map((size) => millilitres(size)))}` : ''
  const lines: readonly (readonly [string, number])[] = [
    [`${portions(of.given)}${sized} to a tank`, sheet.given],
    [counted(of.there, 'still in the freezer'), sheet.there],
    ['Fresh doses', sheet.fresh],
    [counted(of.lost, 'lost'), sheet.lost],
    [counted(of.binned, 'thrown away'), sheet.binned],
    [counted(of.givenAway, 'given away'), sheet.givenAway],
    ['Still in the bottle', sheet.stillIn],
    ['Stayed on its walls', sheet.residue],
    ['Too little for a dose', sheet.over],
    ['Spilt', sheet.spilt],
    ['Thrown away from the bottle', sheet.thrown],
    ['Drips at the freezing', sheet.drips],
  ]
  return [
    ...lines.flatMap(([says, amount]) => (amount === 0 ? [] : [[says, exactly(amount)] as const])),
    [unexplainedWords(sheet.unexplained), signed(sheet.unexplained)] as const,
  ]
}
const unexplainedWords = (amount: number): string =>
  amount === 0
    ? 'Unexplained'
    : amount > 0
      ? 'Unexplained: missing when counted or measured'
      : 'Unexplained: more than the book knew of'

export const lossAmount = ({ portions: count, amount }: Loss): string =>
  count === undefined ? exactly(amount) : portions(count)
/** "Lost on 3 May 2027 (dropped it)." */
export const lossWords = ({ fate, why }: Loss, on: string): string =>
  `${fate === 'lost' ? 'Lost' : 'Thrown away'} on ${on}${why ? ` (${reasonText(why)})` : ''}.`

/** "94 %": of what was in it, the part that went to a tank. */
export const reachedWords = (reached: number): string => `${number(Math.round(reached * 100))}\u00a0%`

export const daysWords = (days: number): string => plural(days, 'day', 'days')
