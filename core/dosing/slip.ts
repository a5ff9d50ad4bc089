/** A decimal point in the wrong place. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import { absurdRatio } from './band.ts'

/** As many places as a point is lost by: drops typed as millilitres, microlitres as millilitres. */
const places = [1000, 100, 10]

/**
 * What an amount far above the range may have been meant as, smallest first: the same figures, and an amount that is not
 * absurd either way.
 * @param top of the label's range, microlitres
 */
export const slipReadings = (asked: Microlitres, top: number): readonly Microlitres[] =>
  places.flatMap((by) => {
    const meant = asked / by
    return Number.isInteger(meant) && meant <= top * absurdRatio && meant * absurdRatio >= top
      ? [microlitres(meant)]
      : []
  })
