import { expect, test } from 'vitest'
import { exportLedger, factKinds, isUnread, readLedgerFile } from '../../../core/index.ts'
import ledger1 from '../../fixtures/ledger-1.txt?raw'
import ledger2 from '../../fixtures/ledger-2.jsonl?raw'
import ledger3 from '../../fixtures/ledger-3.jsonl?raw'
import ledger4 from '../../fixtures/ledger-4.jsonl?raw'
import ledger5 from '../../fixtures/ledger-5.jsonl?raw'

/** Files as they were written by each version that shipped. They are never edited: what was written once is read for ever. */
const written = [
  { codec: 1, text: ledger1 },
  { codec: 2, text: ledger2 },
  { codec: 3, text: ledger3 },
  { codec: 4, text: ledger4 },
  { codec: 5, text: ledger5 },
]

const read = (text: string) => {
  const result = readLedgerFile(text)
  if (!result.ok) throw new Error(JSON.stringify(result.refusal))
  return result.value
}

test.each(written)('a file of version $codec is read, and written again to the letter', ({ text }) => {
  const { header, entries } = read(text)
  expect(exportLedger(entries, header)).toBe(text)
})

test('every kind of entry occurs in some file, and so does one that nobody knows', () => {
  const held = written.flatMap(({ text }) => read(text).entries)
  const kinds = new Set(held.flatMap((entry) => (isUnread(entry) ? [] : [entry.fact.kind])))
  expect(factKinds.filter((kind) => !kinds.has(kind))).toEqual([])
  expect(held.some(isUnread)).toBe(true)
})
