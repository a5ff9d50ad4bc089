/**
 * The few special functions that ranges of counts need: small, and checked in the tests against two libraries that are too
 * large to carry. Formulas as numbered in Abramowitz & Stegun, Handbook of Mathematical Functions (1964).
 */

/** Where another term no longer changes the sum. */
const spent = 1e-16
/** Stands in for a nought that would be divided by. */
const nearNought = 1e-300
/** Series near their turning point need some multiple of the root of their argument; a million needs under ten thousand. */
const mostTerms = 100_000

/** ln Γ(x) for x > 0: Stirling's series (6.1.41), small x raised to where it is good to the last digit. */
export const logGamma = (x: number): number => {
  let raised = 1
  let at = x
  for (; at < 12; at += 1) raised *= at
  const inverse = 1 / (at * at)
  const series =
    (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse * (1 / 1680 - inverse * (1 / 1188))))) / at
  return (at - 0.5) * Math.log(at) - at + 0.5 * Math.log(2 * Math.PI) + series - Math.log(raised)
}

/** Both halves of the regularised incomplete gamma function: lower P(a, x) and upper Q(a, x), a > 0. They add up to 1. */
export const gammaHalves = (a: number, x: number): { readonly lower: number; readonly upper: number } => {
  if (x <= 0) return { lower: 0, upper: 1 }
  const scale = Math.exp(a * Math.log(x) - x - logGamma(a))
  if (x < a + 1) {
    const lower = scale * lowerSeries(a, x)
    return { lower, upper: 1 - lower }
  }
  const upper = scale * fraction(x + 1 - a, (n) => [n * (a - n), x + 1 - a + 2 * n])
  return { lower: 1 - upper, upper }
}

/** 6.5.29, without its leading factor. All terms are positive: nothing cancels. */
const lowerSeries = (a: number, x: number): number => {
  let term = 1 / a
  let sum = term
  for (let n = 1; n < mostTerms && term > sum * spent; n += 1) {
    term *= x / (a + n)
    sum += term
  }
  return sum
}

/** The regularised incomplete beta function I(x; a, b) for 0 ≤ x ≤ 1, a and b > 0 (26.5.8, and 26.5.2 for the far side). */
export const betaShare = (x: number, a: number, b: number): number => {
  if (x <= 0) return 0
  if (x >= 1) return 1
  if (x > (a + 1) / (a + b + 2)) return 1 - betaShare(1 - x, b, a)
  const scale = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x))
  const step = (n: number): readonly [number, number] => {
    const m = Math.floor(n / 2)
    return n % 2 === 0
      ? [(m * (b - m) * x) / ((a + n - 1) * (a + n)), 1]
      : [(-(a + m) * (a + b + m) * x) / ((a + n - 1) * (a + n)), 1]
  }
  return (scale / a) * fraction(1, step)
}

/** 1 / (first + p₁ / (q₁ + p₂ / (q₂ + …))), from the front, so that it stops when it is good enough (Lentz 1976). */
const fraction = (first: number, part: (n: number) => readonly [p: number, q: number]): number => {
  let above = 1 / nearNought
  let below = 1 / away(first)
  let value = below
  for (let n = 1; n < mostTerms; n += 1) {
    const [p, q] = part(n)
    below = 1 / away(q + p * below)
    above = away(q + p / above)
    const change = above * below
    value *= change
    if (Math.abs(change - 1) < spent * 4) break
  }
  return value
}
const away = (value: number): number => (Math.abs(value) < nearNought ? nearNought : value)

/** The chance that χ² with so many degrees of freedom is at least `value` (26.4.19). */
export const chiSquareAbove = (value: number, freedom: number): number => gammaHalves(freedom / 2, value / 2).upper

/** Student’s t that is passed, either way, with the chance `tails` (26.7.1). */
export const studentT = (tails: number, freedom: number): number =>
  crossing((t) => tails - betaShare(freedom / (freedom + t * t), freedom / 2, 0.5), 0, 1e9)

/** Where something that only rises goes through nought, found by halving: slow, and never wrong by more than the last digit. */
export const crossing = (rising: (x: number) => number, from: number, to: number): number => {
  let low = from
  let high = to
  for (let turn = 0; turn < 200; turn += 1) {
    const middle = low + (high - low) / 2
    if (middle <= low || middle >= high) break
    if (rising(middle) < 0) low = middle
    else high = middle
  }
  return low + (high - low) / 2
}
