/** What a thing costs. */

/** Whole minor units (pence, cents). Absent means not known; free is said. */
export type Price = { readonly minor: number; readonly currency: string } | 'free'
