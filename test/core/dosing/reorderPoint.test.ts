/**
 * A day to order by is the textbook's reorder point told as a date: what is used while the order is on its way, and a reserve.
 * The reserve here is whole days to spare, so the published point lies between that of one day less and that of enough.
 */
import { expect, test } from 'vitest'
import { describeOrdering, orderBy, type PlanId } from '../../../core/index.ts'
import { lectureNotes, type ReorderPoint, stevenson } from '../../checks/stock.ts'
import { at, given } from '../../support/given.ts'
import { cockle, greenFood, lab, onHand, planOf, tankOf, usGal } from '../../support/givenLab.ts'

const tonight = '2027-01-10'
type Using = { readonly perDay: number; readonly plans: readonly ReturnType<typeof planOf>[] }
const oneANight: Using = { perDay: 1, plans: [planOf({ first: tonight, amount: 1, every: 1 })] }
/** Two a night for one tank, and one every other night for another. */
const twoAndAHalf: Using = {
  perDay: 2.5,
  plans: [
    planOf({ first: tonight, amount: 2, every: 1 }),
    planOf({ first: tonight, amount: 1, every: 2, tank: cockle, plan: 'cockleplan' as PlanId }),
  ],
}

/** The fewest portions with which it need not be ordered before today. */
const stockToOrderAt = ({ plans }: Using, leadDays: number, cushionDays: number): number => {
  const now = at(`${tonight} 12:00`)
  for (let portions = 1; portions < 200; portions += 1) {
    const book = given(
      lab,
      tankOf(cockle, usGal(100)),
      ...plans,
      onHand({ portions, each: 1, frozen: '2027-01-01', seen: at('2027-01-02 12:00') }),
    )
    book.does(() => describeOrdering({ leadDays, cushionDays }, now))
    const by = orderBy(book.world(), greenFood, now)?.day
    if (by !== undefined && by >= tonight) return portions
  }
  throw new Error('never')
}

test.each([
  ['one a night', oneANight, stevenson],
  ['two and a half a day', twoAndAHalf, lectureNotes],
] as const)('%s: the stock at which to order is the published point', (_, using: Using, published: ReorderPoint) => {
  expect(published.whileWaiting + published.reserve).toBeCloseTo(published.point, 10)
  const lead = published.whileWaiting / using.perDay
  const enough = Math.ceil(published.reserve / using.perDay)
  const point = stockToOrderAt(using, lead, enough)
  const oneDayLess = stockToOrderAt(using, lead, enough - 1)
  expect(oneDayLess).toBeLessThanOrEqual(published.point)
  expect(point).toBeGreaterThanOrEqual(published.point)
  // No further off than what one day uses, and the portion that a round begins with.
  expect(point - published.point).toBeLessThanOrEqual(using.perDay + 1)
})
