/** Portions in trays, and portions that were there already. Checked only against our own worked examples: sums by hand. */
import { expect, test } from 'vitest'
import {
  countPortions,
  countTrays,
  day,
  fillTrays,
  recordFreezing,
  stock,
  traysNow,
  type World,
} from '../../../core/index.ts'
import { at, given, london } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  dose,
  firstBottle,
  kitchenFreezer,
  lab,
  mL,
  onHand,
  planOf,
} from '../../support/givenLab.ts'

const lotIn = (world: World) => {
  const lot = world.lots.get(blueClip)
  if (!lot) throw new Error('no such lot')
  return lot
}

test('seven trays of fifteen, one portion a night: after 17 nights five are full and the open one holds 13', () => {
  const book = given(lab, planOf({ first: '2026-09-05', amount: 1, every: 1 }))
  book.note(...bottleOf({ holds: 108, received: '2026-09-01', opened: '2026-09-01' })(book.world()))
  book.does((world) =>
    recordFreezing(
      world,
      {
        bottle: firstBottle,
        lot: blueClip,
        mark: 'blue clip',
        portions: 105,
        each: mL(1),
        frozenOn: day('2026-09-04'),
        kept: { as: 'trays', trays: fillTrays(105, 3, 5) },
        place: kitchenFreezer,
      },
      { now: at('2026-09-04 20:00'), zone: london },
    ),
  )
  for (let night = 0; night < 17; night += 1) book.does(dose(at(`2026-09-${String(5 + night).padStart(2, '0')} 21:15`)))
  const lot = lotIn(book.world())
  expect(lot.left).toBe(88)
  expect(traysNow(lot)).toMatchObject({ full: 5, open: { rows: 3, columns: 5, holds: 13 } })

  book.does((world) => countPortions(world, { lot: blueClip, counted: countTrays(5, 15, 12) }, at('2026-09-22 12:00')))
  expect(lotIn(book.world())).toMatchObject({ left: 87, observations: [{ found: 87, bookThen: 88 }] })
})

test('sixty portions frozen about June 2026 are stock without a bottle, dated as early as they can be', () => {
  const portions = { portions: 60, each: 0.8, frozen: '2026-06-01', about: true, seen: at('2027-01-03 15:00') }
  const world = given(lab, onHand(portions)).world()
  const lot = lotIn(world)
  const [shelf] = stock(world, at('2027-01-03 15:01'), day('2027-01-03')).filter(({ lots }) => lots.length > 0)
  expect(shelf).toMatchObject({
    place: { name: 'kitchen', door: 'freezer' },
    lots: [{ left: 60, lastGood: '2028-06-01' }],
  })
  expect(lot.made).toMatchObject({ kind: 'portionsOnHand', frozenOn: '2026-06-01', about: true, each: 800 })
  expect(world.bottles.size).toBe(0)
})
