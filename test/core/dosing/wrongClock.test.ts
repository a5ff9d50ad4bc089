/** A phone whose clock ran ahead. Checked only against our own worked examples: calendars by hand. */
import { expect, test } from 'vitest'
import { type DoseGiven, day, lasts } from '../../../core/index.ts'
import { at } from '../../support/given.ts'
import { blueClip, dose, greenFood, greenPlan, lineOf, longGallery, mL } from '../../support/givenLab.ts'
import { withPortions } from '../../support/givenRound.ts'

const ahead = (night: string): DoseGiven => ({
  kind: 'doseGiven',
  at: at(`${night} 21:15`),
  food: greenFood,
  served: [{ tank: longGallery, plan: greenPlan, night: day(night), amount: mL(1) }],
  taken: [{ from: 'portions', lot: blueClip, count: 1 }],
})
const book = () => {
  const told = withPortions('2027-06-10', 5)
  told.does(dose(at('2027-06-10 21:30')))
  return told
}

test('a dose dated a year ahead does not silence the nights before it', () => {
  const told = book()
  told.note(ahead('2028-06-12'))
  const evening = at('2027-06-12 20:00')
  expect(lineOf(told.world(), evening).state).toEqual({ is: 'due', since: undefined })
  expect(lasts(told.world(), greenFood, evening)).toMatchObject({ doses: 3, bareNight: '2027-06-18' })
})

test('a dose of the night after tonight counts, for clocks differ by minutes', () => {
  const told = book()
  told.note(ahead('2027-06-12'))
  expect(lineOf(told.world(), at('2027-06-12 08:58')).state).toMatchObject({ is: 'resting', next: '2027-06-14' })
})
