import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decodeEntry, encodeEntry, type FactKind, factKinds, isUnread } from '../../../core/index.ts'
import { anyOf } from '../../fixtures/facts.ts'
import { holds } from '../../fixtures/laws.ts'
import { anyEntry } from '../../fixtures/ledgers.ts'
import { stamp } from '../../fixtures/notes.ts'

const id = stamp('001767225600000-000-kitchen')
const asText = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

test('there are examples of every kind', () => {
  expect(Object.keys(anyOf).sort()).toEqual([...factKinds].sort())
})

describe.each(factKinds)('an entry of the kind %s', (kind: FactKind) => {
  test('comes back from its text as it was', () => {
    holds(
      fc.property(anyOf[kind], (fact) => {
        expect(decodeEntry(asText({ id, fact }))).toStrictEqual({ id, fact })
      }),
      100,
    )
  })
})

test('fields that only a newer version knows are kept where they stood', () => {
  const fact = { kind: 'bottlesShaken', hard: { times: 7 }, at: 1_767_225_600_123, bottles: ['bottle1'] }
  const raw = { signed: ['by hand'], id, fact }
  const entry = decodeEntry(raw)
  expect(entry).toStrictEqual(raw)
  expect(entry && JSON.stringify(encodeEntry(entry))).toBe(JSON.stringify(raw))
})

test('fields that only a newer version knows are kept inside lists and amounts too', () => {
  const taken = [{ from: 'portions', lot: 'lot1', count: 3, thawed: false }]
  const served = [{ tank: 'tank1', plan: 'plan1', night: '2026-02-03', amount: 1500, depth: { cm: 20 } }]
  const raw = { id, fact: { kind: 'doseGiven', at: 1_770_163_200_000, food: 'food1', served, taken } }
  expect(decodeEntry(raw)).toStrictEqual(raw)
})

test('a kind this version does not know is kept unread, word for word', () => {
  const raw = { id, fact: { kind: 'moonWatched', at: 1_767_225_600_000, phase: { lit: 0.37 } }, signed: 'R.' }
  const entry = decodeEntry(raw)
  expect(entry).toEqual({ id, unread: raw })
  expect(entry && isUnread(entry)).toBe(true)
  expect(entry && JSON.stringify(encodeEntry(entry))).toBe(JSON.stringify(raw))
})

test.each(['constructor', 'toString', 'hasOwnProperty'])('a kind called %s is one nobody knows', (kind) => {
  const raw = { id, fact: { kind, at: 1_767_225_600_000 } }
  expect(decodeEntry(raw)).toEqual({ id, unread: raw })
})

test('reading what was read gives the same again', () => {
  holds(
    fc.property(anyEntry, (entry) => {
      const once = decodeEntry(asText(entry))
      expect(once && decodeEntry(asText(encodeEntry(once)))).toStrictEqual(once)
    }),
  )
})
