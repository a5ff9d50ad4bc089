/** Households that know what their food cost. */
import { describeFood, describePlace, type Entry, type Fact, newFood } from '../../core/index.ts'
import { at, done, given } from '../support/given.ts'
import {
  bottleOf,
  doors,
  foodOf,
  greenFood,
  kitchenFreezer,
  kitchenFridge,
  longGallery,
  moveIn,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const price = { minor: 4350, currency: 'GBP' }
const lab: readonly Fact[] = [
  ...tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
  ...doors,
  ...describePlace({ place: kitchenFridge, name: 'kitchen fridge', door: 'fridge' }, moveIn),
  ...describePlace({ place: kitchenFreezer, name: 'kitchen freezer', door: 'freezer' }, moveIn),
]
const bottle = bottleOf({ holds: 120, received: '2026-11-02', opened: '2026-11-02', price })
const plan = planOf({ first: '2026-11-25', amount: 1 })
const green = foodOf(greenFood, { name: 'Green food' })
const live = done(describeFood(newFood(greenFood, 'Live food', 'live'), moveIn))

export const householdsWorth = {
  priced: (): readonly Entry<Fact>[] => given(lab, green, bottle, plan).entries(),
  pricedLive: (): readonly Entry<Fact>[] => given(lab, live, bottle, plan).entries(),
  fewAtHome: (): readonly Entry<Fact>[] =>
    given(
      lab,
      green,
      plan,
      onHand({ portions: 41, each: 1, frozen: '2026-11-01', seen: at('2026-11-01 18:30') }),
    ).entries(),
}
