/** Households whose food will run out before long: nothing ordered, an order on its way, an order that is late. */
import { day, describeOrdering, recordAway, recordOrder } from '../../core/index.ts'
import { at, type Book, given, london } from '../support/given.ts'
import {
  boathouseFreezer,
  doors,
  foodOf,
  greenFood,
  longGallery,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const lab = [
  ...tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
  ...foodOf(greenFood, { name: 'Green food' }),
  ...doors,
]
const plan = planOf({ first: '2026-11-25', amount: 1 })

/** A portion every other night from 25 November; nine days for an order to come and five to spare. */
const running = (portions = 11): Book => {
  const book = given(lab, plan, onHand({ portions, each: 1, frozen: '2026-10-01' }))
  book.does(() => describeOrdering({ leadDays: 9, cushionDays: 5 }, at('2026-11-01 12:00')))
  return book
}
const trip = { from: day('2026-12-13'), to: day('2026-12-20') }

const toOrder = (): Book => {
  const book = running()
  book.does((world) => recordAway(world, trip, at('2026-11-02 12:00')))
  book.note(
    ...onHand({
      portions: 12,
      each: 0.5,
      frozen: '2024-12-01',
      seen: at('2026-11-03 12:00'),
      lot: redClip,
      place: boathouseFreezer,
    })(book.world()),
  )
  return book
}
const ordered = (on: string, comes: string): Book => {
  const book = running(6)
  book.does((world) =>
    recordOrder(world, { food: greenFood, on: day(on), comes: day(comes) }, { now: at(`${on} 09:30`), zone: london }),
  )
  return book
}

export const householdsOrder = {
  toOrder: () => toOrder().entries(),
  orderNow: () => running(6).entries(),
  orderOnItsWay: () => ordered('2026-11-20', '2026-12-02').entries(),
  orderLate: () => ordered('2026-11-11', '2026-11-20').entries(),
}
