/** What to take first, and how long the food lasts. Checked only against our own worked examples: calendars by hand. */
import { expect, test } from 'vitest'
import {
  addDays,
  type BottleId,
  day,
  daysBetween,
  type LotId,
  lasts,
  type PlanId,
  planFreezing,
  type Taken,
  type TankId,
  type World,
} from '../../../core/index.ts'
import { at, done, given } from '../../support/given.ts'
import {
  bottleOf,
  doors,
  firstBottle,
  foodOf,
  greenFood,
  lab,
  limpetShelf,
  longGallery,
  mL,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const poured = foodOf(greenFood, { residueShare: 0 })
const lastsAt = (world: World, now: string) => {
  const answer = lasts(world, greenFood, at(now))
  if (!answer) throw new Error('nothing is planned')
  return answer
}
const _idOf = (taken: Taken): BottleId | LotId => (taken.from === 'bottle' ? taken.bottle : taken.lot)

test('45 portions from 1 September last until 28 November: the portions run out first', () => {
  const world = given(
    lab,
    planOf({ first: '2026-09-01', amount: 1 }),
    onHand({ portions: 45, each: 1, frozen: '2026-07-01' }),
  ).world()
  expect(lastsAt(world, '2026-08-31 20:00')).toEqual({
    doses: 45,
    lastNight: '2026-11-28',
    bareNight: '2026-11-30',
    wasted: [],
    ends: 'food',
  })
})

test('60 mL at half a millilitre outlive their time by 45 mL, enough for 90 portions in the freezer', () => {
  const world = given(
    lab,
    poured,
    planOf({ first: '2027-01-05', amount: 0.5 }),
    bottleOf({ holds: 60, received: '2027-01-05', opened: '2027-01-05' }),
  ).world()
  const answer = lastsAt(world, '2027-01-05 19:00')
  expect(answer).toMatchObject({
    doses: 30,
    lastNight: '2027-03-04',
    bareNight: '2027-03-06',
    wasted: [{ from: 'bottle', bottle: firstBottle, left: 45_000 }],
    ends: 'time',
  })
  const asked = {
    inBottle: mL(60),
    residue: mL(0),
    keepFresh: mL(15),
    portion: mL(0.5),
    well: mL(1.2),
    wellsPerTray: 24,
  }
  expect(done(planFreezing(asked))).toMatchObject({ portions: 90, over: 0 })
})

test('6 mL in the fridge and 20 portions last until 29 July, with 1 mL stranded', () => {
  const world = given(
    lab,
    poured,
    planOf({ first: '2027-06-01', amount: 0.5 }),
    bottleOf({ holds: 6, received: '2027-04-20', opened: '2027-04-20' }),
    onHand({ portions: 20, each: 0.5, frozen: '2027-05-01' }),
  ).world()
  expect(lastsAt(world, '2027-06-01 18:00')).toMatchObject({
    doses: 30,
    lastNight: '2027-07-29',
    bareNight: '2027-07-31',
    wasted: [{ from: 'bottle', left: 1000 }],
  })
})

test('three tanks at the low end empty 100 mL in 58 nights, and 1.4 mL are not enough for all of them', () => {
  const plan = (name: string, tank: TankId, amount: number) =>
    planOf({ first: '2027-01-05', amount, plan: name as PlanId, tank })
  const middle = 'middletank' as TankId
  const book = given(
    tankOf(longGallery, usGal(200)),
    tankOf(middle, usGal(90)),
    tankOf(limpetShelf, usGal(45)),
    foodOf(greenFood, { residueShare: 0, fridgeLife: { count: 36, unit: 'months' } }),
    doors,
    plan('plan1', longGallery, 1),
    plan('plan2', middle, 0.45),
    plan('plan3', limpetShelf, 0.25),
    bottleOf({ holds: 100, received: '2027-01-05', opened: '2027-01-05' }),
  )
  const { lastNight, bareNight, ends } = lastsAt(book.world(), '2027-01-05 18:00')
  expect(daysBetween(day('2027-01-05'), bareNight) / 2).toBe(58)
  expect(lastNight).toBe(addDays(bareNight, -2))
  expect(ends).toBe('food')
})

test('nothing at all is bare on the first due night', () => {
  const world = given(lab, planOf({ first: '2027-01-05', amount: 0.5 })).world()
  expect(lastsAt(world, '2027-01-04 18:00')).toEqual({
    doses: 0,
    lastNight: undefined,
    bareNight: '2027-01-05',
    wasted: [],
    ends: 'food',
  })
})
