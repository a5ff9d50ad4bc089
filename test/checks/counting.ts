/** Published values about counts, each with its source. "From memory" is said where the printed page was not at hand. */

type PublishedRange = {
  readonly count: number
  readonly confidence: 0.9 | 0.95 | 0.99
  readonly low: number
  readonly high: number
  /** Half of the last printed digit. */
  readonly within: number
  readonly source: string
}

const garwood = 'F. Garwood, Fiducial limits for the Poisson distribution, Biometrika 28 (1936), 437–442'
const ulm = 'K. Ulm, Am. J. Epidemiol. 131 (1990), 373–375'
const printed = (count: number, low: number, high: number): PublishedRange => ({
  count,
  confidence: 0.95,
  low,
  high,
  within: 0.0006,
  source: `${garwood}, as printed again by ${ulm}; from memory`,
})

export const poissonRanges: readonly PublishedRange[] = [
  {
    ...printed(0, 0, 3.689),
    source: `${garwood}; the upper limit as in the documentation of the R package epitools, pois.exact`,
  },
  printed(1, 0.0253, 5.572),
  printed(3, 0.619, 8.767),
  printed(4, 1.09, 10.242),
  printed(6, 2.202, 13.059),
  printed(7, 2.814, 14.423),
  printed(9, 4.115, 17.085),
  printed(12, 6.201, 20.962),
  printed(13, 6.922, 22.23),
  printed(15, 8.395, 24.74),
  printed(16, 9.145, 25.983),
  printed(18, 10.668, 28.448),
  printed(20, 12.217, 30.888),
  ...([0.9, 0.99] as const).map((confidence) => ({
    count: 25,
    confidence,
    ...(confidence === 0.9 ? { low: 17.38, high: 34.92 } : { low: 14.0, high: 41.0 }),
    within: 0.006,
    source: 'GraphPad QuickCalcs FAQ on the confidence interval of a count (method of Garwood)',
  })),
]

export type PublishedRatio = {
  readonly now: { readonly count: number; readonly over: number }
  readonly before: { readonly count: number; readonly over: number }
  readonly ratio: number
  readonly low: number
  readonly high: number
  readonly p: number | undefined
  readonly source: string
}
export const rateRatios: readonly PublishedRatio[] = [
  {
    now: { count: 2, over: 17877 },
    before: { count: 9, over: 16660 },
    ratio: 0.2070941557,
    low: 0.02177406,
    high: 1.0005491,
    p: 0.05011,
    source: 'M. P. Fay, vignette of the R package rateratio.test: 2 in 17,877 against 9 in 16,660',
  },
  {
    now: { count: 11, over: 800 },
    before: { count: 21, over: 3011 },
    ratio: 1.971488,
    low: 0.8584264,
    high: 4.2772659,
    // R prints another, "minlike" p beside this range, and the two do not belong together.
    p: undefined,
    source:
      'R, help page of poisson.test: 11 in 800 against 6 + 8 + 7 in 1083 + 1050 + 878; its printed output from memory',
  },
]

export const dispersion = {
  counts: [12, 15, 9, 14, 10],
  chiSquare: 13 / 6,
  p: 0.705136,
  source:
    'The index of dispersion by hand: mean 12, squares 26, 26 / 12; its p from tables’ software. Reckoned here: a regression. Method of J. M. Elliott, Freshwater Biological Association Sci. Publ. 25 (1977), from memory',
}

/** Student’s t, two-sided 5 %, as printed in every table of it (for instance Fisher & Yates, table III); from memory. */
export const studentTable = [
  { freedom: 1, t: 12.706 },
  { freedom: 2, t: 4.303 },
  { freedom: 4, t: 2.776 },
  { freedom: 10, t: 2.228 },
  { freedom: 30, t: 2.042 },
] as const

/** χ² passed with a chance of 5 %, as printed in every table of it (Fisher & Yates, table IV); from memory. */
export const chiSquareTable = [
  { freedom: 1, value: 3.841 },
  { freedom: 2, value: 5.991 },
  { freedom: 4, value: 9.488 },
  { freedom: 10, value: 18.307 },
] as const

export const neubauer = {
  /** Five of the 25 groups of the centre square, each a 25th of 1 mm² × 0.1 mm = 10⁻⁴ mL. */
  group: 4e-6,
  groups: [24, 26, 22, 25, 23],
  perMillilitre: 6.0e6,
  source:
    'Improved Neubauer: squares of 1 mm², 0.100 mm deep, as in methods chapters after Absher (1973); the product is reckoned here',
}

/** A rule of thumb, not a law: twice the standard error is about 2 / √n (Lund, Kipling & Le Cren 1958; from memory). */
export const ruleOfThumb = [
  { counted: 100, half: 0.2 },
  { counted: 400, half: 0.1 },
] as const
