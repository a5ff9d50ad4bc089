/** A history of one tank: what is about it, and nothing of the others. */
import { expect, test } from 'vitest'
import { concerning, day, type Fact, strikeOut, writeNote } from '../../../core/index.ts'
import { at, done, given } from '../../support/given.ts'
import {
  blueClip,
  cockle,
  cocklePlan,
  dose,
  greenFood,
  greenPlan,
  lab,
  longGallery,
  mL,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const evening = at('2026-06-10 21:42')

const house = () => {
  const book = given(
    lab,
    tankOf(cockle, usGal(60)),
    planOf({ first: '2026-06-10', amount: 1 }),
    planOf({ first: '2026-06-10', amount: 0.5, tank: cockle, plan: cocklePlan }),
    onHand({ portions: 23, each: 1, frozen: '2026-05-04' }),
  )
  const [first] = book.does(dose(evening))
  if (first) book.does((world) => strikeOut(world, { target: first }, at('2026-06-10 21:43')))
  book.does(dose(at('2026-06-10 21:50'), { plan: cocklePlan }))
  book.note({ kind: 'planEnded', at: at('2026-06-11 08:00'), plan: greenPlan })
  book.note(
    ...done(writeNote({ text: 'polyps out', at: at('2026-06-11 22:00'), tank: cockle }, at('2026-06-11 22:00'))),
  )
  book.note(...done(writeNote({ text: 'power cut', at: at('2026-06-11 22:04') }, at('2026-06-11 22:04'))))
  return book.world()
}
const kinds = (tank: typeof cockle): readonly string[] => {
  const world = house()
  const concerns = concerning(world, tank)
  return world.history.all.flatMap(({ fact }) => (concerns(fact) ? [fact.kind] : []))
}

test('a tank’s history holds its description, its plans, what it was given and what was crossed out of it', () => {
  expect(kinds(longGallery)).toEqual(['tankDescribed', 'planMade', 'doseGiven', 'entryStruckOut', 'planEnded'])
})

test('its notes belong to it; notes about no tank, and the stock, to none', () => {
  expect(kinds(cockle)).toEqual(['tankDescribed', 'planMade', 'doseGiven', 'noteWritten'])
})

test('a dose shared between two tanks concerns both', () => {
  const world = house()
  const night = day('2026-06-10')
  const shared: Fact = {
    kind: 'doseGiven',
    at: evening,
    food: greenFood,
    served: [longGallery, cockle].map((tank) => ({ tank, plan: greenPlan, night, amount: mL(0.5) })),
    taken: [{ from: 'portions', lot: blueClip, count: 1 }],
  }
  expect([longGallery, cockle].map((tank) => concerning(world, tank)(shared))).toEqual([true, true])
})
