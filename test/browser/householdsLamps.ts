/** Households whose lamps have clocks of their own. */
import { describePlace, type Entry, type Fact, fillTrays, type LampClock } from '../../core/index.ts'
import { at, given } from '../support/given.ts'
import {
  doors,
  foodOf,
  greenFood,
  kitchenFreezer,
  longGallery,
  moveIn,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const withLamp = (lamp: LampClock, first: string, ...more: readonly Fact[]): readonly Entry<Fact>[] =>
  given(
    tankOf(longGallery, usGal(200), { name: 'Long Gallery', lamp }),
    foodOf(greenFood, { name: 'Green food' }),
    doors,
    describePlace({ place: kitchenFreezer, name: 'kitchen freezer', door: 'freezer' }, moveIn),
    onHand({ portions: 105, each: 1, frozen: '2026-09-04', kept: { as: 'trays', trays: fillTrays(105, 3, 5) } }),
    planOf({ first, amount: 1 }),
    more,
  ).entries()
const cut = (when: string): Fact => ({ kind: 'powerCut', at: at(when), minutes: 50, tanks: [longGallery] })

export const householdsLamps = {
  lampLate: () => withLamp('dial', '2026-11-25', cut('2026-11-24 15:30')),
  lampForgot: () => withLamp('losesTime', '2026-11-25', cut('2026-11-24 15:30')),
  lampInOctober: () => withLamp('ownClock', '2026-10-23'),
}
