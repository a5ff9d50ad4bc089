/** Two phones, one lab; one portion, two tanks. Checked only against our own worked examples: counts by hand. */
import { describe, expect, test } from 'vitest'
import { fold, type PlanId, settleQuestion, strikeOut, union } from '../../../core/index.ts'
import { at, type Book, bookOf, given, kitchenPhone, labPhone, london } from '../../support/given.ts'
import {
  blueClip,
  dose,
  foodOf,
  greenFood,
  greenPlan,
  lab,
  lineOf,
  longGallery,
  onHand,
  planOf,
  portionOf,
  redClip,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'
import { withPortions } from '../../support/givenRound.ts'

const begun = () => withPortions('2027-06-10')
const later = at('2027-06-10 23:00')
const merged = (a: Book, b: Book) => bookOf(labPhone, union(a.entries(), b.entries()).entries)
const left = (book: Book) => book.world().lots.get(blueClip)?.left

describe('one night logged on both phones', () => {
  const twins = () => {
    const shared = begun().entries()
    const [labs, kitchens] = [bookOf(labPhone, shared), bookOf(kitchenPhone, shared)]
    const [first] = labs.does(dose(at('2027-06-10 21:31')))
    const [second] = kitchens.does(dose(at('2027-06-10 21:34')))
    if (!first || !second) throw new Error('nothing was written')
    return { book: merged(labs, kitchens), first, second }
  }

  test('is two entries and one question', () => {
    const { book, first, second } = twins()
    expect(book.world().oddities).toMatchObject([
      { what: 'loggedTwice', plan: greenPlan, night: '2027-06-10', entries: [first, second] },
    ])
    expect(left(book)).toBe(38)
  })
  test('takes one portion once one of the two is crossed out', () => {
    const { book, second } = twins()
    book.does((world) => strikeOut(world, { target: second, why: 'one dose' }, later))
    expect(book.world().oddities).toEqual([])
    expect(left(book)).toBe(39)
    expect(book.world().fed.get(greenFood)).toEqual({ doses: 1, amount: 1000 })
  })
  test('are two doses in a tank of 100 US gal, if both were given: 2.0 above its top of 1.00, and the next night waits', () => {
    const shared = given(
      lab,
      tankOf(longGallery, usGal(100)),
      planOf({ first: '2027-06-10', amount: 1 }),
      onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
    ).entries()
    const [labs, kitchens] = [bookOf(labPhone, shared), bookOf(kitchenPhone, shared)]
    labs.does(dose(at('2027-06-10 21:31')))
    kitchens.does(dose(at('2027-06-10 21:34')))
    const book = merged(labs, kitchens)
    book.note(...settleQuestion(book.world().oddities[0]?.key ?? '', later))
    expect(left(book)).toBe(38)
    expect(lineOf(book.world(), later).state).toMatchObject({ next: '2027-06-14', overfed: { total: 2000, top: 1000 } })
  })
  test('takes two if both were given, and the question is settled', () => {
    const { book } = twins()
    book.note(...settleQuestion(book.world().oddities[0]?.key ?? '', later))
    expect(book.world().oddities).toEqual([])
    expect(left(book)).toBe(38)
    expect(lineOf(book.world(), later).state).toMatchObject({ is: 'done', next: '2027-06-12' })
  })
})

test('ten entries and seven, four of them the same, are thirteen on either phone, however often the files travel', () => {
  const shared = given(lab.slice(0, 4)).entries()
  const [labs, kitchens] = [bookOf(labPhone, shared), bookOf(kitchenPhone, shared)]
  labs.note(lab[4] ?? planOf({ first: '2027-06-10', amount: 1 }), planOf({ first: '2027-06-10', amount: 1 }))
  labs.note(...onHand({ portions: 40, each: 1, frozen: '2027-01-05' })(labs.world()))
  labs.does(dose(at('2027-06-10 21:31')))
  labs.does(dose(at('2027-06-12 21:31')))
  labs.does(dose(at('2027-06-14 21:36')))
  kitchens.note(...onHand({ portions: 19, each: 0.5, frozen: '2027-02-07', lot: redClip })(kitchens.world()))
  kitchens.note(planOf({ first: '2027-07-11', amount: 0.5, plan: 'kitchenplan' as PlanId }))
  kitchens.does(dose(at('2027-07-11 21:48'), { plan: 'kitchenplan' as PlanId }))
  expect([labs.entries().length, kitchens.entries().length, shared.length]).toEqual([10, 7, 4])

  const there = union(labs.entries(), kitchens.entries())
  const back = union(kitchens.entries(), labs.entries())
  expect(there).toMatchObject({ already: 4, clashes: [] })
  expect(there.added).toHaveLength(3)
  expect(there.entries).toHaveLength(13)
  expect(union(there.entries, kitchens.entries()).entries).toEqual(there.entries)
  expect(union(there.entries, back.entries).added).toEqual([])
  expect(fold(back.entries)).toEqual(fold(there.entries))
  expect(fold(back.entries).history.all.map(({ id }) => id)).toEqual(
    fold(there.entries).history.all.map(({ id }) => id),
  )
})

test('a phone that knows nothing of a bag keeps the dose from it and asks', () => {
  const book = given(tankOf(longGallery, usGal(200), { zone: london }), foodOf(greenFood))
  book.note(planOf({ first: '2027-06-10', amount: 1 }))
  const [entry] = book.does(dose(later, portionOf(blueClip, 1)))
  expect(book.world().oddities).toMatchObject([{ what: 'unknownStock', thing: blueClip, entries: [entry] }])
  expect(book.world().fed.get(greenFood)?.doses).toBe(1)
})
