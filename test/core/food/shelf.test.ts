import { expect, test } from 'vitest'
import {
  day,
  type LotId,
  onHand,
  readMillilitres,
  readPrice,
  readSize,
  recordFreezing,
  stock,
  usedUp,
} from '../../../core/index.ts'
import { at, done, given, london, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  bottleOf,
  firstBottle,
  greenFood,
  onHand as heap,
  kitchenFreezer,
  lab,
  mL,
  redClip,
} from '../../support/givenLab.ts'

const now = at('2026-11-25 18:00')
const today = day('2026-11-25')
const greyClip = 'greyclip' as LotId

test('portions of two sizes are never added together', () => {
  const { world } = given(
    lab,
    heap({ portions: 22, each: 1, frozen: '2026-06-03' }),
    heap({ portions: 31, each: 1, frozen: '2026-07-04', lot: redClip }),
    heap({ portions: 17, each: 0.5, frozen: '2026-08-05', lot: greyClip }),
    bottleOf({ holds: 100, received: '2026-11-10', opened: '2026-11-11' }),
  )
  expect(onHand(stock(world(), now, today), greenFood, today)).toEqual({
    portions: [
      { each: 1000, count: 53 },
      { each: 500, count: 17 },
    ],
    liquid: 97_000,
  })
})

test('what is past its last good day is not counted on', () => {
  const { world } = given(
    lab,
    heap({ portions: 22, each: 1, frozen: '2024-11-24', seen: now }),
    bottleOf({ holds: 100, received: '2026-09-24', opened: '2026-09-24' }),
  )
  expect(onHand(stock(world(), now, today), greenFood, today)).toEqual({ portions: [], liquid: 0 })
})

test('what stands in a place that was crossed out is still there', () => {
  const book = given(lab, heap({ portions: 22, each: 1, frozen: '2026-06-03' }))
  const entry = book.entries().find(({ fact }) => fact.kind === 'placeDescribed' && fact.place === kitchenFreezer)
  if (!entry) throw new Error('no freezer')
  book.note({ kind: 'entryStruckOut', at: now, target: entry.id })
  const shelves = stock(book.world(), now, today)
  expect(onHand(shelves, greenFood, today).portions).toEqual([{ each: 1000, count: 22 }])
  expect(shelves.at(-1)).toMatchObject({ place: undefined, lots: [{ left: 22 }] })
})

test('what is left of a sealed bottle after freezing is open, and keeps as an open one', () => {
  const sealed = bottleOf({ holds: 100, received: '2026-11-11', useBy: day('2027-12-31') })
  const world = given(lab, sealed).world()
  const asked = {
    lot: greyClip,
    mark: 'grey clip',
    portions: 40,
    each: mL(1),
    frozenOn: day('2026-11-20'),
    kept: { as: 'loose' as const },
    place: kitchenFreezer,
    bottle: firstBottle,
  }
  const frozen = done(recordFreezing(world, asked, { now, zone: london }))
  const [shelved] = stock(given(lab, sealed, frozen).world(), now, today).flatMap(({ bottles }) => bottles)
  expect(shelved).toMatchObject({ left: 60_000, lastGood: '2027-01-11', bottle: { openedOn: '2026-11-20' } })
})

test('finished bottles and empty lots are history', () => {
  const book = given(
    lab,
    heap({ portions: 2, each: 1, frozen: '2026-06-03' }),
    bottleOf({ holds: 100, opened: '2026-11-11' }),
  )
  expect(usedUp(book.world())).toEqual({ bottles: [], lots: [] })
  book.note(
    { kind: 'portionsGone', at: now, lot: blueClip, count: 2, fate: 'discarded' },
    { kind: 'bottleFinished', at: now, bottle: firstBottle },
  )
  const { bottles, lots } = usedUp(book.world())
  expect([...bottles, ...lots].map(({ id }) => id)).toEqual([firstBottle, blueClip])
})

test('a size keeps its number and unit, and an amount no ledger could hold is refused', () => {
  expect(done(readSize('4', 'usFlOz'))).toEqual({ value: 4, unit: 'usFlOz', amount: 118_294 })
  expect(done(readMillilitres('4,5'))).toBe(4_500)
  expect(refusalOf(readMillilitres('0'))).toEqual({ why: 'notPositive', typed: '0' })
  expect(refusalOf(readMillilitres('-3'))).toEqual({ why: 'notPositive', typed: '-3' })
  expect(refusalOf(readSize('40000', 'usFlOz'))).toEqual({ why: 'tooMuch', most: 1_000_000 })
  expect(refusalOf(readMillilitres('9'.repeat(30)))).toEqual({ why: 'tooMuch', most: 1_000_000 })
})

test('a price is whole coins of a currency with a name', () => {
  expect(done(readPrice('34,50', 'gbp', 2))).toEqual({ minor: 3450, currency: 'GBP' })
  expect(done(readPrice('1200', 'JPY', 0))).toEqual({ minor: 1200, currency: 'JPY' })
  expect(refusalOf(readPrice('0', 'GBP', 2))).toEqual({ why: 'priceOutOfRange' })
  expect(refusalOf(readPrice('0.004', 'GBP', 2))).toEqual({ why: 'priceOutOfRange' })
  expect(done(readPrice('1000000000', 'JPY', 0))).toEqual({ minor: 1_000_000_000, currency: 'JPY' })
  expect(refusalOf(readPrice('10000001', 'GBP', 2))).toEqual({ why: 'priceTooLarge', most: 10_000_000 })
  expect(refusalOf(readPrice('12', 'pounds', 2))).toEqual({ why: 'currencyUnknown' })
})
