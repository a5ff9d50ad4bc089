import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decodeEntry } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { stamp } from '../../fixtures/notes.ts'

const id = stamp('001767225600000-000-kitchen')
const at = 1_767_225_600_000

test.each([
  ['nothing', undefined],
  ['null', null],
  ['a number', 7],
  ['a text', 'bottleFinished'],
  ['a list', [id, { kind: 'moonWatched', at }]],
  ['an entry without an id', { fact: { kind: 'moonWatched', at } }],
  ['an id that is no stamp', { id: '17', fact: { kind: 'moonWatched', at } }],
  ['an entry without a fact', { id }],
  ['a fact of text', { id, fact: 'moonWatched' }],
  ['a fact without a kind', { id, fact: { at } }],
  ['a kind without a name', { id, fact: { kind: '', at } }],
  ['a kind with a space', { id, fact: { kind: 'moon watched', at } }],
  ['a fact without a moment', { id, fact: { kind: 'moonWatched' } }],
  ['a fact at no moment', { id, fact: { kind: 'moonWatched', at: Number.NaN } }],
])('%s is malformed, not merely unknown', (_what, raw) => {
  expect(decodeEntry(raw)).toBeUndefined()
})

describe('a hostile entry', () => {
  const nested = (depth: number): unknown => JSON.parse(`${'['.repeat(depth)}${']'.repeat(depth)}`)

  test('nested deeper than any writer could write again is not read', () => {
    expect(decodeEntry({ id, fact: { kind: 'moonWatched', at, deep: nested(20) } })).toBeDefined()
    expect(decodeEntry({ id, fact: { kind: 'moonWatched', at, deep: nested(40) } })).toBeUndefined()
    expect(
      decodeEntry({ id, fact: { kind: 'bottleFinished', at, bottle: 'bottle1', deep: nested(100_000) } }),
    ).toBeUndefined()
  })

  test('with a number that its text cannot give back is not read', () => {
    const raw: unknown = JSON.parse(`{"id":"${id}","fact":{"kind":"moonWatched","at":${at},"lit":1e400}}`)
    expect(decodeEntry(raw)).toBeUndefined()
  })

  test('that says itself how it is held is not read', () => {
    const fact = { kind: 'bottleFinished', at, bottle: 'bottle1' }
    expect(decodeEntry({ id, fact })).toEqual({ id, fact })
    expect(decodeEntry({ id, fact, unread: 'something else' })).toBeUndefined()
  })

  test('with fields named like the prototype changes no prototype', () => {
    const text = `{"__proto__":{"polluted":1},"id":"${id}","fact":{"kind":"bottleFinished","at":${at},"bottle":"bottle1","__proto__":{"polluted":2},"constructor":{"prototype":{"polluted":3}}}}`
    const entry = decodeEntry(JSON.parse(text))
    expect(JSON.stringify(entry)).toBe(text)
    expect(Reflect.get({}, 'polluted')).toBeUndefined()
    expect(entry && Object.getPrototypeOf(entry)).toBe(Object.prototype)
  })

  test('whatever it is, is answered and never thrown at', () => {
    const met = tally('malformed')
    holds(
      fc.property(fc.anything(), fc.anything(), (one, other) => {
        for (const raw of [one, { id, fact: one }, { id, fact: { kind: 'doseGiven', at, served: one, taken: other } }])
          met.note('malformed', decodeEntry(raw) === undefined)
      }),
      200,
    )
    met.expectAtLeast(200)
  })
})
