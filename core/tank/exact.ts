/** What the measurements of a tank say beside its volume, and which of them cannot be. */
import { litres } from '../basis/amounts.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { ExactWater, TankWater } from './facts.ts'
import { vastLitres } from './requests.ts'
import { trueWater } from './state.ts'
import { displayOf, exactLitres, floorOf, measuresOf } from './volume.ts'

export type ExactRefusal =
  /** Deeper than half the front it is no segment that the two lengths tell. `most` in cm. */
  | { readonly why: 'bowTooDeep'; readonly most: number }
  | { readonly why: 'glassTooThick' }
  /** The base, and how far the water stands below the rim, leave it no height. */
  | { readonly why: 'noHeight' }
  /** `height` of the water, in cm. */
  | { readonly why: 'sandTooDeep'; readonly height: number }
  | { readonly why: 'allRock' }

/** Measurements that can be of one tank, or everything about them that cannot. */
export const checkMeasures = (exact: ExactWater): Result<ExactWater, readonly ExactRefusal[]> => {
  const { shape, measures, solids } = exact
  const { floor, height } = displayOf(exact)
  const wrong: ExactRefusal[] = []
  if (shape.form === 'bowFront' && shape.bow > shape.length / 2)
    wrong.push({ why: 'bowTooDeep', most: shape.length / 2 })
  if (measures.taken === 'outside' && floor === 0) wrong.push({ why: 'glassTooThick' })
  if (height <= 0) wrong.push({ why: 'noHeight' })
  else if (solids.by === 'sandAndRock' && (solids.sandDepth ?? 0) > height) wrong.push({ why: 'sandTooDeep', height })
  const { sump: _, refugium: __, ...display } = exact
  if (wrong.length === 0 && exactLitres(display) === 0) wrong.push({ why: 'allRock' })
  return wrong.length === 0 ? ok(exact) : refuse(wrong)
}

/** Noted the older way where that says it all, so that a phone without this version reckons with them too. */
export const noteMeasures = (exact: ExactWater): Pick<TankWater, 'inside' | 'exact'> => {
  const { shape, measures, solids, sump, refugium } = exact
  if (measures.taken === 'outside' || solids.by !== 'share' || refugium) return { exact }
  if (shape.form !== 'rectangle' && shape.form !== 'cylinder') return { exact }
  const { waterline } = measures
  return { inside: { shape: { ...shape, waterline }, solids: solids.share, ...(sump ? { sump } : {}) } }
}

/** Litres between which the true volume lies by the bands for sand and rock; undefined where it does not hang on them. */
export const trueRange = (water: TankWater): { readonly low: number; readonly high: number } | undefined => {
  const exact = measuresOf(water)
  if (water.measured || exact?.solids.by !== 'sandAndRock') return undefined
  const low = exactLitres(exact, 'least')
  const high = exactLitres(exact, 'most')
  return low === undefined || high === undefined || low === high ? undefined : { low, high }
}

/** Litres by the outside measurements alone, glass and air included: what is sold as the size of a tank. */
export const grossLitres = ({ shape, measures }: ExactWater): number | undefined => {
  const floor = measures.taken === 'outside' ? floorOf(shape) : undefined
  return floor === undefined || measures.taken === 'inside' ? undefined : (floor * measures.height) / 1000
}

/** Litres of a fill or of measurements so vast that they are asked about; a stated volume as vast was asked about already. */
export const vastMeasures = (water: TankWater): number | undefined => {
  const real = trueWater(water)
  if (!real || litres(real) <= vastLitres || (water.stated && litres(water.stated) > vastLitres)) return undefined
  return litres(real)
}

/** Half as much again, or two thirds: an imperial gallon for a US one is less, glass and rock seldom are more. Our own judgement. */
const farApart = 1.5
/** Whether the number she goes by and the true volume are so far apart that one of them is probably a slip. */
export const statedIsFarOff = (water: TankWater): boolean => {
  const real = trueWater(water)
  if (!water.stated || !real) return false
  const ratio = litres(water.stated) / litres(real)
  return ratio > farApart || ratio < 1 / farApart
}
