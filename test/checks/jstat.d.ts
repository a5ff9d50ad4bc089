/** The library brings no types. What is used here, as its documentation has it. */
declare module 'jstat' {
  type Quantile = { readonly inv: (p: number, ...shape: readonly number[]) => number }
  type Chance = { readonly cdf: (x: number, ...shape: readonly number[]) => number }
  const jstat: {
    readonly chisquare: Quantile & Chance
    readonly beta: Quantile & Chance
    readonly gamma: Quantile & Chance
    readonly studentt: Quantile & Chance
    readonly gammaln: (x: number) => number
  }
  export default jstat
}
