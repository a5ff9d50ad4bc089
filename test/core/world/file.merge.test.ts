import fc from 'fast-check'
import { expect, test } from 'vitest'
import { exportLedger, fold, type Held, readLedgerFile, union } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { anyHeld } from '../../fixtures/ledgers.ts'
import { device, noonOn } from '../../fixtures/notes.ts'

const header = { at: noonOn('2026-03-01'), device: device('kitchen'), version: '1' }
const carried = (entries: readonly Held[]): readonly Held[] => {
  const result = readLedgerFile(exportLedger(entries, header))
  if (!result.ok) throw new Error(JSON.stringify(result.refusal))
  return result.value.entries
}
const known = (entries: readonly Held[]) => fold(entries)

const phones = anyHeld.chain((ledger) => {
  const seen = fc.shuffledSubarray([...ledger])
  return fc.tuple(fc.constant(ledger), seen, seen)
})

test('the order of arrival never matters to what is known', () => {
  const met = tally('another order', 'a strike-out', 'an oddity', 'an unread entry')
  holds(
    fc.property(
      anyHeld.chain((held) => fc.tuple(fc.constant(held), fc.shuffledSubarray([...held], { minLength: held.length }))),
      ([written, arrived]) => {
        const here = known(written)
        met.note(
          'another order',
          arrived.some(({ id }, i) => id !== written[i]?.id),
        )
        met.note('a strike-out', here.history.struck.size > 0)
        met.note('an oddity', here.oddities.length > 0)
        met.note('an unread entry', here.unread.length > 0)
        expect(known(arrived)).toEqual(here)
      },
    ),
  )
  met.expectAtLeast(20)
}, 60_000)

test('two phones that have swapped files know the same', () => {
  const met = tally('both learn something')
  holds(
    fc.property(phones, ([, kitchen, pocket]) => {
      const inKitchen = union(kitchen, carried(pocket))
      const inPocket = union(pocket, carried(kitchen))
      met.note('both learn something', inKitchen.added.length > 0 && inPocket.added.length > 0)
      expect(known(inKitchen.entries)).toEqual(known(inPocket.entries))
    }),
  )
  met.expectAtLeast(50)
}, 60_000)

test('a file imported twice changes nothing the second time', () => {
  const met = tally('something new the first time')
  holds(
    fc.property(phones, ([, kitchen, pocket]) => {
      const once = union(kitchen, carried(pocket))
      const twice = union(once.entries, carried(pocket))
      met.note('something new the first time', once.added.length > 0)
      expect(twice.added).toEqual([])
      expect(known(twice.entries)).toEqual(known(once.entries))
    }),
  )
  met.expectAtLeast(100)
}, 60_000)
