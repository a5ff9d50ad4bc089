/** Doses put right, and shares that name a tank twice. Counts by hand. */
import { expect, test } from 'vitest'
import { doseMarks, giveShared, moveDose, type Stamp } from '../../../core/index.ts'
import { at, given, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  cockle,
  cocklePlan,
  dose,
  firstBottle,
  greenFood,
  greenPlan,
  lab,
  limpetShelf,
  lineOf,
  longGallery,
  mL,
  onHand,
  planOf,
  portionOf,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'

const begun = () =>
  given(
    lab,
    tankOf(cockle, usGal(190)),
    tankOf(limpetShelf, usGal(45)),
    planOf({ first: '2027-06-10', amount: 1 }),
    planOf({ first: '2027-06-10', amount: 1, tank: cockle, plan: cocklePlan }),
    onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
    bottleOf({ holds: 96, received: '2027-06-01', opened: '2027-06-01' }),
  )
const evening = at('2027-06-10 21:15')
const later = at('2027-06-10 22:15')
const first = (stamps: readonly Stamp[]): Stamp => stamps[0] ?? ('' as Stamp)

test('a dose that went into another tank leaves the one due and the other done, and the stock as it was', () => {
  const book = begun()
  const entry = first(book.does(dose(evening)))
  const stock = book.world().lots.get(blueClip)?.left
  book.does((world) => moveDose(world, { entry, from: longGallery, to: cockle }, later))
  const world = book.world()
  expect(lineOf(world, later).state.is).toBe('due')
  expect(lineOf(world, later, cocklePlan).state).toMatchObject({ is: 'done', next: '2027-06-12' })
  expect([world.lots.get(blueClip)?.left, world.bottles.get(firstBottle)?.left]).toEqual([stock, 95_000])
  expect(world.fed.get(greenFood)).toEqual({ doses: 1, amount: 1000 })
})

test('into a tank without a plan it is a dose off plan; from a tank that had none of it, or to the same one, it is refused', () => {
  const book = begun()
  const entry = first(book.does(dose(evening)))
  const move = (from: typeof cockle, to: typeof cockle) => moveDose(book.world(), { entry, from, to }, later)
  expect(refusalOf(move(cockle, longGallery))).toEqual({ why: 'noSuchTank' })
  expect(refusalOf(move(longGallery, longGallery))).toEqual({ why: 'noSuchTank' })
  const sure = { entry, from: longGallery, to: limpetShelf, sure: true }
  book.does((world) => moveDose(world, sure, later))
  expect(book.entries().at(-1)?.fact).toMatchObject({ kind: 'doseGivenOffPlan', served: [{ tank: limpetShelf }] })
})

test('a dose put into a tank that it is too much for is asked about as one of that size, and bears its mark there', () => {
  const book = begun()
  const entry = first(book.does(dose(evening)))
  const move = { entry, from: longGallery, to: limpetShelf }
  const amended = (told: { sure?: boolean; why?: string }) => moveDose(book.world(), { ...move, ...told }, later)
  // 45 US gal of 1 to 2 mL for 200: the top is 0.45 mL, and 1 mL is 2.2 times that.
  expect(refusalOf(amended({}))).toMatchObject({ why: 'aboveRange', tank: limpetShelf, asked: 1000, top: 450 })
  book.does(() => amended({ sure: true, why: 'rich' }))
  const fact = book.entries().at(-1)?.fact
  if (fact?.kind !== 'doseGivenOffPlan') throw new Error('it was not moved')
  expect(fact.why).toBe('rich')
  expect(doseMarks(book.world(), fact).above).toBeCloseTo(1 / 0.45, 3)
})

test('into a tank that had its dose of the night already it is another one, and asked about', () => {
  const book = begun()
  const entry = first(book.does(dose(evening)))
  book.does(dose(evening, { plan: cocklePlan }))
  const move = { entry, from: longGallery, to: cockle }
  expect(refusalOf(moveDose(book.world(), move, later))).toMatchObject({ why: 'alreadyGiven', tank: cockle })
  book.does((world) => moveDose(world, { ...move, again: true }, later))
  expect(lineOf(book.world(), later).state.is).toBe('due')
})

test('a dose set aside stays set aside when its tank is put right: the bottle is not driven below nothing', () => {
  const book = begun()
  const asked = { taken: [{ from: 'bottle', bottle: firstBottle, amount: mL(1000) }], amount: mL(1000) } as const
  const entry = first(book.does(dose(evening, { ...asked, sure: true, why: 'the whole jug' })))
  const move = { entry, from: longGallery, to: cockle }
  // A thousand millilitres is far above any of the two ranges: its word of why is there already, and she is asked.
  expect(refusalOf(moveDose(book.world(), move, later))).toMatchObject({ why: 'farAboveRange', tank: cockle })
  book.does((world) => moveDose(world, { ...move, sure: true }, later))
  const world = book.world()
  expect(world.bottles.get(firstBottle)?.left).toBe(96_000)
  expect(world.oddities).toMatchObject([{ what: 'doseSetAside', entries: [book.entries().at(-1)?.id] }])
  expect(lineOf(world, later, cocklePlan).state.is).toBe('done')
})

test('a tank named twice in one share had both halves, is judged by the sum and has one mark for the night', () => {
  const half = { tank: longGallery, plan: greenPlan, amount: mL(0.5) }
  const share = (amount: number) => {
    const parts = [half, { ...half, amount: mL(amount) }]
    return giveShared(
      begun().world(),
      { food: greenFood, parts, taken: portionOf(blueClip, 1).taken, at: evening },
      evening,
    )
  }
  expect(share(0.5)).toMatchObject({ ok: true, value: [{ served: [{ tank: longGallery, amount: 1000 }] }] })
  expect(refusalOf(share(2.1))).toMatchObject({ why: 'aboveRange', asked: 2600 })
})

test('a share by the plan of another tank is no share', () => {
  const parts = [{ tank: cockle, plan: greenPlan, amount: mL(1) }]
  const asked = { food: greenFood, parts, taken: portionOf(blueClip, 1).taken, at: evening }
  expect(refusalOf(giveShared(begun().world(), asked, evening))).toEqual({ why: 'noSuchPlan' })
})
