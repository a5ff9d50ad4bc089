/** What is kept for a quick start tells Tonight the same as the whole book. A law of our own, no published value. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { day, glanceOf, lasts, type Moment, openNights, shakes, tonight, type World } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { at } from '../../support/given.ts'
import { anyHousehold, livedIn } from '../../support/givenHousehold.ts'
import { blueClip, dose, greenFood, greenPlan, longGallery, mL } from '../../support/givenLab.ts'
import { withPortions } from '../../support/givenRound.ts'

/** As text: a source carries a function, and two functions are never the same one. */
const told = (world: World, now: Moment): string =>
  JSON.stringify([tonight(world, now), lasts(world, greenFood, now), shakes(world, now)])

test('a glance at any household shows the same evening as its whole book, tonight and for weeks', () => {
  const cases = tally('something due', 'something done')
  const law = fc.property(anyHousehold, fc.integer({ min: 0, max: 40 }), (household, later) => {
    const book = livedIn(household)
    const evening = at('2027-03-10 21:40')
    const plan = tonight(book.world(), evening)[0]?.plan.plan
    const given = plan ? dose(evening, { plan })(book.world()) : undefined
    if (given?.ok) book.note(...given.value)
    const world = book.world()
    const now = (evening + later * 86_400_000) as Moment
    expect(told(glanceOf(world, evening), now)).toBe(told(world, now))
    cases.note(
      'something due',
      tonight(world, now).some(({ state }) => state.is === 'due'),
    )
    cases.note(
      'something done',
      tonight(world, now).some(({ state }) => state.is === 'done'),
    )
  })
  holds(law)
  cases.expectAtLeast(3)
}, 60_000)

const lived = () => {
  const book = withPortions('2027-01-10', 30)
  book.does(dose(at('2027-01-10 21:30')))
  return book
}
/** What is asked about past nights, too. */
const asked = (world: World, now: Moment) => {
  const [line] = tonight(world, now)
  return [told(world, now), line && openNights(world, line.plan, now)]
}

test('a dose that a fast clock dated a year ahead does not cut off the nights that count', () => {
  const book = lived()
  book.does(dose(at('2027-03-01 21:30')))
  book.note({
    kind: 'doseGiven',
    at: at('2028-03-04 21:15'),
    food: greenFood,
    served: [{ tank: longGallery, plan: greenPlan, night: day('2028-03-04'), amount: mL(1) }],
    taken: [{ from: 'portions', lot: blueClip, count: 1 }],
  })
  const evening = at('2027-03-02 20:00')
  expect(tonight(book.world(), evening)[0]?.state).toMatchObject({ is: 'resting', next: '2027-03-03' })
  expect(asked(glanceOf(book.world(), evening), evening)).toEqual(asked(book.world(), evening))
})

test('a dose after a pause of three months leaves the night before the pause in sight', () => {
  const book = lived()
  const evening = at('2027-04-20 21:40')
  book.does(dose(evening))
  const [, open] = asked(book.world(), evening)
  expect(open).toHaveLength(49)
  expect(asked(glanceOf(book.world(), evening), evening)).toEqual(asked(book.world(), evening))
})
