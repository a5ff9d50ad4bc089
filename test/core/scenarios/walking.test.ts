/** The coming nights, bag by bag; what would not be used in time. Checked only against our own worked examples: calendars by hand. */
import { expect, test } from 'vitest'
import {
  comesFrom,
  type Day,
  dayFromNumber,
  inTimeBy,
  monthPage,
  monthsOf,
  type PlanId,
  type World,
  walk,
} from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import {
  amberFood,
  blueClip,
  bottleOf,
  cockle,
  firstBottle,
  foodOf,
  greenFood,
  lab,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const poured = foodOf(greenFood, { residueShare: 0 })
const walked = (world: World, now: string, food = greenFood) => {
  const answer = walk(world, food, at(now))
  if (!answer) throw new Error('nothing is planned')
  return answer
}
const lastOf = (night: number | undefined): Day | undefined => (night === undefined ? undefined : dayFromNumber(night))

test('6 mL in the fridge and 20 portions: ten nights from the bottle, twenty from the bag, and 1 mL left over', () => {
  const { steps, sources, bare } = walked(
    given(
      lab,
      poured,
      planOf({ first: '2027-06-01', amount: 0.5 }),
      bottleOf({ holds: 6, received: '2027-04-20', opened: '2027-04-20' }),
      onHand({ portions: 20, each: 0.5, frozen: '2027-05-01' }),
    ).world(),
    '2027-06-01 18:00',
  )
  expect(steps).toHaveLength(30)
  expect(sources.map(({ source, doses, last }) => [comesFrom(source), doses, lastOf(last), source.left])).toEqual([
    [blueClip, 20, '2027-07-29', 0],
    [firstBottle, 10, '2027-06-19', 1000],
  ])
  expect(bare.map(({ on }) => dayFromNumber(on))).toEqual(['2027-07-31'])
})

test('two foods in April: green on 15 nights, amber on 10, and on five of them both', () => {
  const world = given(
    lab,
    foodOf(amberFood),
    planOf({ first: '2027-04-01', amount: 1 }),
    planOf({ first: '2027-04-01', amount: 1, every: 3, food: amberFood, plan: 'amberplan' as PlanId }),
    onHand({ portions: 60, each: 1, frozen: '2027-01-01' }),
    onHand({ portions: 60, each: 1, frozen: '2027-01-01', food: amberFood, lot: redClip }),
  ).world()
  const nightsOf = (food: typeof greenFood) =>
    monthPage(walked(world, '2027-04-01 18:00', food), '2027-04-01' as Day)
      .nights.filter(({ steps }) => steps.length > 0)
      .map(({ day }) => Number(day.slice(8)))
  const [green, amber] = [nightsOf(greenFood), nightsOf(amberFood)]
  expect(green).toHaveLength(15)
  expect(amber).toHaveLength(10)
  expect(green.filter((night) => amber.includes(night))).toEqual([1, 7, 13, 19, 25])
})

test('a month page begins on a Monday, and every month up to the first night without food has one', () => {
  const answer = walked(
    given(
      lab,
      planOf({ first: '2026-09-01', amount: 1 }),
      onHand({ portions: 45, each: 1, frozen: '2026-07-01' }),
    ).world(),
    '2026-08-31 20:00',
  )
  const months = monthsOf(answer, '2026-08-31' as Day)
  expect(months).toEqual(['2026-08-01', '2026-09-01', '2026-10-01', '2026-11-01'])
  // 1 September 2026 is a Tuesday, 1 November a Sunday.
  expect(months.map((month) => monthPage(answer, month).before)).toEqual([5, 1, 3, 6])
  const november = monthPage(answer, '2026-11-01' as Day)
  expect(november.nights).toHaveLength(30)
  expect(november.nights.filter(({ bare }) => bare.length > 0).map(({ day }) => day)).toEqual(['2026-11-30'])
  const all = months.flatMap((month) => monthPage(answer, month).nights.flatMap(({ steps }) => steps))
  expect(all).toEqual(answer.steps)
})

test('a bag’s last good day stands on its page', () => {
  const answer = walked(
    given(
      lab,
      foodOf(greenFood, { freezerLife: { count: 30, unit: 'days' } }),
      planOf({ first: '2027-06-01', amount: 1 }),
      onHand({ portions: 20, each: 1, frozen: '2027-05-20' }),
      onHand({ portions: 20, each: 1, frozen: '2027-06-01', lot: redClip }),
    ).world(),
    '2027-06-01 18:00',
  )
  const june = monthPage(answer, '2027-06-01' as Day)
  expect(june.nights.find(({ lastGood }) => lastGood.length > 0)).toMatchObject({
    day: '2027-06-19',
    lastGood: [{ source: { lot: blueClip } }],
  })
})

test('a bottle that outlives its time by 45 mL: every night leaves 30, a second tank nothing', () => {
  const world = given(
    lab,
    poured,
    tankOf(cockle, usGal(400)),
    planOf({ first: '2027-01-05', amount: 0.5 }),
    bottleOf({ holds: 60, received: '2027-01-05', opened: '2027-01-05' }),
  ).world()
  const ways = inTimeBy(world, greenFood, at('2027-01-05 19:00'))
  expect(ways).toMatchObject([
    // 2 mL for 400 US gallons on thirty nights more, until it is empty.
    { by: 'sharing', tank: { tank: cockle }, amount: 2000, everyNights: 2, left: [] },
    { by: 'oftener', everyNights: 1, left: [{ left: 30_000 }] },
  ])
})

test('the gentlest change is enough: every third night instead of every fourth', () => {
  const world = given(
    lab,
    foodOf(greenFood, { freezerLife: { count: 30, unit: 'days' } }),
    planOf({ first: '2027-06-01', amount: 1, every: 4 }),
    onHand({ portions: 10, each: 1, frozen: '2027-06-01' }),
  ).world()
  // Good until 1 July: 31 nights are 8 of every fourth, 11 of every third.
  expect(inTimeBy(world, greenFood, at('2027-06-01 19:00'))).toMatchObject([
    { by: 'oftener', everyNights: 3, left: [] },
  ])
})

test('where all is used in time nothing is proposed', () => {
  const world = given(
    lab,
    planOf({ first: '2026-09-01', amount: 1 }),
    onHand({ portions: 45, each: 1, frozen: '2026-07-01' }),
  ).world()
  expect(inTimeBy(world, greenFood, at('2026-08-31 20:00'))).toEqual([])
})
