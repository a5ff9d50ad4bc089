/** A dose that the bottle cannot have held: kept, asked about, and taken up as she then says it was. */
import { expect, test } from 'vitest'
import { type BottleId, bottlesThatHold, type DoseSetAside, giveShared, slipsOf, takeUp } from '../../../core/index.ts'
import { at, done, given, refusalOf } from '../../support/given.ts'
import {
  bottleOf,
  cockle,
  cocklePlan,
  firstBottle,
  greenFood,
  greenPlan,
  lab,
  longGallery,
  mL,
  planOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const evening = at('2026-06-10 21:42')
const other = 'bottle2' as BottleId

/** 96 mL in the bottle, and so much noted out of it: three quarters for the one tank, a quarter for the other. */
const setAside = (millilitres: number) => {
  const book = given(
    lab,
    tankOf(cockle, usGal(60)),
    bottleOf({ holds: 96, received: '2026-06-02', opened: '2026-06-02' }),
    bottleOf({ holds: 1_500, received: '2026-06-03', bottle: other }),
    planOf({ first: '2026-06-10', amount: 1 }),
    planOf({ first: '2026-06-10', amount: 0.4, tank: cockle, plan: cocklePlan }),
  )
  const [entry] = book.does((world) =>
    giveShared(
      world,
      {
        food: greenFood,
        parts: [
          { tank: longGallery, plan: greenPlan, amount: mL(millilitres * 0.75) },
          { tank: cockle, plan: cocklePlan, amount: mL(millilitres * 0.25) },
        ],
        taken: [{ from: 'bottle', bottle: firstBottle, amount: mL(millilitres) }],
        at: evening,
        sure: true,
        why: 'mistake',
      },
      evening,
    ),
  )
  const fact = book.entries().at(-1)?.fact
  if (!entry || fact?.kind !== 'doseSetAside') throw new Error('not set aside')
  const kept: DoseSetAside = fact
  return { book, entry, kept }
}
const leftIn = ({ book }: ReturnType<typeof setAside>, bottle = firstBottle) => book.world().bottles.get(bottle)?.left

test('readings offered are those the bottle holds and the tanks can take', () => {
  const { book, kept } = setAside(1_000)
  expect(slipsOf(book.world(), kept)).toEqual([mL(1), mL(10)])
})

test('a lost point is found again, and each tank keeps its share', () => {
  const dose = setAside(1_000)
  dose.book.does((world) => takeUp(world, { entry: dose.entry, how: { is: 'amount', amount: mL(1) } }, evening))
  expect(dose.book.entries().at(-1)?.fact).toMatchObject({
    kind: 'doseGiven',
    served: [{ amount: mL(0.75) }, { amount: mL(0.25) }],
    taken: [{ amount: mL(1) }],
  })
  expect(leftIn(dose)).toBe(mL(95))
  expect(dose.book.world().oddities).toEqual([])
})

test('another bottle of the food that holds as much may be the one', () => {
  const dose = setAside(1_000)
  expect(bottlesThatHold(dose.book.world(), dose.kept)).toEqual([other])
  dose.book.does((world) => takeUp(world, { entry: dose.entry, how: { is: 'fromAnother', bottle: other } }, evening))
  expect([leftIn(dose), leftIn(dose, other)]).toEqual([mL(96), mL(500)])
  // It was sealed by the book, and cannot have been.
  expect(dose.book.world().bottles.get(other)?.openedOn).toBe('2026-06-10')
  expect(bottlesThatHold(dose.book.world(), setAside(1_600).kept)).toEqual([])
})

test('where the bottle held more, what the book has is taken and the dose stays as noted', () => {
  const dose = setAside(120)
  dose.book.does((world) => takeUp(world, { entry: dose.entry, how: { is: 'bottleHeldMore' } }, evening))
  expect(leftIn(dose)).toBe(0)
  expect(dose.book.entries().at(-1)?.fact).toMatchObject({ served: [{ amount: mL(90) }, { amount: mL(30) }] })
})

test('a reading that the bottle does not hold either is refused', () => {
  const dose = setAside(1_000)
  const how = { is: 'amount', amount: mL(100) } as const
  expect(refusalOf(takeUp(dose.book.world(), { entry: dose.entry, how }, evening))).toEqual({
    why: 'moreThanBottleHolds',
    bottle: firstBottle,
    holds: mL(96),
    asked: mL(100),
  })
  expect(done(takeUp(dose.book.world(), { entry: dose.entry, how: { ...how, amount: mL(10) } }, evening))).toHaveLength(
    2,
  )
})
