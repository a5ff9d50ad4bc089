/**
 * What algae are made of and what that comes to in water, each value with its source beside it. Figures worked by hand say
 * so: they guard against a slip of ours, and prove nothing about the make-up of anybody's food.
 */
type Published = { readonly expected: number; readonly source: string }

const marelac = 'R package marelac, vignette: "redfield", mass fractions'
export const redfieldNitrogen: Published = { expected: 0.06307, source: `${marelac}, C106H263O110N16P` }
export const redfieldPhosphorus: Published = { expected: 0.00872, source: `${marelac}, C106H263O110N16P` }
export const stummPhosphorus: Published = { expected: 0.01275, source: `${marelac}, C106H180O45N16P` }
export const nitrateOfNitrogen: Published = {
  expected: 4.426803,
  source: 'molar masses 62.0049 and 14.0067: the usual factor for NO3 from NO3-N, 4.427',
}
export const phosphateOfPhosphorus: Published = {
  expected: 3.0662,
  source: 'molar masses 94.9714 and 30.973762: the usual factor for PO4 from P, 3.066',
}

export type Worked = {
  readonly mL: number
  readonly litres: number
  readonly contents: {
    readonly dry?: number
    readonly cells?: number
    readonly cellPicograms?: number
    readonly nitrogen?: number
    readonly phosphorus?: number
  }
  readonly dry: number
  readonly nitrate: number
  readonly phosphate: number
  /** Digits after the point that were worked out. */
  readonly digits: number
  readonly source: string
}

export const bottleKnockedIn: Worked = {
  mL: 60,
  litres: 400,
  contents: { dry: 0.1, nitrogen: 0.06, phosphorus: 0.009 },
  dry: 6_000,
  nitrate: 3.98,
  phosphate: 0.41,
  digits: 2,
  source: 'worked by hand: 6 g dry; 360 mg N × 4.427 / 400 L; 54 mg P × 3.066 / 400 L',
}
/** Cells of Nannochloropsis oculata, 6.1 pg: M. R. Brown 1991, in FAO Fisheries Technical Paper 361, from memory. */
export const fiveOfSmallCells: Worked = {
  mL: 5,
  litres: 200,
  contents: { cells: 1e9, cellPicograms: 6.1, nitrogen: 0.06307127, phosphorus: 0.0087171 },
  dry: 30.5,
  nitrate: 0.04258,
  phosphate: 0.004076,
  digits: 5,
  source: 'worked by hand: 30.5 mg dry; 1.92367 mg N × 4.426803 / 200 L; 0.26587 mg P × 3.06619 / 200 L',
}
/** Cells of Tetraselmis chui, 269 pg: the same table, from memory. */
export const fiveOfLargeCells: Worked = {
  mL: 5,
  litres: 150,
  contents: { cells: 2e8, cellPicograms: 269, nitrogen: 0.06307127, phosphorus: 0.0087171 },
  dry: 269,
  nitrate: 0.5007,
  phosphate: 0.0479,
  digits: 4,
  source: 'worked by hand: 5 mL × 2e8 × 269 pg = 269 mg dry in 150 L',
}
