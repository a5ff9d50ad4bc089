/** A household at the end of a batch: a bottle that came in a parcel, frozen, given, and gone. */
import {
  type BottleId,
  countPortions,
  day,
  describePlace,
  type Entry,
  type Fact,
  finishBottle,
  giveAway,
  giveDose,
  type Microlitres,
  type Price,
  type PurchaseId,
  portionsGone,
  recordFreezing,
  recordPurchase,
  type Taken,
} from '../../core/index.ts'
import { at, type Book, given, london } from '../support/given.ts'
import {
  blueClip,
  bottleOf,
  doors,
  firstBottle,
  foodOf,
  greenFood,
  greenPlan,
  kitchenFreezer,
  kitchenFridge,
  longGallery,
  mL,
  moveIn,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const lab: readonly Fact[] = [
  ...tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
  ...foodOf(greenFood, { name: 'Green food' }),
  ...doors,
  ...describePlace({ place: kitchenFridge, name: 'kitchen fridge', door: 'fridge' }, moveIn),
  ...describePlace({ place: kitchenFreezer, name: 'kitchen freezer', door: 'freezer' }, moveIn),
]
const pounds = (amount: number): Price => ({ minor: amount * 100, currency: 'GBP' })
const nightAfter = (nights: number): string => new Date(Date.UTC(2026, 4, 2 + nights)).toISOString().slice(0, 10)
const give = (book: Book, night: number, taken: Taken, amount: Microlitres) => {
  const now = at(`${nightAfter(night)} 21:20`)
  book.does((world) => giveDose(world, { plan: greenPlan, taken: [taken], amount, at: now }, now))
}

/** 14 fresh doses, 102 portions: 86 given, 8 dropped, 5 given away, 3 missing when counted. */
const finished = (): Book => {
  const book = given(
    lab,
    planOf({ first: '2026-05-02', amount: 1, every: 1 }),
    bottleOf({ holds: 120, received: '2026-05-02', opened: '2026-05-02' }),
  )
  book.does((world) =>
    recordPurchase(
      world,
      {
        purchase: 'parcel1' as PurchaseId,
        on: day('2026-05-02'),
        paid: pounds(84),
        things: [
          { what: 'live bottles', count: 6, share: pounds(54) },
          { bottle: firstBottle, share: pounds(30), alone: pounds(30) },
        ],
      },
      { now: at('2026-05-02 18:00'), zone: london },
    ),
  )
  book.does((world) =>
    recordFreezing(
      world,
      {
        bottle: firstBottle,
        lot: blueClip,
        mark: 'tray bag 1',
        portions: 102,
        each: mL(1),
        frozenOn: day('2026-05-02'),
        kept: { as: 'loose' },
        place: kitchenFreezer,
      },
      { now: at('2026-05-02 19:00'), zone: london },
    ),
  )
  for (let night = 0; night < 14; night += 1)
    give(book, night, { from: 'bottle', bottle: firstBottle, amount: mL(1) }, mL(1))
  book.does((world) => finishBottle(world, firstBottle, at('2026-05-16 12:00')))
  for (let night = 14; night < 100; night += 1) give(book, night, { from: 'portions', lot: blueClip, count: 1 }, mL(1))
  const now = at('2026-08-11 12:00')
  book.does((world) => portionsGone(world, { lot: blueClip, count: 8, fate: 'lost', why: 'dropped' }, now))
  book.does((world) => giveAway(world, { lot: blueClip, count: 5 }, now))
  book.does((world) => countPortions(world, { lot: blueClip, counted: 0 }, now))
  return book
}

/** And a second bottle since, whose price nobody has said. */
const secondBottle = (): Book => {
  const book = finished()
  const second = bottleOf({ holds: 120, received: '2026-11-02', opened: '2026-11-02', bottle: 'bottle2' as BottleId })
  book.note(...second(book.world()))
  book.note({
    kind: 'nightSkipped',
    at: at('2026-11-03 22:00'),
    tank: longGallery,
    food: greenFood,
    plan: greenPlan,
    night: day('2026-11-03'),
  })
  return book
}

export const householdsMoney = {
  batchFinished: (): readonly Entry<Fact>[] => secondBottle().entries(),
}
