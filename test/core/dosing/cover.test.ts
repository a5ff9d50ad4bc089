import { expect, test } from 'vitest'
import {
  couldBeShared,
  coverInTime,
  day,
  doseToFreeze,
  fedSince,
  liquidCover,
  mostPerWell,
  plannedUntil,
  portionsCover,
  smallestDose,
  usualWell,
  type World,
  wouldMake,
} from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import {
  bottleOf,
  cockle,
  cocklePlan,
  firstBottle,
  greenFood,
  greenPlan,
  lab,
  longGallery,
  mL,
  planOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const now = at('2027-03-01 18:00')
const most = mostPerWell(usualWell)
const made = (world: World) => {
  const bottle = world.bottles.get(firstBottle)
  return bottle && wouldMake(world, bottle, most, now)
}

test('145 portions, one every other night, are food for 290 nights', () => {
  const { world } = given(lab, planOf({ first: '2027-03-02', amount: 1 }))
  expect(portionsCover(world(), greenFood, { each: mL(1), count: 145 }, now)).toBe(290)
})

test('a dose of two portions halves the nights, and an odd one left over is still a night', () => {
  const { world } = given(lab, planOf({ first: '2027-03-02', amount: 1.2, every: 3 }))
  expect(portionsCover(world(), greenFood, { each: mL(0.6), count: 7 }, now)).toBe(12)
})

test('two tanks eat from one heap at the sum of their paces', () => {
  const { world } = given(
    lab,
    tankOf(cockle, usGal(60)),
    planOf({ first: '2027-03-02', amount: 1 }),
    planOf({ first: '2027-03-02', amount: 1, every: 3, tank: cockle, plan: cocklePlan }),
  )
  expect(portionsCover(world(), greenFood, { each: mL(1), count: 50 }, now)).toBe(60)
  expect(liquidCover(world(), greenFood, mL(50), now)).toBe(60)
})

test('liquid too little for a dose is food for no night, and without a plan nobody can say', () => {
  const { world } = given(lab, planOf({ first: '2027-03-02', amount: 1 }))
  expect(liquidCover(world(), greenFood, mL(0.9), now)).toBe(0)
  expect(liquidCover(given(lab).world(), greenFood, mL(90), now)).toBeUndefined()
  expect(portionsCover(given(lab).world(), greenFood, { each: mL(1), count: 9 }, now)).toBeUndefined()
})

test('what the plan uses by a day counts that night in', () => {
  const { world } = given(lab, planOf({ first: '2027-03-02', amount: 1.5 }))
  expect(plannedUntil(world(), greenFood, day('2027-03-12'), now)).toEqual({ doses: 6, amount: 9_000 })
  expect(plannedUntil(world(), greenFood, day('2027-02-27'), now)).toEqual({ doses: 0, amount: 0 })
})

test('150 mL left, less the residue, make 145 portions', () => {
  const { world } = given(
    lab,
    planOf({ first: '2027-03-02', amount: 1 }),
    bottleOf({ holds: 150, received: '2027-01-12', opened: '2027-01-20' }),
  )
  expect(made(world())).toEqual({ portions: 145, each: 1_000, nights: 290, couldBeShared: false })
})

test('portions are made for the smallest dose planned, else for the low end of the range', () => {
  const both = given(
    lab,
    tankOf(cockle, usGal(60), { pipetteMark: mL(0.1) }),
    planOf({ first: '2027-03-02', amount: 1.5, tank: longGallery }),
    planOf({ first: '2027-03-02', amount: 0.4, tank: cockle, plan: cocklePlan }),
  )
  expect(doseToFreeze(both.world(), greenFood, now)).toEqual({ dose: 400, mark: 100 })
  expect(doseToFreeze(given(lab).world(), greenFood, now)).toEqual({ dose: 1_000, mark: 50 })
})

const withNano = (first: number, second: number) =>
  given(
    lab,
    tankOf(cockle, usGal(8), { pipetteMark: mL(0.01) }),
    planOf({ first: '2027-03-02', amount: first, tank: longGallery }),
    planOf({ first: '2027-03-02', amount: second, tank: cockle, plan: cocklePlan }),
  ).world()

test('a dose too small to meter into a well is not what portions are made for, unless every dose is', () => {
  expect(doseToFreeze(withNano(1.1, 0.08), greenFood, now)).toMatchObject({ dose: 1_100 })
  expect(doseToFreeze(withNano(1.1, 0.25), greenFood, now)).toMatchObject({ dose: 250 })
  expect(doseToFreeze(withNano(0.12, 0.08), greenFood, now)).toMatchObject({ dose: 120 })
})

test('a tank that takes a twelfth of a portion still thaws a whole one, unless it is shared', () => {
  const world = withNano(1, 0.08)
  expect(portionsCover(world, greenFood, { each: mL(1), count: 50 }, now)).toBe(50)
  expect(couldBeShared(world, greenFood, mL(1), now)).toBe(true)
  expect(couldBeShared(withNano(1, 0.5), greenFood, mL(1), now)).toBe(false)
  expect(smallestDose(world, greenFood, now)).toBe(80)
  expect(smallestDose(given(lab).world(), greenFood, now)).toBeUndefined()
})

test('no stock is food for longer than it is good, its last good day included', () => {
  const [today, until] = [day('2027-03-01'), day('2027-03-10')]
  expect(coverInTime(842, until, today)).toEqual({ nights: 10, toLastGood: true })
  expect(coverInTime(10, until, today)).toEqual({ nights: 10, toLastGood: false })
  expect(coverInTime(842, undefined, today)).toEqual({ nights: 842, toLastGood: false })
  expect(coverInTime(842, day('2027-02-27'), today)).toEqual({ nights: 0, toLastGood: true })
  expect(coverInTime(undefined, until, today)).toBeUndefined()
})

test('what a food has done is counted from the first night it was given', () => {
  const night = (text: string) => ({
    kind: 'doseGiven' as const,
    at: at(`${text} 21:40`),
    food: greenFood,
    served: [{ tank: longGallery, plan: greenPlan, night: day(text), amount: mL(1) }],
    taken: [],
  })
  const { world } = given(lab, planOf({ first: '2027-02-02', amount: 1 }), night('2027-02-06'), night('2027-02-04'), {
    kind: 'nightSkipped',
    at: at('2027-02-02 21:00'),
    tank: longGallery,
    food: greenFood,
    plan: greenPlan,
    night: day('2027-02-02'),
  })
  expect(fedSince(world(), greenFood)).toBe('2027-02-04')
  expect(fedSince(given(lab).world(), greenFood)).toBeUndefined()
})
