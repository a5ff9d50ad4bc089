/**
 * Amounts of food, whole microlitres, and volumes of water, as typed.
 * Food is whole because merging reorders sums and a sum of fractions depends on its order; water is never summed over
 * entries, and rounding it would move the dose band (200 US gal must give exactly 1.00 mL).
 * Factors: NIST Handbook 44, Appendix C, and NIST SP 811: 1 US gal = 231 in³ = 3.785411784 L, 1 US fl oz = 1/128 of it.
 * Imperial: 1 gal = 4.54609 L (UK Weights and Measures Act 1985), 1 fl oz = 1/160 of it.
 */
import type { Branded } from './brand.ts'

export type Microlitres = Branded<number, 'Microlitres'>

/** Whole microlitres. Throws on a fraction: a caller that has one forgot to round. */
export const microlitres = (whole: number): Microlitres => {
  if (!Number.isSafeInteger(whole)) throw new Error(`${whole} is not a whole number of microlitres`)
  return whole as Microlitres
}

/** Millilitres to the nearest microlitre. 1.005 mL is 1005 µL although 1.005 × 1000 is 1004.9999999999999. */
export const fromMillilitres = (mL: number): Microlitres => microlitres(Math.round(mL * 1000))

/** Exact for every whole microlitre a person can own. */
export const toMillilitres = (amount: Microlitres): number => amount / 1000

export type BottleUnit = 'mL' | 'usFlOz' | 'impFlOz'
const mLPer: Record<BottleUnit, number> = { mL: 1, usFlOz: 29.5735295625, impFlOz: 28.4130625 }

/** What a bottle holds, from the number on its label. Unit is never guessed: "4 oz" alone has two meanings. */
export const bottleAmount = (value: number, unit: BottleUnit): Microlitres => fromMillilitres(value * mLPer[unit])

export type WaterUnit = 'L' | 'usGal' | 'impGal'
/** A volume of water as the keeper typed it. */
export type WaterAmount = { readonly value: number; readonly unit: WaterUnit }
const litresPer: Record<WaterUnit, number> = { L: 1, usGal: 3.785411784, impGal: 4.54609 }

/** Litres. */
export const litres = ({ value, unit }: WaterAmount): number => value * litresPer[unit]

/** US gallons. An amount typed in US gallons comes back untouched, not by way of litres. */
export const usGallons = (water: WaterAmount): number =>
  water.unit === 'usGal' ? water.value : litres(water) / litresPer.usGal

/** How many times `per` goes into `water`. Exact when both are typed in the same unit. */
export const waterRatio = (water: WaterAmount, per: WaterAmount): number =>
  water.unit === per.unit ? water.value / per.value : litres(water) / litres(per)
