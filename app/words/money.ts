/** Currencies as forms need them: which to offer first, and how many decimals its coins have. */

/** Decimal places: 2 for pence, 0 for yen. A code nobody knows is taken to have two. */
export const minorDigits = (currency: string): number => {
  try {
    const format = new Intl.NumberFormat('en-GB', { style: 'currency', currency: currency.trim().toUpperCase() })
    return format.resolvedOptions().maximumFractionDigits ?? 2
  } catch {
    return 2
  }
}

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
