/** Plans that end and begin again, tanks that come back, and what is owed then. Calendars by hand. */
import { expect, test } from 'vitest'
import {
  chooseNext,
  day,
  type Fact,
  lasts,
  type PlanId,
  plansAt,
  portionsCover,
  retireTank,
  tonight,
} from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import {
  blueClip,
  cockle,
  dose,
  greenFood,
  greenPlan,
  lab,
  lineOf,
  longGallery,
  mL,
  onHand,
  planOf,
  portionOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'
import { withPortions } from '../../support/givenRound.ts'

const begun = () => withPortions('2027-05-01')
const ended = (when: string): Fact => ({ kind: 'planEnded', at: at(when), plan: greenPlan })
const again = (when: string): Fact => ({ ...planOf({ first: '2027-05-01', amount: 1 }), at: at(when) })

test('a plan that ended in May and is made again in August owes nothing of June and July', () => {
  const book = begun()
  book.does(dose(at('2027-05-01 21:15')))
  book.note(ended('2027-05-02 12:00'))
  expect(tonight(book.world(), at('2027-06-10 21:15'))).toEqual([])
  book.note(again('2027-08-01 12:00'))
  expect(lineOf(book.world(), at('2027-08-01 21:15'))).toMatchObject({ state: { is: 'due' }, unlogged: [] })
  expect(lineOf(book.world(), at('2027-08-04 21:15')).unlogged).toEqual(['2027-08-01', '2027-08-03'])
})

test('a hold from before an end holds nothing once the plan is made again', () => {
  const book = begun()
  book.note({ kind: 'planHeld', at: at('2027-05-02 12:00'), plan: greenPlan, until: day('2027-09-01') })
  expect(lineOf(book.world(), at('2027-05-03 21:15')).state.is).toBe('held')
  book.note(ended('2027-05-04 12:00'), again('2027-06-01 12:00'))
  expect(lineOf(book.world(), at('2027-06-01 21:15')).state.is).toBe('due')
})

test('a hold that a clock a year fast has written holds nothing yet', () => {
  const book = begun()
  book.note({ kind: 'planHeld', at: at('2028-05-02 12:00'), plan: greenPlan, until: day('2028-09-01') })
  expect(lineOf(book.world(), at('2027-05-03 21:15')).state.is).toBe('due')
})

test('a plan another phone made for a tank already taken down takes no food, and owes nothing when the tank comes back', () => {
  const book = given(
    lab,
    tankOf(cockle, usGal(60)),
    planOf({ first: '2027-05-01', amount: 1 }),
    onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
  )
  const alone = lasts(book.world(), greenFood, at('2027-05-01 12:00'))
  const cover = portionsCover(book.world(), greenFood, { each: mL(1), count: 40 }, at('2027-05-01 12:00'))
  book.does((world) => retireTank(world, { tank: cockle }, at('2027-04-30 20:00')))
  const late = planOf({ first: '2027-04-30', amount: 1, tank: cockle, plan: 'lateplan' as PlanId })
  book.note({ ...late, at: at('2027-04-30 20:05') })
  const world = book.world()
  expect(plansAt(world, at('2027-05-01 12:00')).map(({ plan }) => plan)).toEqual([greenPlan])
  expect(lasts(world, greenFood, at('2027-05-01 12:00'))).toEqual(alone)
  expect(portionsCover(world, greenFood, { each: mL(1), count: 40 }, at('2027-05-01 12:00'))).toBe(cover)

  book.note(...tankOf(cockle, usGal(60)).map((fact) => ({ ...fact, at: at('2027-06-20 12:00') })))
  const line = lineOf(book.world(), at('2027-06-20 21:15'), 'lateplan' as PlanId)
  expect(line).toMatchObject({ state: { is: 'due' }, unlogged: [] })
})

test('a tank taken down ends its plans, by whichever clock the plan was made first', () => {
  const book = begun()
  book.does((world) => retireTank(world, { tank: longGallery }, at('2027-05-02 12:00')))
  book.note(...tankOf(longGallery, usGal(200)).map((fact) => ({ ...fact, at: at('2027-07-01 12:00') })))
  expect(tonight(book.world(), at('2027-07-01 21:15'))).toEqual([])
})

test('a dose that kept to the plan of its evening stays no event when the plan is made smaller', () => {
  const book = given(
    lab,
    tankOf(longGallery, usGal(100)),
    planOf({ first: '2027-05-01', amount: 1.5 }),
    onHand({ portions: 40, each: 1.5, frozen: '2027-01-05' }),
  )
  book.does(dose(at('2027-05-01 21:15')))
  book.note({ ...planOf({ first: '2027-05-01', amount: 1 }), at: at('2027-05-02 12:00') })
  expect(lineOf(book.world(), at('2027-05-02 21:15')).state).toMatchObject({ next: '2027-05-03', overfed: undefined })
})

test('what was chosen for the night after too much holds for that night alone', () => {
  const book = given(
    lab,
    tankOf(longGallery, usGal(100)),
    planOf({ first: '2027-06-10', amount: 1 }),
    onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
  )
  const twice = (evening: string) => {
    book.does(dose(at(`${evening} 21:15`)))
    book.does(dose(at(`${evening} 21:40`), { ...portionOf(blueClip, 1), again: true }))
  }
  twice('2027-06-10')
  const keep = { plan: greenPlan, after: day('2027-06-10'), next: day('2027-06-12') }
  book.does((world) => chooseNext(world, keep, at('2027-06-10 21:50')))
  twice('2027-06-12')
  expect(lineOf(book.world(), at('2027-06-13 21:15')).state).toMatchObject({ is: 'resting', next: '2027-06-16' })
})

test('a first night of another century is not walked up from', () => {
  const book = given(lab, { ...planOf({ first: '1900-01-01', amount: 1, every: 1 }), at: at('2027-05-01 12:00') })
  expect(lineOf(book.world(), at('2027-05-04 21:15')).unlogged).toEqual(['2027-05-01', '2027-05-02', '2027-05-03'])
})
