/** A year in figures. */
import type { Purse, Waste, Year } from '../../core/index.ts'
import { dosesWords } from './entries.ts'
import { list } from './list.ts'
import { price } from './money.ts'
import { capital, inWords, millilitres, nights, plural, portions } from './numbers.ts'
import { reasonText } from './reasons.ts'

/** "£93.50", "£93.50 and €12.00": two currencies are never added. Undefined where nothing is known. */
export const purseWords = (purse: Purse): string | undefined => {
  const sums = [...purse].map(([currency, minor]) => price({ minor, currency }))
  return sums.length > 0 ? list(sums) : undefined
}

/** "In 2027 so far: 112 doses on 110 nights, £93.50 spent." */
export const yearAnswer = (year: number, { given, spent }: Year, thisYear: boolean): string => {
  const fed = given.doses > 0 ? `${dosesWords(given.doses)} on ${nights(given.nights)}` : 'no dose'
  const money = purseWords(spent)
  return `In ${year}${thisYear ? ' so far' : ''}: ${fed}${money ? `, ${money} spent` : ''}.`
}

/** "One bottle’s price is not known." Undefined where all are. */
export const unknownPrices = ({
  unpricedBottles,
  unpricedParcels,
}: Pick<Year, 'unpricedBottles' | 'unpricedParcels'>): string | undefined => {
  const said = [
    ...(unpricedBottles > 0 ? [unpricedBottles === 1 ? 'one bottle’s' : `${inWords(unpricedBottles)} bottles’`] : []),
    ...(unpricedParcels > 0 ? [unpricedParcels === 1 ? 'one parcel’s' : `${inWords(unpricedParcels)} parcels’`] : []),
  ]
  return said.length > 0 ? `${capital(list(said))} price is not known.` : undefined
}

const fates: Record<Waste['fate'], string> = {
  lost: 'lost',
  discarded: 'thrown away',
  givenAway: 'given away',
  missing: 'missing when counted or measured',
}
export const wasteTerm = ({ fate, why }: Waste): string =>
  capital(why ? `${fates[fate]}: ${reasonText(why)}` : fates[fate])
/** What a count found beyond the book stands with a minus. */
export const wasteWords = ({ portions: count, liquid }: Waste): string => {
  const minus = (value: number, said: string) => (value < 0 ? `−${said}` : said)
  return list([
    ...(count === 0 ? [] : [minus(count, portions(Math.abs(count)))]),
    ...(liquid === 0 ? [] : [minus(liquid, millilitres(Math.abs(liquid)))]),
  ])
}

export const unpricedDoses = (doses: number): string | undefined =>
  doses > 0 ? `${capital(dosesWords(doses))} came from food whose price is not known.` : undefined
export const bottlesWords = (count: number): string => plural(count, 'bottle', 'bottles')
