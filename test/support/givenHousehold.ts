/** Households at random: one food, up to three tanks that share it, lots and bottles that end in different ways. */
import fc from 'fast-check'
import {
  addDays,
  type BottleId,
  type Day,
  dayFromNumber,
  dayNumber,
  day as exactDay,
  type Fact,
  type LotId,
  microlitres,
  type PlanId,
  type TankId,
} from '../../core/index.ts'
import { at, type Book, given } from './given.ts'
import { amberFood, bottleOf, doors, foodOf, greenFood, mL, onHand, planOf, tankOf, usGal } from './givenLab.ts'

/** The night the story begins; the clocks change on the 28th. */
export const firstNight = exactDay('2027-03-10')

const tanks = ['tankaa', 'tankbb', 'tankcc'] as const
const days = (from: number, to: number): fc.Arbitrary<Day> =>
  fc.integer({ min: from, max: to }).map((step) => dayFromNumber(dayNumber(firstNight) + step))

const anyPlan = fc.record({
  /** Plans are not made in the order of their ids. */
  id: fc.constantFrom('x', 'm', 'a'),
  amount: fc.constantFrom(400, 500, 750, 1000, 1600),
  every: fc.integer({ min: 1, max: 4 }),
  first: days(-2, 6),
  lightsOut: fc.constantFrom('21:00', '22:30', '00:30', '05:00'),
  fixed: fc.boolean(),
  hold: fc.option(days(0, 12), { nil: undefined, freq: 3 }),
  /** A night in which far too much reached the tank. */
  overfed: fc.option(days(-3, 0), { nil: undefined, freq: 3 }),
  retired: fc.boolean().chain((once) => (once ? fc.boolean() : fc.constant(false))),
})
const anyLot = fc.record({
  portions: fc.integer({ min: 1, max: 9 }),
  each: fc.constantFrom(0.5, 0.8, 1, 1.5),
  frozen: days(-25, 0),
})
const anyBottle = fc.record({
  holds: fc.constantFrom(1, 2.3, 4, 6.7, 11),
  received: days(-20, -10),
  opened: fc.option(days(-10, 0), { nil: undefined }),
  useBy: fc.option(days(-3, 40), { nil: undefined }),
})

export const anyHousehold = fc.record({
  plans: fc.uniqueArray(anyPlan, { minLength: 1, maxLength: 3, selector: ({ id }) => id }),
  lots: fc.array(anyLot, { maxLength: 3 }),
  bottles: fc.array(anyBottle, { maxLength: 3 }),
  fridge: fc.integer({ min: 12, max: 45 }),
  freezer: fc.integer({ min: 20, max: 70 }),
  countsFrom: fc.constantFrom('bottling' as const, 'arrival' as const, 'opening' as const),
  residueShare: fc.constantFrom(0, 0.03),
  /** Another food for the first tank. */
  amber: fc.boolean(),
})
export type Household = typeof anyHousehold extends fc.Arbitrary<infer Value> ? Value : never

const tankOfPlan = (index: number): TankId => (tanks[index] ?? tanks[0]) as TankId

/** Its ledger. */
export const livedIn = ({ plans, lots, bottles, amber, ...food }: Household): Book =>
  given(
    doors,
    foodOf(greenFood, {
      fridgeLife: { count: food.fridge, unit: 'days' },
      freezerLife: { count: food.freezer, unit: 'days' },
      countsFrom: food.countsFrom,
      residueShare: food.residueShare,
    }),
    ...plans.flatMap(({ id, amount, every, first, lightsOut, fixed }, index) => {
      const [tank, plan] = [tankOfPlan(index), `plan${id}` as PlanId]
      return [
        tankOf(tank, usGal(200), { lightsOut }),
        {
          ...planOf({ first, amount: 1, every, tank, plan }),
          amount: microlitres(amount),
          ...(fixed ? { rhythm: 'fixedNights' as const } : {}),
        },
      ]
    }),
    ...lots.map((lot, index) => onHand({ ...lot, lot: `lot${index}` as LotId })),
    ...bottles.map((bottle, index) => {
      const { opened, useBy, ...known } = bottle
      return bottleOf({
        ...known,
        ...(opened ? { opened } : {}),
        ...(useBy ? { useBy } : {}),
        bottle: `bottle${index}` as BottleId,
      })
    }),
    ...(amber
      ? [
          foodOf(amberFood),
          planOf({ first: firstNight, amount: 1, tank: tankOfPlan(0), food: amberFood, plan: amberPlan }),
          onHand({ portions: 5, each: 1, frozen: '2027-03-01', food: amberFood, lot: 'amberlot' as LotId }),
        ]
      : []),
    ...plans.flatMap(({ id, hold, overfed, retired }, index): Fact[] => {
      const [tank, plan] = [tankOfPlan(index), `plan${id}` as PlanId]
      return [
        ...(overfed ? [tooMuch(tank, plan, overfed)] : []),
        ...(hold ? [{ kind: 'planHeld' as const, at: at(`${firstNight} 12:00`), plan, until: hold }] : []),
        ...(retired ? [{ kind: 'tankRetired' as const, at: at(`${firstNight} 12:05`), tank }] : []),
      ]
    }),
  )

export const amberPlan = 'amberplan' as PlanId

/** From nobody knows where: it tells of the night alone. */
const tooMuch = (tank: TankId, plan: PlanId, night: Day): Fact => ({
  kind: 'doseGiven',
  at: at(`${night} 23:40`),
  food: greenFood,
  served: [{ tank, plan, night, amount: mL(9) }],
  taken: [],
})

export const nightAfter = (nights: number): Day => addDays(firstNight, nights)
