/** What one portion is for a tank nothing is known of but its water: a friend's. */
import { type Microlitres, microlitres, type WaterAmount } from '../basis/amounts.ts'
import type { DoseBand } from '../food/facts.ts'
import { type Band, doseBand } from './band.ts'
import { portionFit } from './fit.ts'

/** A usual pipette's. Common practice, no source. */
const usualMark = microlitres(50)
/** Into so many parts a melted portion can be shared by eye. Our own judgement. */
const parts = [2, 3, 4] as const

export type FriendDose = { readonly band: Band } & (
  | { readonly is: 'whole'; readonly portions: number; readonly amount: Microlitres }
  /** One portion melted in a cup of tank water, and one such part of the cup. */
  | { readonly is: 'part'; readonly of: (typeof parts)[number]; readonly amount: number }
  /** A small measure of one that has melted by itself. */
  | { readonly is: 'measure'; readonly low: Microlitres; readonly high: Microlitres }
  /** Not even a pipette's mark is so little. */
  | { readonly is: 'tooSmall' }
)

/** By the label's range, low end first. @param each microlitres in one portion */
export const friendDose = (each: Microlitres, label: DoseBand, water: WaterAmount): FriendDose => {
  const band = doseBand(water, label, usualMark)
  const fit = portionFit(each, band)
  if (fit.is === 'suits') return { band, is: 'whole', portions: fit.portions, amount: microlitres(fit.portions * each) }
  const of = parts.find((part) => each / part <= band.high)
  if (of) return { band, is: 'part', of, amount: each / of }
  return band.shown === 'tooSmall' ? { band, is: 'tooSmall' } : { band, is: 'measure', ...band.shown }
}
