/** Is the water ready for live animals: a list of gaps, never a score. */
export type ReadyAnswers = {
  /** mg/L as her kit shows it; undefined: not measured. */
  readonly ammonia?: number
  readonly nitrite?: number
  readonly copper?: 'never' | 'once' | 'inTheWater'
  /** Once there was copper: filtered over carbon and tested at none since. */
  readonly copperTestedNone?: boolean
  /** Some film, rubble or algae to graze. */
  readonly film?: boolean
  readonly celsius?: number
  /** Parts per thousand. */
  readonly salinity?: number
}

/** Usual for a reef. Common practice, no source. */
export const readyRanges = { celsius: { least: 22, most: 27 }, salinity: { least: 33, most: 36 } } as const

export type Gap =
  | { readonly gap: 'ammonia' | 'nitrite'; readonly measured: number }
  | { readonly gap: 'copper'; readonly now: boolean }
  | { readonly gap: 'nothingToGraze' }
  | { readonly gap: 'temperature' | 'salinity'; readonly measured: number; readonly high: boolean }
  /** She has not said. */
  | { readonly gap: 'notKnown'; readonly of: 'ammonia' | 'nitrite' | 'copper' | 'film' | 'temperature' | 'salinity' }
  /** A salinity this low is a specific gravity. */
  | { readonly gap: 'gravityTyped'; readonly measured: number }

const outside = (value: number, { least, most }: { readonly least: number; readonly most: number }): boolean =>
  value < least || value > most

/** What stands between this water and live animals; first what would kill them. */
export const gaps = (answers: ReadyAnswers): readonly Gap[] => {
  const { ammonia, nitrite, copper, copperTestedNone, film, celsius, salinity } = answers
  const found: Gap[] = []
  if (copper === undefined) found.push({ gap: 'notKnown', of: 'copper' })
  else if (copper === 'inTheWater') found.push({ gap: 'copper', now: true })
  else if (copper === 'once' && !copperTestedNone) found.push({ gap: 'copper', now: false })
  for (const [of, measured] of [
    ['ammonia', ammonia],
    ['nitrite', nitrite],
  ] as const) {
    if (measured === undefined) found.push({ gap: 'notKnown', of })
    else if (measured > 0) found.push({ gap: of, measured })
  }
  if (film === undefined) found.push({ gap: 'notKnown', of: 'film' })
  else if (!film) found.push({ gap: 'nothingToGraze' })
  if (celsius === undefined) found.push({ gap: 'notKnown', of: 'temperature' })
  else if (outside(celsius, readyRanges.celsius))
    found.push({ gap: 'temperature', measured: celsius, high: celsius > readyRanges.celsius.most })
  if (salinity === undefined) found.push({ gap: 'notKnown', of: 'salinity' })
  else if (salinity < 2) found.push({ gap: 'gravityTyped', measured: salinity })
  else if (outside(salinity, readyRanges.salinity))
    found.push({ gap: 'salinity', measured: salinity, high: salinity > readyRanges.salinity.most })
  return found
}
