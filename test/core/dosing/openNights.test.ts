/** Nights without an entry, asked about before or after tonight's dose. Checked only against our own worked examples. */
import { expect, test } from 'vitest'
import { keptGoing, stoppedFeeding } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import { blueClip, dose, greenPlan, lab, lineOf, onHand, planOf } from '../../support/givenLab.ts'

const fed = () => {
  const book = given(
    lab,
    planOf({ first: '2027-10-01', amount: 1 }),
    onHand({ portions: 31, each: 1, frozen: '2027-01-05' }),
  )
  book.does(dose(at('2027-10-01 21:12')))
  return book
}
const tonight = at('2027-10-15 21:00')
const after = at('2027-10-15 21:10')
const dosedFirst = () => {
  const book = fed()
  book.does(dose(tonight))
  return book
}
const open = (book: ReturnType<typeof fed>) => lineOf(book.world(), after).unlogged

test('a fortnight is still asked about when tonight was dosed first, and either answer ends it', () => {
  const nights = ['03', '05', '07', '09', '11', '13'].map((date) => `2027-10-${date}`)
  expect(lineOf(fed().world(), tonight).unlogged).toEqual(nights)
  expect(open(dosedFirst())).toEqual(nights)
  for (const answer of [keptGoing, stoppedFeeding]) {
    const book = dosedFirst()
    book.does((world) => answer(world, [{ plan: greenPlan, nights: open(book) }], after))
    expect(open(book)).toEqual([])
    expect(lineOf(book.world(), after).state).toMatchObject({ is: 'done', next: '2027-10-17' })
    expect(book.world().lots.get(blueClip)?.left).toBe(answer === keptGoing ? 23 : 29)
  }
})

test('one night that went by is answered by a dose the night after', () => {
  const book = fed()
  const late = at('2027-10-04 21:00')
  expect(lineOf(book.world(), late).unlogged).toEqual(['2027-10-03'])
  book.does(dose(late))
  expect(lineOf(book.world(), late).unlogged).toEqual([])
})
