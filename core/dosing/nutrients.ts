/** What a dose carries into the water at most, if its maker says what is in it. */
import { type Microlitres, toMillilitres } from '../basis/amounts.ts'
import type { FoodContents } from '../food/facts.ts'
import type { TankWater } from '../tank/facts.ts'
import { trueWater } from '../tank/state.ts'

/** Grams a mole. Atomic weights: IUPAC, abridged. */
const mass = { c: 12.0107, h: 1.00794, o: 15.9994, n: 14.0067, p: 30.973762 } as const

type Formula = Readonly<Record<keyof typeof mass, number>>
const weighs = (of: Formula): number => of.c * mass.c + of.h * mass.h + of.o * mass.o + of.n * mass.n + of.p * mass.p
const shares = (of: Formula) => ({ nitrogen: (of.n * mass.n) / weighs(of), phosphorus: (of.p * mass.p) / weighs(of) })

/** C106H263O110N16P. Redfield, Ketchum and Richards 1963, as the R package marelac gives it: N 6.307 %, P 0.872 %. */
export const redfield = shares({ c: 106, h: 263, o: 110, n: 16, p: 1 })
/** C106H180O45N16P. Stumm, as the R package marelac gives it: P 1.275 %. Leaner in water, so richer in both. */
export const stumm = shares({ c: 106, h: 180, o: 45, n: 16, p: 1 })

/** Nitrate from its nitrogen, phosphate from its phosphorus, by molar mass. */
export const nitratePerNitrogen = (mass.n + 3 * mass.o) / mass.n
export const phosphatePerPhosphorus = (mass.p + 4 * mass.o) / mass.p

/**
 * Dry matter in an amount of food, milligrams: from grams in a millilitre, else from cells in a millilitre and picograms a
 * cell. Undefined where neither is known.
 */
export const dryMatter = (amount: Microlitres, { dry, cells, cellPicograms }: FoodContents): number | undefined => {
  const mL = toMillilitres(amount)
  if (dry !== undefined) return mL * dry * 1_000
  if (cells !== undefined && cellPicograms !== undefined) return mL * cells * cellPicograms * 1e-9
  return undefined
}

/** From the leaner make-up to the richer; the same figure twice where the maker gives the share. */
export type UpTo = { readonly low: number; readonly high: number }
export type Nutrients = {
  /** Milligrams of dry matter. */
  readonly dry: number
  /** Milligrams a litre of water. */
  readonly nitrate: UpTo
  readonly phosphate: UpTo
}

/**
 * The most that an amount of food can add to the nitrate and phosphate of so much water. An upper estimate: as if all of it
 * were broken down, and nothing eaten, skimmed or carried out; what else is in the bottle comes on top.
 * @param litres of true water, above 0
 */
export const nutrientsOf = (
  amount: Microlitres,
  contents: FoodContents | undefined,
  litres: number,
): Nutrients | undefined => {
  const dry = contents && dryMatter(amount, contents)
  if (dry === undefined || !(litres > 0)) return undefined
  const { nitrogen, phosphorus } = contents ?? {}
  const adds = (low: number, high: number, times: number): UpTo => ({
    low: (dry * low * times) / litres,
    high: (dry * high * times) / litres,
  })
  return {
    dry,
    nitrate: adds(nitrogen ?? redfield.nitrogen, nitrogen ?? stumm.nitrogen, nitratePerNitrogen),
    phosphate: adds(phosphorus ?? redfield.phosphorus, phosphorus ?? stumm.phosphorus, phosphatePerPhosphorus),
  }
}

/** The water nutrients are reckoned in: the true volume where it is known, else the one she goes by. */
export const nutrientWater = (water: TankWater) => trueWater(water) ?? water.stated
