/** Two foods for one tank. Checked only against our own worked examples: a calendar by hand. */
import { expect, test } from 'vitest'
import { addDays, clashNights, type Day, day, type PlanId, plansAt, together, tonight } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import { amberFood, dose, foodOf, greenPlan, lab, lineOf, mL, onHand, planOf, redClip } from '../../support/givenLab.ts'

const amberPlan = 'amberplan' as PlanId
const begun = () =>
  given(
    lab,
    foodOf(amberFood),
    planOf({ first: '2027-04-01', amount: 1 }),
    planOf({ first: '2027-04-01', amount: 1, every: 3, food: amberFood, plan: amberPlan }),
    onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
    onHand({ portions: 40, each: 1, frozen: '2027-01-05', food: amberFood, lot: redClip }),
  )
const both = ['2027-04-01', '2027-04-07', '2027-04-13', '2027-04-19', '2027-04-25']

test('green every second and amber every third night of April: 15 and 10 nights, both on five of them', () => {
  const book = begun()
  const given = new Map<PlanId, Day[]>([
    [greenPlan, []],
    [amberPlan, []],
  ])
  const met: Day[] = []
  for (let night = day('2027-04-01'); night <= day('2027-04-30'); night = addDays(night, 1)) {
    const now = at(`${night} 21:15`)
    const sum = together(tonight(book.world(), now))
    if (sum.length > 0) met.push(night)
    expect(sum.map(({ amount }) => amount)).toEqual(both.includes(night) ? [mL(2)] : [])
    for (const [plan, nights] of given) {
      if (lineOf(book.world(), now, plan).state.is !== 'due') continue
      book.does(dose(now, { plan }))
      nights.push(night)
    }
  }
  const nightsOf = (dates: readonly number[]) => dates.map((date) => `2027-04-${String(date).padStart(2, '0')}`)
  expect(given.get(greenPlan)).toEqual(nightsOf([1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29]))
  expect(given.get(amberPlan)).toEqual(nightsOf([1, 4, 7, 10, 13, 16, 19, 22, 25, 28]))
  expect(met).toEqual(both)
  expect([...book.world().lots.values()].map(({ left }) => left)).toEqual([25, 30])
  expect([...book.world().fed.values()].map(({ doses }) => doses)).toEqual([15, 10])
})

test('their common nights are known beforehand', () => {
  const now = at('2027-04-01 18:00')
  const world = begun().world()
  expect(clashNights(world, plansAt(world, now), day('2027-04-30'), now)).toEqual(both)
})
