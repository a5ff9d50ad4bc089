/** Which portions are taken first and why; and that a part moved to another door keeps its turn. */
import { expect, test } from 'vitest'
import { type LotId, movePortions, whyFirst } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import {
  blueClip,
  boathouseFreezer,
  kitchenFreezer,
  lab,
  lineOf,
  onHand,
  planOf,
  redClip,
} from '../../support/givenLab.ts'

const now = at('2026-10-01 20:00')
const plan = planOf({ first: '2026-10-01', amount: 1 })
const firstOf = (...stock: readonly Parameters<typeof onHand>[0][]) => {
  const { servings } = lineOf(given(lab, plan, ...stock.map(onHand)).world(), now)
  return { source: servings[0]?.source, why: whyFirst(servings) }
}

test('what runs out of time first goes first', () => {
  expect(
    firstOf(
      { portions: 9, each: 1, frozen: '2026-09-04' },
      { portions: 50, each: 1, frozen: '2026-08-01', lot: redClip },
    ),
  ).toMatchObject({ source: { lot: redClip }, why: 'soonest' })
})

test('of two frozen on one day, the one with fewer left goes first', () => {
  expect(
    firstOf(
      { portions: 9, each: 1, frozen: '2026-09-04' },
      { portions: 5, each: 1, frozen: '2026-09-04', lot: redClip },
    ),
  ).toMatchObject({ source: { lot: redClip }, why: 'fewest' })
})

test('one of its kind needs no reason', () => {
  expect(firstOf({ portions: 9, each: 1, frozen: '2026-09-04' }).why).toBeUndefined()
})

test('a part moved to another freezer is no newer than what it was a part of, and being smaller goes first', () => {
  const part = 'part2' as LotId
  const book = given(lab, plan, onHand({ portions: 31, each: 1, frozen: '2026-09-04', place: boathouseFreezer }))
  book.does((world) =>
    movePortions(
      world,
      {
        from: blueClip,
        to: kitchenFreezer,
        count: 5,
        lot: part,
        mark: 'blue clip, part 2',
        kept: { as: 'loose' },
      },
      now,
    ),
  )
  const { servings } = lineOf(book.world(), now)
  expect(servings.map(({ source }) => source.lastGood)).toEqual(['2028-09-04', '2028-09-04'])
  expect(servings[0]?.source).toMatchObject({ lot: part, left: 5 })
  expect(whyFirst(servings)).toBe('fewest')
})
