/** Numbers, amounts and money as a person reads them. */
import {
  type BottleUnit,
  type Cost,
  litres,
  type Microlitres,
  type Price,
  toMillilitres,
  type WaterAmount,
  type WaterUnit,
} from '../../core/index.ts'

const plain = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 2 })
const rough = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 3 })

export const number = (value: number): string => plain.format(value)
/** Three figures: for what is only known roughly. */
export const about = (value: number): string => rough.format(value)

/** "0.55 mL", held together on the line. Two decimals are finer than any pipette she has. */
export const millilitres = (amount: number): string => `${number(toMillilitres(amount as Microlitres))}\u00a0mL`
export const millilitreRange = (low: number, high: number): string =>
  low === high ? millilitres(low) : `${number(low / 1000)} to ${millilitres(high)}`

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

export const water = ({ value, unit }: WaterAmount): string => `${number(value)} ${waterUnits[unit]}`
export const litresOf = (amount: WaterAmount): string => `${about(litres(amount))} litres`

const money = (minor: number, currency: string): string => {
  try {
    const format = new Intl.NumberFormat('en-GB', { style: 'currency', currency })
    return format.format(minor / 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2))
  } catch {
    return `${number(minor / 100)} ${currency}`
  }
}
export const price = (paid: Price | undefined): string =>
  paid === undefined ? 'not known' : paid === 'free' ? 'free' : money(paid.minor, paid.currency)
/** A dose costs less than the smallest coin, so one more figure is shown. */
export const cost = (of: Cost): string => {
  if (of === 'notKnown') return 'not known'
  if (of === 'free') return 'nothing'
  return new Intl.NumberFormat('en-GB', { style: 'currency', currency: of.currency, maximumFractionDigits: 3 }).format(
    of.minor / 100,
  )
}
