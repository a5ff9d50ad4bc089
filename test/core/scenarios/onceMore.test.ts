/** A second dose in a night, and a bottle past its usual time. Checked only against our own worked examples. */
import { describe, expect, test } from 'vitest'
import { chooseNext, day, doseMarks, type TankId } from '../../../core/index.ts'
import { at, given, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  cockle,
  dose,
  firstBottle,
  greenPlan,
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
  const twoIn = (tank: TankId, gallons: number) => {
    const book = twice(tank, gallons)
    book.does(dose(again, { again: true, sure: true }))
    expect(book.world().lots.get(blueClip)?.left).toBe(38)
    expect(book.world().oddities).toEqual([])
    return book
  }
  const next = (book: ReturnType<typeof twice>, now: string) => {
    const { state } = lineOf(book.world(), at(now))
    return 'next' in state ? state.next : state.is
  }

  test('are inside the range of 200 US gal, top 2.00: no word, and the round goes on to 12 June', () => {
    const book = twoIn(longGallery, 200)
    expect(lineOf(book.world(), again).state).toMatchObject({ is: 'done', next: '2027-06-12', overfed: undefined })
  })

  test('are above 1.25 times the top of 100 US gal, top 1.00: the next night waits until 14 June', () => {
    const book = twoIn(cockle, 100)
    expect(lineOf(book.world(), again).state).toMatchObject({
      is: 'done',
      next: '2027-06-14',
      overfed: { total: 2000, top: 1000, usual: '2027-06-12', suggested: '2027-06-14', chosen: undefined },
    })
    expect(next(book, '2027-06-12 21:00')).toBe('2027-06-14')
    expect(next(book, '2027-06-14 21:00')).toBe('due')
  })

  test('keep 12 June if she says so', () => {
    const book = twoIn(cockle, 100)
    const kept = { plan: greenPlan, after: day('2027-06-10'), next: day('2027-06-12') }
    book.does((world) => chooseNext(world, kept, again))
    expect(lineOf(book.world(), again).state).toMatchObject({ next: '2027-06-12', overfed: { chosen: '2027-06-12' } })
    expect(next(book, '2027-06-12 21:00')).toBe('due')
  })
})

describe('a bottle whose last good day was 5 March', () => {
  const book = () =>
    given(lab, planOf({ first: '2027-03-01', amount: 1 }), bottleOf({ holds: 60, opened: '2027-01-05' }))
  const fromIt = { taken: [{ from: 'bottle', bottle: firstBottle, amount: mL(1) }], amount: mL(1) } as const

  test.each(['2027-03-09 21:44', '2027-03-25 21:44'])('is never proposed on %s', (night) => {
    expect(lineOf(book().world(), at(night)).servings).toEqual([])
  })

  test.each([
    { night: '2027-03-09 21:44', days: 4 },
    { night: '2027-03-25 21:44', days: 20 },
  ])(
    'is asked about once, $days days past, and given with one touch more and no reason, with its mark',
    ({ night, days }) => {
      const story = book()
      const refusal = refusalOf(dose(at(night), fromIt)(story.world()))
      expect(refusal).toEqual({ why: 'pastItsDay', lastGood: '2027-03-05', days })
      story.does(dose(at(night), { ...fromIt, sure: true }))
      const world = story.world()
      expect(world.bottles.get(firstBottle)).toMatchObject({ fed: 1000, left: 59_000 })
      const fact = story.entries().at(-1)?.fact
      if (fact?.kind !== 'doseGiven') throw new Error('no dose was written')
      expect(fact.why).toBeUndefined()
      expect(doseMarks(world, fact)).toEqual({ above: undefined, past: days })
    },
  )

  test('bears her reason where she gives one', () => {
    const story = book()
    story.does(dose(at('2027-03-25 21:44'), { ...fromIt, sure: true, why: 'smells of the sea' }))
    expect(story.entries().at(-1)?.fact).toMatchObject({ why: 'smells of the sea' })
  })
})
