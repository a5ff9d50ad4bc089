/** How many live bottles a tank wants, and how they are shared out. */
import { usGallons, type WaterAmount } from '../basis/amounts.ts'
import { stepsToReach } from '../basis/numbers.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { WaterPlace } from '../watch/facts.ts'

/** US gallons one live bottle seeds, and what is usual. The keeper sets it: common practice, no source. */
export const usualReach = 40
export const reachRange = { least: 25, most: 60 } as const
/** Twice as many where fish hunt them from the first night. Common practice, no source. */
const hunterFactor = 2

export type NeededRefusal = { readonly why: 'noWater' } | { readonly why: 'reachNotPositive' }
export type Needed = {
  readonly bottles: number
  /** Before it was rounded up. */
  readonly exact: number
}

/**
 * Bottles for so much water: its US gallons over the reach of one, twice that with fish that hunt pods, rounded up.
 * @param reach US gallons a bottle seeds, above 0
 */
export const bottlesNeeded = (
  water: WaterAmount,
  reach: number,
  podHunters: boolean,
): Result<Needed, NeededRefusal> => {
  const gallons = usGallons(water)
  if (!(gallons > 0)) return refuse({ why: 'noWater' })
  if (!(reach > 0)) return refuse({ why: 'reachNotPositive' })
  const exact = (gallons * (podHunters ? hunterFactor : 1)) / reach
  return ok({ bottles: stepsToReach(exact, 1), exact })
}

/**
 * Half low among the rock of the display, the rest where nothing hunts: a refugium before a sump. Common practice, no source.
 * @param bottles whole, above 0
 */
export const usualSplit = (
  bottles: number,
  places: readonly WaterPlace[],
): readonly { readonly into: WaterPlace; readonly bottles: number }[] => {
  const calm = places.includes('refugium') ? 'refugium' : places.includes('sump') ? 'sump' : undefined
  if (!places.includes('display')) return calm ? [{ into: calm, bottles }] : []
  if (!calm) return [{ into: 'display', bottles }]
  const display = bottles / 2
  return [
    { into: 'display', bottles: display },
    { into: calm, bottles: bottles - display },
  ]
}

/** Weeks after which live bottles are poured once more. Common practice, no source. */
export const reseedWeeks = { first: 2, last: 4 } as const
