/** Thawed portions no dose night uses in time: every figure of the food room leaves them out. */
import { type LotId, thawedSpare } from '../../../core/index.ts'
import type { Reading } from '../useReading.ts'

export type Spare = ReadonlyMap<LotId, number>
export const spareIn = ({ world, now }: Reading): Spare => thawedSpare(world, now)
