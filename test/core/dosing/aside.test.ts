/** A dose the bottle cannot have held. Checked only against our own worked examples. */
import { expect, test } from 'vitest'
import { giveDose } from '../../../core/index.ts'
import { at, done, given, refusalOf } from '../../support/given.ts'
import { bottleOf, firstBottle, greenPlan, lab, mL, planOf } from '../../support/givenLab.ts'

const now = at('2027-06-10 21:42')
const world = given(
  lab,
  planOf({ first: '2027-06-10', amount: 1 }),
  bottleOf({ holds: 96, received: '2027-06-01', opened: '2027-06-01' }),
).world()
const jug = {
  plan: greenPlan,
  taken: [{ from: 'bottle', bottle: firstBottle, amount: mL(1000) }],
  amount: mL(1000),
  at: now,
  why: 'the whole jug',
} as const

test('whoever is sure of the amount can still be asked how the bottle held it', () => {
  const asked = giveDose(world, { ...jug, sure: true, aside: false }, now)
  expect(refusalOf(asked)).toMatchObject({ why: 'moreThanBottleHolds', holds: 96_000, asked: 1_000_000 })
  expect(done(giveDose(world, { ...jug, sure: true, aside: true }, now))).toMatchObject([{ kind: 'doseSetAside' }])
  expect(done(giveDose(world, { ...jug, sure: true }, now))).toMatchObject([{ kind: 'doseSetAside' }])
})

test('a bottle that held more than the book knew is empty, and what reached the water is told as it was', () => {
  expect(done(giveDose(world, { ...jug, sure: true, heldMore: true }, now))).toMatchObject([
    { kind: 'doseGiven', taken: [{ amount: 96_000 }], served: [{ amount: 1_000_000 }] },
  ])
})
