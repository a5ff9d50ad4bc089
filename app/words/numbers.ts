/** Numbers and amounts as a person reads them. */
import { type BottleUnit, type Microlitres, toMillilitres, type WaterAmount, type WaterUnit } from '../../core/index.ts'

// The platform's own formatters take as long to make on a slow phone as the rest of Tonight; one language needs no more.
const grouped = (value: number): string => {
  const [whole = '', fraction] = String(Math.abs(value)).split('.')
  const thousands = whole.replace(/\B(?=(\d{3})+$)/g, ',')
  return `${value < 0 ? '-' : ''}${thousands}${fraction === undefined ? '' : `.${fraction}`}`
}
/** To so many decimals at most; 1.005 is 1.01 although its nearest binary fraction is a hair below. */
export const toDecimals = (value: number, decimals: number): string => {
  const scale = 10 ** decimals
  return grouped(Math.round(value * (1 + Number.EPSILON) * scale) / scale)
}

export const number = (value: number): string => toDecimals(value, 2)
/** A figure put into a field so that it reads back as itself: 94.635 could be thousands, so it stands as 94.6350. */
export const asTyped = (value: number): string => {
  const text = String(value)
  return /^[1-9]\d{0,2}\.\d{3}$/.test(text) ? `${text}0` : text
}
/** An amount put into a field of millilitres. */
export const typedMillilitres = (amount: Microlitres): string => asTyped(toMillilitres(amount))
/** Three figures: for what is only known roughly. */
export const about = (value: number): string => grouped(Number(value.toPrecision(3)))

/** "1.4 ×", "1,700 ×": two figures tell how far, and more would only look exact. */
export const times = (ratio: number): string => `${grouped(Number(ratio.toPrecision(2)))}\u00a0×`

/** "0.55 mL", held together on the line. Two decimals are finer than most pipettes; a mark of 0.025 mL has three. */
export const millilitres = (amount: number): string =>
  `${toDecimals(toMillilitres(amount as Microlitres), amount < 100 ? 3 : 2)}\u00a0mL`
export const millilitreRange = (low: number, high: number): string =>
  low === high ? millilitres(low) : `${number(toMillilitres(low as Microlitres))} to ${millilitres(high)}`

export const plural = (count: number, one: string, many: string): string =>
  `${number(count)} ${count === 1 ? one : many}`
export const portions = (count: number): string => plural(count, 'portion', 'portions')
export const nights = (count: number): string => plural(count, 'night', 'nights')
export const trays = (count: number): string => plural(count, 'tray', 'trays')

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']
/** "three", but "13". */
export const inWords = (count: number): string => small[count] ?? number(count)
/** "One portion". */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Never a bare "gal" or "oz": each has two meanings. */
export const waterUnits: Record<WaterUnit, string> = { L: 'litres', usGal: 'US gallons', impGal: 'imperial gallons' }
export const bottleUnits: Record<BottleUnit, string> = { mL: 'mL', usFlOz: 'US fl oz', impFlOz: 'imperial fl oz' }

/** As choices, in the order of the table above. */
const asOptions = <Unit extends string>(names: Record<Unit, string>) =>
  (Object.entries(names) as [Unit, string][]).map(([value, label]) => ({ value, label }))
export const waterUnitOptions = asOptions(waterUnits)
export const bottleUnitOptions = asOptions(bottleUnits)

export const water = ({ value, unit }: WaterAmount): string => `${number(value)} ${waterUnits[unit]}`
