/** Twice, half and a part of a dose. Checked only against our own worked examples, reckoned by hand. */
import { expect, test } from 'vitest'
import { emptySources, halfOf, partOf, portionsGone, twiceOf, wholeOf } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import { blueClip, bottleOf, firstBottle, greenFood, lab, lineOf, mL, onHand, planOf } from '../../support/givenLab.ts'

const now = at('2027-06-10 21:42')
const serving = (...stock: Parameters<typeof given>) => {
  const [best] = lineOf(given(lab, planOf({ first: '2027-06-10', amount: 0.5 }), ...stock).world(), now).servings
  if (!best) throw new Error('nothing to serve')
  return best
}
const portions = onHand({ portions: 40, each: 1, frozen: '2027-01-05' })

test('half of a portion takes all of it from the stock, and leaves a rest for another tank', () => {
  const one = { taken: [{ from: 'portions', lot: blueClip, count: 1 }] }
  expect(halfOf(serving(portions))).toEqual({ ...one, amount: 500, rest: 500 })
  expect(wholeOf(serving(portions))).toEqual({ ...one, amount: 1000, rest: 0 })
})

test('twice is twice what was taken, be it portions or from the bottle; half of a pour is poured', () => {
  expect(twiceOf(serving(portions))).toEqual({
    taken: [{ from: 'portions', lot: blueClip, count: 2 }],
    amount: 2000,
    rest: 0,
  })
  const bottle = serving(bottleOf({ holds: 96, received: '2027-06-01', opened: '2027-06-01' }))
  const poured = (amount: number) => ({ taken: [{ from: 'bottle', bottle: firstBottle, amount }], amount, rest: 0 })
  expect(twiceOf(bottle)).toEqual(poured(1000))
  expect(halfOf(bottle)).toEqual(poured(250))
})

test('a quarter of three portions of 0.65 mL is 0.488 mL, to the microlitre', () => {
  expect(partOf(3, mL(0.65), 0.25)).toBe(488)
})

test('a bag that is empty by the book can still be named', () => {
  const book = given(lab, onHand({ portions: 1, each: 1, frozen: '2027-01-05' }))
  expect(emptySources(book.world(), greenFood)).toEqual([])
  book.does((world) => portionsGone(world, { lot: blueClip, count: 1, fate: 'lost' }, now))
  expect(emptySources(book.world(), greenFood)).toMatchObject([{ lot: blueClip, left: 0 }])
})
