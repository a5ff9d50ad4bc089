/** What is kept for a quick start tells Tonight the same as the whole book. A law of our own, no published value. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { glanceOf, lasts, type Moment, shakes, tonight, type World } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { at } from '../../support/given.ts'
import { anyHousehold, livedIn } from '../../support/givenHousehold.ts'
import { dose, greenFood } from '../../support/givenLab.ts'

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
    expect(told(glanceOf(world), now)).toBe(told(world, now))
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
