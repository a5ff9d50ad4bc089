/** Which bags a label is wanted for. Checked only against our own worked examples. */
import { expect, test } from 'vitest'
import { bagsToLabel, day, type LotId, portionsGone } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import { blueClip, kitchenFreezer, lab, onHand, redClip } from '../../support/givenLab.ts'

const lotCalled = (name: string) => name as LotId

test('bags in use come newest first; what is past, set aside or thawed says so, and an empty bag wants no label', () => {
  const book = given(
    lab,
    onHand({ portions: 9, each: 1, frozen: '2026-01-05' }),
    onHand({ portions: 9, each: 1, frozen: '2026-03-05', lot: redClip }),
    onHand({ portions: 9, each: 1, frozen: '2024-03-05', lot: lotCalled('old') }),
    onHand({ portions: 9, each: 1, frozen: '2026-02-05', lot: lotCalled('thawed') }),
    onHand({ portions: 9, each: 1, frozen: '2026-02-06', lot: lotCalled('doubted') }),
    onHand({ portions: 9, each: 1, frozen: '2026-02-07', lot: lotCalled('empty') }),
  )
  const now = at('2026-07-03 12:00')
  const today = day('2026-07-03')
  book.does((world) => portionsGone(world, { lot: lotCalled('empty'), count: 9, fate: 'lost' }, now))
  book.note(
    { kind: 'foodSetAside', at: now, thing: { lot: lotCalled('doubted') } },
    {
      kind: 'freezerThawed',
      at: now,
      place: kitchenFreezer,
      on: today,
      lots: [{ lot: lotCalled('thawed'), found: 'cold' }],
    },
  )
  const bags = (on: string) =>
    bagsToLabel(book.world(), now, day(on)).map(({ lot, lastGood, warnings }) => [lot.id, lastGood, warnings])
  expect(bags('2026-07-03')).toEqual([
    [redClip, '2028-03-05', []],
    ['doubted', '2028-02-06', ['aside']],
    ['thawed', '2026-07-04', ['thawed']],
    [blueClip, '2028-01-05', []],
    ['old', '2026-03-05', ['past']],
  ])
  expect(bags('2026-07-05')[2]).toEqual(['thawed', '2026-07-04', ['thawed', 'past']])
})
