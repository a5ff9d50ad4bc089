/** Money as a person reads it, and currencies as forms need them: which to offer first, how many decimals its coins have. */
import type { Cost, Price } from '../../core/index.ts'

/** A formatter takes long to make on a slow phone, and a figure may change under her thumb. */
const kept = <Made>(make: (currency: string) => Made) => {
  const made = new Map<string, Made>()
  return (currency: string): Made => {
    const known = made.get(currency) ?? make(currency)
    made.set(currency, known)
    return known
  }
}

/** Decimal places: 2 for pence, 0 for yen. A code nobody knows is taken to have two. */
export const minorDigits = kept((currency: string): number => {
  try {
    const format = new Intl.NumberFormat('en-GB', { style: 'currency', currency: currency.trim().toUpperCase() })
    return format.resolvedOptions().maximumFractionDigits ?? 2
  } catch {
    return 2
  }
})

const byRegion: Readonly<Record<string, string>> = {
  AU: 'AUD',
  CA: 'CAD',
  CH: 'CHF',
  DK: 'DKK',
  GB: 'GBP',
  JP: 'JPY',
  NO: 'NOK',
  NZ: 'NZD',
  PL: 'PLN',
  SE: 'SEK',
  US: 'USD',
}
const euroLanguages = ['de', 'es', 'et', 'fi', 'fr', 'it', 'lt', 'lv', 'nl', 'pt', 'sk', 'sl']

/** From the phone's language, "en-GB": a first guess that she sees and may change. */
export const usualCurrency = (language: string): string => {
  const [tongue = '', ...rest] = language.split('-')
  return byRegion[rest.at(-1) ?? ''] ?? (euroLanguages.includes(tongue) ? 'EUR' : 'GBP')
}

/** @param extra decimals beyond the currency's own */
const writer = (extra: number) =>
  kept((currency: string): ((minor: number) => string) => {
    const coins = minorDigits(currency)
    const digits = coins + extra
    const decimals = { minimumFractionDigits: digits, maximumFractionDigits: digits }
    try {
      const format = new Intl.NumberFormat('en-GB', { style: 'currency', currency, ...decimals })
      return (minor) => format.format(minor / 10 ** coins)
    } catch {
      // A code that no country has: the number and the code as they stand.
      const format = new Intl.NumberFormat('en-GB', decimals)
      return (minor) => `${format.format(minor / 10 ** coins)} ${currency}`
    }
  })
const coins = writer(0)
/** A dose costs less than the smallest coin: one decimal more, always, so that one figure looks the same everywhere. */
const finer = writer(1)

const spent = (of: Cost, write: typeof coins): string =>
  of === 'notKnown' ? 'not known' : of === 'free' ? 'nothing' : write(of.currency)(of.minor)

/** What was paid: "£34.00", "free", "not known". */
export const price = (paid: Price | undefined): string =>
  paid === undefined ? 'not known' : paid === 'free' ? 'free' : coins(paid.currency)(paid.minor)
/** What one dose costs: "£0.375". */
export const cost = (of: Cost): string => spent(of, finer)
/** What a year of doses costs: "£68.44". */
export const yearCost = (of: Cost): string => spent(of, coins)
