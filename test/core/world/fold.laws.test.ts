/** What holds for every ledger, however it came about. No published value: these are the laws the rest is built on. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Entry, type EntryStruckOut, type Fact, fold, type Moment, nextStamp } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { kitchenPhone } from '../../support/given.ts'
import { anyLedger } from '../../support/givenAnything.ts'
import { readable, textOf } from '../../support/givenReadable.ts'

test('any part of any ledger, in any order, folds to a world, and twice to the same one', () => {
  const cases = tally('oddities', 'entries of things unknown', 'crossed out')
  const part = anyLedger.chain((ledger) => fc.shuffledSubarray([...ledger]))
  const law = fc.property(part, (entries) => {
    const before = JSON.stringify(entries)
    const world = fold(entries)
    expect(JSON.stringify(entries)).toBe(before)
    expect(textOf(entries)).toBe(textOf(entries))
    expect(world.history.all).toHaveLength(entries.length)
    cases.note('oddities', world.oddities.length > 0)
    cases.note(
      'entries of things unknown',
      world.oddities.some(({ what }) => what === 'unknownStock'),
    )
    cases.note('crossed out', world.history.struck.size > 0)
  })
  holds(law)
  cases.expectAtLeast(30)
}, 60_000)

test('the order in which entries arrive never changes the world', () => {
  const cases = tally('really shuffled')
  const two = anyLedger.chain((ledger) =>
    fc.tuple(fc.constant(ledger), fc.shuffledSubarray([...ledger], { minLength: ledger.length })),
  )
  const law = fc.property(two, ([ledger, shuffled]) => {
    expect(textOf(shuffled)).toBe(textOf(ledger))
    cases.note(
      'really shuffled',
      shuffled.some(({ id }, index) => id !== ledger[index]?.id),
    )
  })
  holds(law)
  cases.expectAtLeast(100)
}, 60_000)

test('an entry crossed out is an entry never written', () => {
  const cases = tally('a dose', 'a count', 'a bottle', 'a plan')
  const one = anyLedger.chain((ledger) =>
    fc.tuple(
      fc.constant(ledger),
      fc.constantFrom(...ledger.filter(({ fact }) => fact.kind !== 'entryStruckOut'), null),
    ),
  )
  const law = fc.property(one, ([ledger, target]) => {
    if (!target) return
    const late = Date.UTC(2027, 0, 1) as Moment
    const strike: Entry<EntryStruckOut> = {
      id: nextStamp(undefined, late, kitchenPhone),
      fact: { kind: 'entryStruckOut', at: late, target: target.id },
    }
    const without = ledger.filter(({ id }) => id !== target.id)
    const plain = (entries: readonly Entry<Fact>[]) => ({ ...Object(readable(fold(entries))), struck: null })
    expect(plain([...ledger, strike])).toEqual(plain(without))
    cases.note('a dose', target.fact.kind === 'doseGiven')
    cases.note('a count', target.fact.kind === 'portionsCounted' || target.fact.kind === 'liquidMeasured')
    cases.note('a bottle', target.fact.kind === 'bottleRecorded')
    cases.note('a plan', target.fact.kind === 'planMade')
  })
  holds(law, 1_500)
  cases.expectAtLeast(10)
}, 60_000)
