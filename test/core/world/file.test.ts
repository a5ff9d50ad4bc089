import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { exportLedger, type Held, union } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { anyHeld } from '../../fixtures/ledgers.ts'
import { header, newer, read, shaken, text } from '../../fixtures/smallFile.ts'

const asSet = (entries: readonly Held[]) => [...entries].sort((a, b) => (a.id < b.id ? -1 : 1))

describe('a ledger in a file', () => {
  test('is a header line, then one entry a line in the order they were written', () => {
    const { entries } = read(text)
    expect(exportLedger([...entries].reverse(), header)).toBe(text)
  })

  test('is read with who wrote it, when, and how much of it only a newer version knows', () => {
    expect(read(text)).toEqual({ header, entries: [shaken, { id: newer.id, unread: newer }], unread: 1 })
  })

  test('may hold nothing yet', () => {
    expect(read(exportLedger([], header))).toEqual({ header, entries: [], unread: 0 })
  })

  test.each([
    ['carriage returns', text.replaceAll('\n', '\r\n')],
    ['a byte order mark', `\uFEFF${text}`],
    ['no end of the last line', text.trimEnd()],
    ['empty lines at the end', `${text}\n\r\n\n`],
    ['a field more in its header', text.replace('"format":1', '"format":1,"household":"home"')],
  ])('may have travelled and come back with %s', (_what, travelled) => {
    expect(read(travelled)).toEqual(read(text))
  })

  test('may hold one entry twice, which is one entry', () => {
    const twice = `${text.replace('"entries":2', '"entries":3')}${JSON.stringify(shaken)}\n`
    expect(read(twice).entries).toEqual(read(text).entries)
  })

  test('gives back every ledger as it was, and the same text again', () => {
    const met = tally('unread', 'nothing', 'not in order')
    holds(
      fc.property(anyHeld, (entries) => {
        const written = exportLedger(entries, header)
        const back = read(written)
        met.note('unread', back.unread > 0)
        met.note('nothing', entries.length === 0)
        met.note(
          'not in order',
          entries.some(({ id }, i) => id < (entries[i - 1]?.id ?? '')),
        )
        expect(back.entries).toEqual(asSet(entries))
        expect(exportLedger(back.entries, header)).toBe(written)
      }),
    )
    met.expectAtLeast(5)
  })

  test('merged into the ledger it came from, adds nothing and clashes with nothing', () => {
    const met = tally('something to merge')
    holds(
      fc.property(anyHeld, (entries) => {
        const merged = union(entries, read(exportLedger(entries, header)).entries)
        met.note('something to merge', entries.length > 0)
        expect(merged).toEqual({ entries, added: [], already: entries.length, clashes: [] })
      }),
      100,
    )
    met.expectAtLeast(50)
  })
})
