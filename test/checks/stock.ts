/** Published worked examples of the point at which to order, each with its source beside it. */

/** What is used while an order is on its way, what is kept in reserve, and the stock at which to order. */
export type ReorderPoint = {
  readonly whileWaiting: number
  readonly reserve: number
  readonly point: number
  readonly source: string
}

export const stevenson: ReorderPoint = {
  whileWaiting: 50,
  reserve: 9.4,
  point: 59.4,
  source:
    'W. J. Stevenson, Operations Management, 14th ed., ch. 12, Example 8: demand during lead time 50, standard deviation 5, z 1.88',
}
export const lectureNotes: ReorderPoint = {
  whileWaiting: 2.5 * 25,
  reserve: 1.28 * 1.2 * Math.sqrt(25),
  point: 70.18,
  source:
    'Inputs from public lecture notes: 2.5 a day, standard deviation 1.2 a day, 25 days, z 1.28 for 90 %; the reserve z·σ·√L = 7.68 is reckoned here',
}
