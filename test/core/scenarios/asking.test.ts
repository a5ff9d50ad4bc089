/** What is asked, what is refused, what is let through without a word. Checked only against our own worked examples. */
import { describe, expect, test } from 'vitest'
import {
  day,
  makePlan,
  type PlanAsked,
  readNumber,
  slipReadings,
  strikeOut,
  type TankAsked,
  takeUp,
} from '../../../core/index.ts'
import { at, done, given, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  cockle,
  dose,
  firstBottle,
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

const asked = (amount: number, more: Partial<PlanAsked> = {}): PlanAsked => ({
  plan: greenPlan,
  tank: longGallery,
  food: greenFood,
  amount: mL(amount),
  everyNights: 2,
  firstNight: day('2027-01-06'),
  ...more,
})
const evening = at('2027-01-06 21:22')

describe('a thousand millilitres for Long Gallery', () => {
  test('are refused as a plan, five hundred times the top', () => {
    const refusal = refusalOf(makePlan(given(lab).world(), asked(1000, { sure: true }), evening))
    expect(refusal).toEqual({ why: 'farAboveRange', ratio: 500, top: 2000 })
  })

  test('typed as "1.000" are asked about', () => {
    expect(refusalOf(readNumber('1.000'))).toEqual({ why: 'twoReadings', typed: '1.000', readings: [1, 1000] })
  })

  const withBottle = () =>
    given(lab, planOf({ first: '2027-01-06', amount: 1 }), bottleOf({ holds: 96, opened: '2027-01-05' }))
  const pouredAll = { taken: [{ from: 'bottle', bottle: firstBottle, amount: mL(1000) }], amount: mL(1000) } as const

  test('are asked about as a dose: five hundred times the top, and a lost point is offered back', () => {
    const world = withBottle().world()
    expect(refusalOf(dose(evening, pouredAll)(world))).toEqual({
      why: 'farAboveRange',
      tank: longGallery,
      asked: 1_000_000,
      ratio: 500,
      top: 2000,
    })
    expect(slipReadings(mL(1000), 2000)).toEqual([1000, 10_000])
    expect(refusalOf(dose(evening, { ...pouredAll, sure: true })(world))).toMatchObject({ why: 'farAboveRange' })
    const noReason = dose(evening, { ...pouredAll, sure: true, aside: false, why: 'the whole jug' })(world)
    expect(refusalOf(noReason)).toEqual({
      why: 'moreThanBottleHolds',
      bottle: firstBottle,
      holds: 96_000,
      asked: 1_000_000,
    })
  })

  const insisted = () => {
    const book = withBottle()
    const [entry] = book.does(dose(evening, { ...pouredAll, sure: true, why: 'the whole jug' }))
    if (!entry) throw new Error('nothing was written')
    return { book, entry }
  }

  test('are kept when insisted on with a reason, and the bottle of 96 mL is not driven to -904', () => {
    const { book, entry } = insisted()
    expect(book.entries().at(-1)?.fact).toMatchObject({ kind: 'doseSetAside', why: 'the whole jug' })
    const world = book.world()
    expect(world.bottles.get(firstBottle)).toMatchObject({ left: 96_000, fed: 0 })
    expect(world.fed.has(greenFood)).toBe(false)
    expect(world.oddities).toEqual([{ what: 'doseSetAside', key: `doseSetAside:${entry}`, entries: [entry] }])
    expect(lineOf(world, evening).state.is).toBe('done')
  })

  test.each([
    { how: { is: 'amount', amount: mL(1) } as const, left: 95_000, fed: 1000 },
    { how: { is: 'bottleHeldMore' } as const, left: 0, fed: 1_000_000 },
  ])('are taken up once she says how it was: $how.is', ({ how, left, fed }) => {
    const { book, entry } = insisted()
    book.does((world) => takeUp(world, { entry, how }, at('2027-01-07 10:00')))
    const world = book.world()
    expect(world.oddities).toEqual([])
    expect(world.bottles.get(firstBottle)).toMatchObject({ left })
    expect(world.fed.get(greenFood)).toEqual({ doses: 1, amount: fed })
  })

  test('leave no trace in the stock or the nights when crossed out', () => {
    const { book, entry } = insisted()
    book.does((world) => strikeOut(world, { target: entry }, at('2027-01-07 10:00')))
    expect(book.world().oddities).toEqual([])
    expect(book.world().bottles.get(firstBottle)?.left).toBe(96_000)
    expect(lineOf(book.world(), at('2027-01-07 10:01')).unlogged).toEqual(['2027-01-06'])
    const again = takeUp(book.world(), { entry, how: { is: 'bottleHeldMore' } }, at('2027-01-07 10:02'))
    expect(refusalOf(again)).toEqual({ why: 'alreadyCrossedOut' })
  })
})

test('a dose larger than what the bottle holds is asked about', () => {
  const book = given(lab, planOf({ first: '2027-01-06', amount: 1 }), bottleOf({ holds: 1.5, opened: '2027-01-05' }))
  const two = { taken: [{ from: 'bottle', bottle: firstBottle, amount: mL(2) }], amount: mL(2) } as const
  const refusal = refusalOf(dose(evening, two)(book.world()))
  expect(refusal).toEqual({ why: 'moreThanBottleHolds', bottle: firstBottle, holds: 1500, asked: 2000 })
})

describe('a tank called 100 US gal that really holds 88', () => {
  const water: TankAsked['water'] = { stated: usGal(100), measured: usGal(88), about: true, doseBy: 'stated' }
  const hers = [lab, tankOf(longGallery, usGal(100), { water })]

  test.each([1, 1.25])('takes a plan of %f mL without a word', (amount) => {
    expect(done(makePlan(given(...hers).world(), asked(amount), evening))).toHaveLength(1)
  })

  test('is asked about 1.30 mL once, and the forty doses that follow the plan pass without a word', () => {
    const book = given(...hers, onHand({ portions: 44, each: 1.3, frozen: '2027-01-02' }))
    const refusal = refusalOf(makePlan(book.world(), asked(1.3), evening))
    expect(refusal).toEqual({ why: 'aboveRange', ratio: 1.3, top: 1000 })
    book.does((world) => makePlan(world, asked(1.3, { sure: true }), at('2027-01-06 12:30')))
    for (let night = 0; night < 40; night += 1) book.does(dose((evening + night * 48 * 3_600_000) as typeof evening))
    expect(book.world().fed.get(greenFood)).toEqual({ doses: 40, amount: 52_000 })
  })
})

test('of a portion larger than the plan a part is given; the bag has one less, and nothing is asked night after night', () => {
  const book = given(
    lab,
    tankOf(cockle, usGal(60)),
    planOf({ first: '2027-01-06', amount: 0.6, tank: cockle }),
    onHand({ portions: 7, each: 1, frozen: '2027-01-02' }),
  )
  book.does(dose(evening))
  expect(book.world().lots.get(blueClip)?.left).toBe(6)
  expect(book.world().fed.get(greenFood)).toEqual({ doses: 1, amount: 600 })
  expect(refusalOf(dose(at('2027-01-08 21:00'), portionOf(blueClip, 1))(book.world()))).toMatchObject({
    why: 'aboveRange',
  })
})
