/** Two phones each made a plan for the same food and tank: it is asked about, never fed twice in silence. */
import { expect, test } from 'vitest'
import { endPlan, type PlanId, settleQuestion } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import { greenFood, greenPlan, lab, lineOf, longGallery, planOf } from '../../support/givenLab.ts'

const other = 'kitchenplan' as PlanId
const both = () =>
  given(lab, planOf({ first: '2027-06-10', amount: 1 }), planOf({ first: '2027-06-11', amount: 1, plan: other }))
const asked = (book: ReturnType<typeof both>) => book.world().oddities.map(({ what }) => what)

test('two plans for one food and one tank are one question, about the plan entries', () => {
  const book = both()
  const plans = book.entries().flatMap(({ id, fact }) => (fact.kind === 'planMade' ? [id] : []))
  expect(book.world().oddities).toEqual([
    { what: 'twoPlans', key: 'twoPlans:greenplan+kitchenplan', tank: longGallery, food: greenFood, entries: plans },
  ])
})

test('the question goes once one of them has ended, or both are meant', () => {
  const ended = both()
  ended.does((world) => endPlan(world, { plan: other }, at('2027-06-10 12:00')))
  expect(asked(ended)).toEqual([])
  expect(lineOf(ended.world(), at('2027-06-10 21:15'), greenPlan).state.is).toBe('due')

  const meant = both()
  meant.note(...settleQuestion(meant.world().oddities[0]?.key ?? '', at('2027-06-10 12:00')))
  expect(asked(meant)).toEqual([])
})

test('a plan changed is no second plan, nor is one for a tank that was taken down', () => {
  const book = given(lab, planOf({ first: '2027-06-10', amount: 1 }), planOf({ first: '2027-06-10', amount: 1.2 }))
  expect(asked(book)).toEqual([])
  const gone = both()
  gone.note({ kind: 'tankRetired', at: at('2027-06-10 12:00'), tank: longGallery })
  expect(asked(gone)).toEqual([])
})
