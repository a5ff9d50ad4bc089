/** From counts to animals in so much water, with the range the truth lies in. */
import { ok, type Result, refuse } from '../basis/result.ts'
import { type CountSpread, clumpedRange, spreadOf, standardError } from './clumped.ts'
import { type Confidence, type CountRange, rangeOf } from './poisson.ts'
import { type Tally, type TallyRefusal, tally } from './tally.ts'

/** Several equal looks: what each showed, and how much water each was. */
export type Looks = { readonly counts: readonly number[]; readonly each: number }

export type LookRefusal = {
  readonly why: 'volumeNotPositive'
  readonly volume: number
  readonly of: 'lookedAt' | 'litres' | 'rinsedInto'
}

export type AnimalDensity = {
  readonly counted: number
  /** Water looked at in all, in the unit of `each`. */
  readonly water: number
} & (
  | { readonly is: 'noneSeen'; readonly fewerThan: number }
  | {
      readonly is: 'about'
      /** Animals in one unit of water. */
      readonly per: number
      readonly range: CountRange
      /** One standard error, as a share of `per`: about 1 / √counted where chance alone is at work. */
      readonly standardErrorShare: number
      /** The looks differ by more than chance, and the range comes from how they differ. */
      readonly clumped: boolean
      readonly spread: CountSpread | undefined
    }
)

/**
 * Animals per unit of water from equal looks. The looks are summed before anything is reckoned of them.
 * @param looked `each` in any unit of volume: the answer is per that unit. Refuses none, and what no volume can be
 */
export const animalDensity = (
  looked: Looks,
  confidence: Confidence = 0.95,
): Result<AnimalDensity, TallyRefusal | LookRefusal> => {
  if (!positive(looked.each)) return refuse({ why: 'volumeNotPositive', volume: looked.each, of: 'lookedAt' })
  const counted = tally(looked.counts)
  return counted.ok ? ok(densityOf(counted.value, looked.each, confidence)) : counted
}

const densityOf = (counted: Tally, each: number, confidence: Confidence): AnimalDensity => {
  const { counts, sum, mean } = counted
  const water = each * counts.length
  const byChance = rangeOf(sum, confidence)
  if (sum === 0) return { is: 'noneSeen', counted: 0, water, fewerThan: byChance.high / water }
  const spread = spreadOf(counted)
  const clumped = spread?.is === 'clumped'
  return {
    is: 'about',
    counted: sum,
    water,
    per: sum / water,
    range: clumped ? over(clumpedRange(counted, confidence), each) : over(byChance, water),
    standardErrorShare: clumped ? standardError(counted) / mean : 1 / Math.sqrt(sum),
    clumped,
    spread,
  }
}

export type JarSample = {
  /** Tank water poured through the sieve. */
  readonly litres: number
  /** Millilitres that what stayed on the sieve was rinsed into. */
  readonly rinsedInto: number
  /** Millilitres of that looked at each time: 1 is usual, three times or more. */
  readonly lookedAt: number
  readonly counts: readonly number[]
  /** The share of the animals the sieve is known to keep. Absent: not known, and what is reckoned is "at least". */
  readonly kept?: number | undefined
}
export type JarRefusal =
  | TallyRefusal
  | LookRefusal
  | { readonly why: 'lookedAtMoreThanRinsed'; readonly inAll: number; readonly rinsedInto: number }
  | { readonly why: 'keptOutOfRange'; readonly kept: number }

export type JarFound = {
  /** Per litre of tank water; `water` is the litres of it that came under the eye. */
  readonly perLitre: AnimalDensity
  /** In the whole sample. */
  readonly inSample: number
  /** The sieve lets some through and nobody knows how many: every figure is a least one. */
  readonly atLeast: boolean
}

/**
 * A jar of tank water, sieved, rinsed to a known volume and counted by the millilitre: 4, 6 and 5 in 1 mL each of 50 mL from
 * 2 L are 250 in the sample, 125 per litre, and between 70 and 206.
 *
 * A known share kept raises figure and range alike; how well that share is known is not in the range. Refuses volumes that
 * are not above 0, more looked at than there was, and a share outside 0 to 1.
 */
export const jarSample = (jar: JarSample, confidence: Confidence = 0.95): Result<JarFound, JarRefusal> => {
  const { litres, rinsedInto, lookedAt, counts, kept } = jar
  if (!positive(litres)) return refuse({ why: 'volumeNotPositive', volume: litres, of: 'litres' })
  if (!positive(rinsedInto)) return refuse({ why: 'volumeNotPositive', volume: rinsedInto, of: 'rinsedInto' })
  if (!positive(lookedAt)) return refuse({ why: 'volumeNotPositive', volume: lookedAt, of: 'lookedAt' })
  if (kept !== undefined && !(kept > 0 && kept <= 1)) return refuse({ why: 'keptOutOfRange', kept })
  const inAll = lookedAt * counts.length
  if (inAll > rinsedInto * (1 + forgiven)) return refuse({ why: 'lookedAtMoreThanRinsed', inAll, rinsedInto })
  const counted = tally(counts)
  if (!counted.ok) return counted
  return ok({
    perLitre: densityOf(counted.value, litresInLook(jar), confidence),
    inSample: (counted.value.mean * rinsedInto) / lookedAt / (kept ?? 1),
    atLeast: kept === undefined,
  })
}

/** Litres of tank water whose animals stand in one look, less what the sieve lets through where that is known. */
export const litresInLook = ({ litres, rinsedInto, lookedAt, kept = 1 }: Omit<JarSample, 'counts'>): number =>
  ((lookedAt * litres) / rinsedInto) * kept

export type TorchCount = { readonly median: number; readonly lowest: number; readonly highest: number }
export type TorchRefusal =
  | TallyRefusal
  | { readonly why: 'tooFewPanes'; readonly given: number; readonly wanted: number }

/** Panes counted by torch in one night. Common practice, no source. */
export const torchPanes = 3

/** Specks in the frame, pane by pane: the middle one speaks for the night, for one pane beside a feeding fish says nothing. */
export const torchCount = (panes: readonly number[]): Result<TorchCount, TorchRefusal> => {
  if (panes.length < torchPanes) return refuse({ why: 'tooFewPanes', given: panes.length, wanted: torchPanes })
  const counted = tally(panes)
  if (!counted.ok) return counted
  const sorted = panes.toSorted((a, b) => a - b)
  const at = (place: number) => sorted[place] ?? 0
  const half = (sorted.length - 1) / 2
  return ok({
    median: (at(Math.floor(half)) + at(Math.ceil(half))) / 2,
    lowest: at(0),
    highest: at(sorted.length - 1),
  })
}

/** Three looks of 0.1 mL add up to a hair more than 0.3. */
const forgiven = 1e-9
const positive = (volume: number): boolean => volume > 0 && Number.isFinite(volume)
const over = ({ low, high }: CountRange, volume: number): CountRange => ({ low: low / volume, high: high / volume })
