/** A second dose in a night, and a bottle past its usual time. Checked only against our own worked examples. */
import { describe, expect, test } from 'vitest'
import type { TankId } from '../../../core/index.ts'
import { at, given, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  cockle,
  dose,
  firstBottle,
  lab,
  lineOf,
  longGallery,
  mL,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

describe('two portions given in one night', () => {
  const twice = (tank: TankId, gallons: number) => {
    const book = given(
      lab,
      tankOf(tank, usGal(gallons)),
      planOf({ first: '2027-06-10', amount: 1, tank }),
      onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
    )
    book.does(dose(at('2027-06-10 21:15')))
    return book
  }
  const again = at('2027-06-10 21:50')

  test('are asked about first: there is a dose for this night already', () => {
    const refusal = refusalOf(dose(again)(twice(longGallery, 200).world()))
    expect(refusal).toMatchObject({ why: 'alreadyGiven', night: '2027-06-10', mark: { amount: 1000 } })
  })
  test('are one touch if they come within five seconds', () => {
    const touch = dose(at('2027-06-10 21:15:04'))(twice(longGallery, 200).world())
    expect(refusalOf(touch)).toMatchObject({ why: 'justRecorded' })
  })
  test.each([
    { tank: longGallery, gallons: 200 },
    { tank: cockle, gallons: 100 },
  ])('take two from the stock of a tank of $gallons US gal, and the round goes on', ({ tank, gallons }) => {
    const book = twice(tank, gallons)
    book.does(dose(again, { again: true }))
    const world = book.world()
    expect(world.lots.get(blueClip)?.left).toBe(38)
    expect(lineOf(world, again).state).toMatchObject({ is: 'done', next: '2027-06-12' })
    expect(world.oddities).toEqual([])
  })
})

describe('a bottle four days past its usual time', () => {
  const book = () =>
    given(lab, planOf({ first: '2027-03-01', amount: 1 }), bottleOf({ holds: 60, opened: '2027-01-05' }))
  const fromIt = { taken: [{ from: 'bottle', bottle: firstBottle, amount: mL(1) }], amount: mL(1) } as const
  const night = at('2027-03-09 21:44')

  test('is never proposed', () => {
    expect(lineOf(book().world(), night).servings).toEqual([])
  })
  test('is asked about once, and given with one touch more', () => {
    const story = book()
    const refusal = refusalOf(dose(night, fromIt)(story.world()))
    expect(refusal).toEqual({ why: 'pastItsDay', lastGood: '2027-03-05', days: 4 })
    story.does(dose(night, { ...fromIt, sure: true }))
    expect(story.world().bottles.get(firstBottle)?.fed).toBe(1000)
  })
})
