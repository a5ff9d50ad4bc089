/** What is left in a bottle, read off by eye. */
import { expect, test } from 'vitest'
import { measureLiquid } from '../../../core/index.ts'
import { at, done, given, refusalOf } from '../../support/given.ts'
import { bottleOf, firstBottle, lab, mL } from '../../support/givenLab.ts'

const now = at('2027-03-01 18:00')
const { world } = given(lab, bottleOf({ holds: 250, received: '2027-01-12', opened: '2027-01-20' }))

test('more than the bottle holds when full is asked about once, and kept when it is so', () => {
  const asked = { bottle: firstBottle, left: mL(251) }
  expect(refusalOf(measureLiquid(world(), asked, now))).toEqual({ why: 'moreThanFull', full: 250_000 })
  expect(done(measureLiquid(world(), { ...asked, sure: true }, now))).toEqual([
    { kind: 'liquidMeasured', at: now, bottle: firstBottle, left: 251_000, book: 250_000 },
  ])
})

test('a bottle as full as its label says is measured without a question', () => {
  expect(done(measureLiquid(world(), { bottle: firstBottle, left: mL(250) }, now))).toMatchObject([{ left: 250_000 }])
})
