/** What a request lets through must come back from a backup: one line that cannot be read, and none of the file is. */
import { expect, test } from 'vitest'
import {
  type BottleId,
  countPortions,
  type DeviceId,
  day,
  exportLedger,
  portionsFound,
  readLedgerFile,
  readWater,
  recordPortionsOnHand,
} from '../../../core/index.ts'
import { at, given, london, refusalOf } from '../../support/given.ts'
import { blueClip, bottleOf, greenFood, kitchenFreezer, lab, mL, onHand, usGal } from '../../support/givenLab.ts'

const now = at('2027-01-06 19:15')
const header = { at: now, device: 'labphone' as DeviceId, version: '1.2.3' }
const back = (book: ReturnType<typeof given>) => readLedgerFile(exportLedger(book.entries(), header))

test('a bottle whose year was mistyped as 1926 is recorded, and its backup is read', () => {
  const book = given(lab, bottleOf({ holds: 40, bottle: 'oldone' as BottleId, received: '1926-11-03', seen: now }))
  expect(back(book)).toMatchObject({ ok: true, value: { entries: book.entries() } })
})

test('water beyond any tank is refused even from someone who is sure; the largest aquarium is not', () => {
  expect(refusalOf(readWater('1 000 000 000 000', 'L', true))).toEqual({ why: 'beyondAnyTank' })
  expect(readWater('48 000 000', 'L', true)).toMatchObject({ ok: true })
  expect(readWater('200', 'usGal')).toEqual({ ok: true, value: usGal(200) })
})

test('more portions than a file may hold are refused, however they are said', () => {
  const book = given(lab, onHand({ portions: 17, each: 1, frozen: '2027-01-05' }))
  const world = book.world()
  const millions = 2_000_000
  expect(refusalOf(countPortions(world, { lot: blueClip, counted: millions }, now))).toEqual({ why: 'tooMany' })
  expect(refusalOf(portionsFound(world, { lot: blueClip, count: millions }, now))).toEqual({ why: 'tooMany' })
  const asked = {
    lot: blueClip,
    food: greenFood,
    mark: 'heap',
    portions: millions,
    each: mL(1),
    frozenOn: day('2027-01-05'),
    kept: { as: 'loose' as const },
    place: kitchenFreezer,
    about: false,
  }
  expect(refusalOf(recordPortionsOnHand(world, asked, { now, zone: london }))).toEqual({ why: 'tooMany' })
})
