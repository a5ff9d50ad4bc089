import fc from 'fast-check'
import { expect, test } from 'vitest'
import { history, type Moment } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { anyLedger, type Note, noonOn, stamp } from '../../fixtures/notes.ts'

const sunday = noonOn('2026-03-01')
const monday = noonOn('2026-03-02')
const noted = (id: string, at: Moment, note = 'saw copepods'): Note => ({
  id: stamp(id),
  fact: { kind: 'noted', at, note },
})
const struck = (id: string, target: Note, at: Moment): Note => ({
  id: stamp(id),
  fact: { kind: 'entryStruckOut', at, target: target.id },
})

test('entries stand in the order they happened, and those of one moment in the order they were written', () => {
  const writtenLate = noted('001772366400009-000-kitchen', sunday)
  const first = noted('001772366400001-000-kitchen', monday)
  const second = noted('001772366400002-000-pocket', monday)
  expect(history([second, writtenLate, first]).all).toEqual([writtenLate, first, second])
})

test('a strike-out wins, whichever of the two arrives first', () => {
  const wrong = noted('001772366400001-000-kitchen', monday)
  const strike = struck('001772366400002-000-pocket', wrong, monday)
  expect([...history([wrong, strike]).struck.keys()]).toEqual([wrong.id])
  expect([...history([strike, wrong]).struck.keys()]).toEqual([wrong.id])
})

test('a strike-out dated before the entry it crosses out still wins', () => {
  const wrong = noted('001772366400001-000-kitchen', monday)
  expect(history([wrong, struck('001772366400002-000-kitchen', wrong, sunday)]).struck.has(wrong.id)).toBe(true)
})

test('a strike-out whose entry has not arrived waits for it', () => {
  const absent = noted('001772366400001-000-kitchen', monday)
  const strike = struck('001772366400002-000-pocket', absent, monday)
  expect(history([strike]).struck.get(absent.id)).toEqual(strike)
})

test('a strike-out cannot be struck out', () => {
  const wrong = noted('001772366400001-000-kitchen', monday)
  const strike = struck('001772366400002-000-kitchen', wrong, monday)
  const regret = struck('001772366400003-000-kitchen', strike, monday)
  const { struck: crossedOut } = history([wrong, strike, regret])
  expect([...crossedOut.keys()]).toEqual([wrong.id])
})

test('of two strike-outs of one entry the earlier is named', () => {
  const wrong = noted('001772366400001-000-kitchen', sunday)
  const late = struck('001772366400002-000-kitchen', wrong, monday)
  const early = struck('001772366400003-000-pocket', wrong, sunday)
  expect(history([late, wrong, early]).struck.get(wrong.id)).toEqual(early)
})

test('the order of arrival changes nothing', () => {
  const met = tally('another order', 'same moment', 'struck', 'strike of a strike', 'strike without its entry')
  const arrivals = anyLedger.chain((ledger) =>
    fc.tuple(fc.constant(ledger), fc.shuffledSubarray([...ledger], { minLength: ledger.length })),
  )
  holds(
    fc.property(arrivals, ([ledger, arrived]) => {
      const there = history(arrived)
      const here = history(ledger)
      expect(there.all).toEqual(here.all)
      expect([...there.struck]).toEqual([...here.struck])
      const ids = new Map(ledger.map((entry) => [entry.id, entry]))
      met.note(
        'another order',
        arrived.some((entry, i) => entry.id !== ledger[i]?.id),
      )
      met.note('same moment', new Set(ledger.map(({ fact }) => fact.at)).size < ledger.length)
      met.note('struck', here.struck.size > 0)
      for (const { fact } of ledger)
        if (fact.kind === 'entryStruckOut') {
          met.note('strike of a strike', ids.get(fact.target)?.fact.kind === 'entryStruckOut')
          met.note('strike without its entry', !ids.has(fact.target))
        }
    }),
  )
  met.expectAtLeast(30)
})

test('nothing is dropped, and only what was never a strike-out is crossed out', () => {
  const met = tally('struck', 'strike of a strike')
  holds(
    fc.property(anyLedger, (ledger) => {
      const { all, struck: crossedOut } = history(ledger)
      expect(new Set(all)).toEqual(new Set(ledger))
      for (const entry of ledger) {
        const targeted = ledger.some(({ fact }) => fact.kind === 'entryStruckOut' && fact.target === entry.id)
        const isStrike = entry.fact.kind === 'entryStruckOut'
        met.note('struck', targeted && !isStrike)
        met.note('strike of a strike', targeted && isStrike)
        expect(crossedOut.has(entry.id)).toBe(targeted && !isStrike)
      }
    }),
  )
  met.expectAtLeast(30)
})
