/** Does one portion suit this tank, and which portion to make. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import { stepsToReach, stepsWithin } from '../basis/numbers.ts'
import { type Band, quietRatio } from './band.ts'

/** Well sizes usual in tiny silicone trays, mL × 1000. Common practice, no source. */
export const usualWells: readonly Microlitres[] = [microlitres(500), microlitres(1200), microlitres(1600)]

export type PortionFit =
  | { readonly is: 'suits'; readonly portions: number }
  /** Makes suggestions, forbids nothing: smaller wells, dilution, or one portion shared over tanks the same night. */
  | { readonly is: 'tooBig'; readonly ratio: number; readonly well: Microlitres | undefined }

/** @param each microlitres in one portion */
export const portionFit = (each: Microlitres, band: Band): PortionFit => {
  if (each > band.high * quietRatio)
    return {
      is: 'tooBig',
      ratio: each / band.high,
      well: usualWells.filter((well) => stepsWithin(well * 9, 10) <= band.high).at(-1),
    }
  const enough = stepsToReach(band.low, each)
  const most = Math.max(1, stepsWithin(band.high * quietRatio, each))
  return { is: 'suits', portions: Math.max(1, Math.min(enough, most)) }
}

/**
 * The portion to freeze so that whole portions make one dose: the dose itself where it fits the well, else the dose in two,
 * three … equal parts the pipette can meter. Undefined where even one mark is more than the well may hold.
 * @param most the most a well may hold
 */
export const proposePortion = (
  dose: Microlitres,
  mark: Microlitres,
  most: Microlitres,
): { readonly portion: Microlitres; readonly perDose: number } | undefined => {
  if (mark > most || dose <= 0) return undefined
  const perDose = Math.max(1, stepsToReach(dose, microlitres(stepsWithin(most, mark) * mark)))
  const marks = Math.max(1, stepsWithin(dose / perDose, mark))
  return { portion: microlitres(marks * mark), perDose }
}
