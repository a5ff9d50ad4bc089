/** Why the first night without food moved. Calendars by hand. */
import { expect, test } from 'vitest'
import {
  countPortions,
  type Day,
  type Fact,
  giveDose,
  type LotId,
  lasts,
  type Moved,
  type PlanId,
  portionsGone,
  seenOf,
  skipNight,
  strikeOut,
  type World,
  whyMoved,
} from '../../../core/index.ts'
import { at, type Book, bookOf, given, kitchenPhone } from '../../support/given.ts'
import {
  amberFood,
  blueClip,
  cockle,
  dose,
  foodOf,
  greenFood,
  greenPlan,
  lab,
  mL,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

/** 45 portions, one every other night from 1 September: the first night without food is 30 November. */
const begun = (): Book =>
  given(lab, planOf({ first: '2026-09-01', amount: 1 }), onHand({ portions: 45, each: 1, frozen: '2026-07-01' }))
const bareNight = (world: World, now: string): Day => {
  const answer = lasts(world, greenFood, at(now))
  if (!answer) throw new Error('nothing is planned')
  return answer.bareNight
}
const shownOf = (book: Book, now: string) => ({ bareNight: bareNight(book.world(), now), seen: seenOf(book.world()) })
const told = (moved: Moved | undefined) =>
  moved?.parts.map(({ because, days }) => [
    because.about === 'entries' || because.about === 'crossedOut'
      ? `${because.about}: ${because.entries.map(({ fact }) => fact.kind).join(', ')}`
      : because.about,
    days,
  ])

const noon = '2026-08-31 12:00'

test('two portions dropped on two days are one reason: four days sooner', () => {
  const book = begun()
  const shown = shownOf(book, noon)
  for (const when of ['2026-08-31 13:00', '2026-08-31 15:00'])
    book.does((world) => portionsGone(world, { lot: blueClip, count: 1, fate: 'lost', why: 'dropped' }, at(when)))
  const moved = whyMoved(book.world(), greenFood, shown, at('2026-08-31 16:00'))
  expect(moved).toMatchObject({ from: '2026-11-30', to: '2026-11-26', days: -4 })
  expect(told(moved)).toEqual([['entries: portionsGone, portionsGone', -4]])
})

test('three more by a count, and every night instead of every other: each has its own days, and they come to the whole', () => {
  const book = begun()
  const shown = shownOf(book, noon)
  book.does((world) => countPortions(world, { lot: blueClip, counted: 48 }, at('2026-08-31 13:00')))
  const { kind: _, at: __, ...plan } = planOf({ first: '2026-09-01', amount: 1, every: 1 })
  book.note({ kind: 'planMade', at: at('2026-08-31 14:00'), ...plan })
  const moved = whyMoved(book.world(), greenFood, shown, at('2026-08-31 16:00'))
  // 48 nights from 1 September, so that 19 October is the first without.
  expect(moved).toMatchObject({ to: '2026-10-19', days: -42 })
  expect(told(moved)).toEqual([
    ['entries: portionsCounted', 6],
    ['entries: planMade', -48],
  ])
})

test('a fortnight in which every dose was given as planned moves nothing', () => {
  const book = begun()
  const shown = shownOf(book, noon)
  for (let date = 1; date <= 13; date += 2) book.does(dose(at(`2026-09-${String(date).padStart(2, '0')} 21:20`)))
  expect(whyMoved(book.world(), greenFood, shown, at('2026-09-14 12:00'))).toBeUndefined()
})

test('a dose more than planned is two days sooner, two skipped nights are four days later', () => {
  const book = begun()
  const shown = shownOf(book, noon)
  book.does(dose(at('2026-09-01 21:20')))
  const more = { taken: [{ from: 'portions', lot: blueClip, count: 1 }], amount: mL(1), again: true } as const
  book.does((world) =>
    giveDose(world, { plan: greenPlan, at: at('2026-09-01 22:00'), ...more }, at('2026-09-01 22:00')),
  )
  expect(told(whyMoved(book.world(), greenFood, shown, at('2026-09-02 12:00')))).toEqual([['nights', -2]])
  for (const night of ['2026-09-03', '2026-09-05'])
    book.does((world) => skipNight(world, { plan: greenPlan }, at(`${night} 21:20`)))
  expect(told(whyMoved(book.world(), greenFood, shown, at('2026-09-06 12:00')))).toEqual([['nights', 2]])
})

test('what was known is crossed out: the reason is what it was', () => {
  const book = begun()
  const [lost] = book.does((world) =>
    portionsGone(world, { lot: blueClip, count: 2, fate: 'lost' }, at('2026-08-31 09:00')),
  )
  const shown = shownOf(book, noon)
  if (!lost) throw new Error('nothing was lost')
  book.does((world) => strikeOut(world, { target: lost, why: 'mistake' }, at('2026-08-31 13:00')))
  const moved = whyMoved(book.world(), greenFood, shown, at('2026-08-31 16:00'))
  expect(moved?.days).toBe(4)
  expect(told(moved)).toEqual([['crossedOut: portionsGone', 4]])
})

test('what came and was crossed out again between two looks is no reason', () => {
  const book = begun()
  const shown = shownOf(book, noon)
  const [lost] = book.does((world) =>
    portionsGone(world, { lot: blueClip, count: 5, fate: 'lost' }, at('2026-08-31 13:00')),
  )
  if (!lost) throw new Error('nothing was lost')
  book.does((world) => strikeOut(world, { target: lost }, at('2026-08-31 13:01')))
  book.does((world) => portionsGone(world, { lot: blueClip, count: 1, fate: 'lost' }, at('2026-08-31 13:02')))
  const moved = whyMoved(book.world(), greenFood, shown, at('2026-08-31 16:00'))
  expect(moved?.parts).toHaveLength(1)
  expect(moved?.parts[0]).toMatchObject({ days: -2, because: { about: 'entries', entries: [{ fact: { count: 1 } }] } })
})

test('a new bag that was fed from at once is told by its own days, and the doses as planned by none', () => {
  const book = given(
    lab,
    planOf({ first: '2026-09-01', amount: 1 }),
    onHand({ portions: 2, each: 1, frozen: '2026-07-01' }),
  )
  const shown = shownOf(book, noon)
  for (const night of ['2026-09-01', '2026-09-03']) book.does(dose(at(`${night} 21:20`)))
  book.note(
    ...onHand({ portions: 10, each: 1, frozen: '2026-08-01', lot: redClip, seen: at('2026-09-04 12:00') })(
      book.world(),
    ),
  )
  for (const night of ['2026-09-05', '2026-09-07']) book.does(dose(at(`${night} 21:20`)))
  const moved = whyMoved(book.world(), greenFood, shown, at('2026-09-08 12:00'))
  expect(moved).toMatchObject({ from: '2026-09-05', to: '2026-09-25', days: 20 })
  expect(told(moved)).toEqual([['entries: portionsOnHand', 20]])
})

test('another phone’s loss arrives late, written before the last look: it is a reason all the same', () => {
  const book = begun()
  const theirs = bookOf(kitchenPhone, book.entries())
  theirs.does((world) => portionsGone(world, { lot: blueClip, count: 3, fate: 'lost' }, at('2026-08-31 09:00')))
  const shown = shownOf(book, noon)
  const both = bookOf(kitchenPhone, theirs.entries())
  expect(told(whyMoved(both.world(), greenFood, shown, at('2026-08-31 16:00')))).toEqual([
    ['entries: portionsGone', -6],
  ])
})

test('a second tank on the same stock, and a loss of another food', () => {
  const book = begun()
  const amberLot = 'amberlot' as LotId
  book.note(...tankOf(cockle, usGal(60)), ...foodOf(amberFood))
  book.note(...onHand({ portions: 9, each: 1, frozen: '2026-07-01', food: amberFood, lot: amberLot })(book.world()))
  const shown = shownOf(book, noon)
  book.does((world) => portionsGone(world, { lot: amberLot, count: 4, fate: 'lost' }, at('2026-08-31 13:00')))
  const second: Fact = {
    ...planOf({ first: '2026-09-02', amount: 1, tank: cockle, plan: 'cockleplan' as PlanId }),
    at: at('2026-08-31 14:00'),
  }
  book.note(second)
  const moved = whyMoved(book.world(), greenFood, shown, at('2026-08-31 16:00'))
  // 23 nights of one and 22 of the other: 16 October is the first without.
  expect(moved?.to).toBe('2026-10-16')
  expect(told(moved)).toEqual([['entries: planMade', -45]])
})

test('a plan that ended and another that began are told together: between them there was no date', () => {
  const book = begun()
  const shown = shownOf(book, noon)
  book.note({ kind: 'planEnded', at: at('2026-08-31 13:00'), plan: greenPlan })
  book.note({
    ...planOf({ first: '2026-09-01', amount: 1, every: 1, plan: 'other' as PlanId }),
    at: at('2026-08-31 14:00'),
  })
  const moved = whyMoved(book.world(), greenFood, shown, at('2026-08-31 16:00'))
  expect(moved?.to).toBe('2026-10-16')
  expect(told(moved)).toEqual([['together', -45]])
})

test('no plan, no date that could have moved', () => {
  const book = begun()
  const shown = shownOf(book, noon)
  book.note({ kind: 'planEnded', at: at('2026-08-31 13:00'), plan: greenPlan })
  expect(whyMoved(book.world(), greenFood, shown, at('2026-08-31 16:00'))).toBeUndefined()
})
