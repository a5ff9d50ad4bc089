import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decodeEntry, type Fact, type FactKind, factKinds } from '../../../core/index.ts'
import { anyOf } from '../../fixtures/facts.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { stamp } from '../../fixtures/notes.ts'

const id = stamp('001767225600000-000-kitchen')
const at = 1_767_225_600_000

type Path = readonly (string | number)[]
/** Every value inside a value, with the way to it. */
const parts = (value: unknown, path: Path = []): { readonly path: Path; readonly part: unknown }[] => [
  ...(path.length > 0 ? [{ path, part: value }] : []),
  ...(value !== null && typeof value === 'object'
    ? Object.entries(value).flatMap(([key, part]) => parts(part, [...path, Array.isArray(value) ? Number(key) : key]))
    : []),
]
const replaced = (value: unknown, [key, ...rest]: Path, by: unknown): unknown => {
  if (key === undefined) return by
  if (Array.isArray(value)) return value.map((part, i) => (i === key ? replaced(part, rest, by) : part))
  return value !== null && typeof value === 'object'
    ? Object.fromEntries(Object.entries(value).map(([k, part]) => [k, k === key ? replaced(part, rest, by) : part]))
    : value
}
/** What a person writes freely. */
const free = new Set(['name', 'why', 'mark', 'question'])

describe.each(factKinds)('a broken entry of the kind %s', (kind: FactKind) => {
  test('is not read, whichever of its values is broken', () => {
    const met = tally('a number', 'a text', 'any value')
    holds(
      fc.property(anyOf[kind], (fact) => {
        for (const { path, part } of parts(fact)) {
          const broken: unknown[] = [null, { much: 1 }, [[]]]
          if (typeof part === 'number') broken.push(-1e300, 1e300, Number.NaN, Number.POSITIVE_INFINITY, String(part))
          if (typeof part === 'string')
            broken.push('a'.repeat(10_001), 7, ...(free.has(String(path.at(-1))) ? [] : ['☃', '']))
          if (typeof part === 'boolean') broken.push(0, 'true')
          if (Array.isArray(part) && part.length > 0) broken.push(Array.from({ length: 10_001 }, () => part[0]))
          met.note('a number', typeof part === 'number')
          met.note('a text', typeof part === 'string')
          met.note('any value')
          for (const by of broken) {
            const where = `${path.join('.')}: ${JSON.stringify(by)?.slice(0, 40)}`
            expect(decodeEntry({ id, fact: replaced(fact, path, by) }), where).toBeUndefined()
          }
        }
      }),
      20,
    )
    met.expectAtLeast(20)
  })

  test('is not read with a field missing that every such entry has', () => {
    const some: fc.Arbitrary<Fact> = anyOf[kind]
    const always = fc.sample(some, { seed: 7, numRuns: 200 }).map((fact) => new Set(Object.keys(fact)))
    const keys = [...(always[0] ?? [])].filter((key) => always.every((each) => each.has(key)))
    const [fact] = fc.sample(some, { seed: 7, numRuns: 1 })
    expect(keys.length).toBeGreaterThan(2)
    for (const missing of keys) {
      const rest = Object.fromEntries(Object.entries(fact ?? {}).filter(([key]) => key !== missing))
      expect(decodeEntry({ id, fact: rest }), missing).toBeUndefined()
    }
  })
})

const tank = {
  kind: 'tankDescribed',
  at,
  tank: 'tank1',
  name: 'Reef',
  water: { stated: { value: 40, unit: 'usGal' }, about: true, doseBy: 'stated' },
  zone: 'Europe/London',
  lightsOut: '22:00',
  pipetteMark: 100,
}
const food = {
  kind: 'foodDescribed',
  at,
  food: 'food1',
  name: 'Green',
  sort: 'live',
  band: { low: 250, high: 500, per: { value: 50, unit: 'usGal' } },
  everyNights: 2,
  fridgeLife: { count: 5, unit: 'months' },
  countsFrom: 'arrival',
  residueShare: 0.03,
}

test.each([
  ['no water at all', tank, ['water', 'stated', 'value'], 0],
  ['water in buckets', tank, ['water', 'stated', 'unit'], 'bucket'],
  ['a zone nobody knows', tank, ['zone'], 'Moon/Tycho'],
  ['a bare offset for a zone', tank, ['zone'], '+01:00'],
  ['a time after midnight of no day', tank, ['lightsOut'], '24:00'],
  ['a pipette without steps', tank, ['pipetteMark'], 0],
  ['half a microlitre', tank, ['pipetteMark'], 0.5],
  ['a moment before 1970', tank, ['at'], -1],
  ['a moment in 2200', tank, ['at'], Date.UTC(2200, 0, 1)],
  ['an id of capitals', tank, ['tank'], 'TANK1'],
  ['more left on the walls than a fifth', food, ['residueShare'], 0.21],
  ['a dose every no nights', food, ['everyNights'], 0],
  ['a negative amount', food, ['band', 'low'], -1],
  ['a life of half a month', food, ['fridgeLife', 'count'], 0.5],
] as const)('%s is not read', (_what, fact, path, by) => {
  expect(decodeEntry({ id, fact })).toEqual({ id, fact })
  expect(decodeEntry({ id, fact: replaced(fact, path, by) })).toBeUndefined()
})

test.each(['2026-02-29', '2026-13-01', '1899-12-31', '2026-2-1'])('%s is no day to open a bottle on', (openedOn) => {
  expect(decodeEntry({ id, fact: { kind: 'bottleOpened', at, bottle: 'bottle1', openedOn } })).toBeUndefined()
})

test('a book figure may have fallen below zero, a count may not', () => {
  const counted = { kind: 'portionsCounted', at, lot: 'lot1', counted: 12, book: -3 }
  expect(decodeEntry({ id, fact: counted })).toEqual({ id, fact: counted })
  expect(decodeEntry({ id, fact: { ...counted, counted: -1 } })).toBeUndefined()
})

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
      500,
    )
    met.expectAtLeast(500)
  })
})
