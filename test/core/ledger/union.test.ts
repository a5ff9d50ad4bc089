import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { canonical, union } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { anyLedger, type Note, noonOn, stamp } from '../../fixtures/notes.ts'

const asSet = (entries: readonly Note[]) => [...entries].sort((a, b) => (a.id < b.id ? -1 : 1))
const note = (id: string, text: string): Note => ({
  id: stamp(id),
  fact: { kind: 'noted', at: noonOn('2026-03-01'), note: text },
})

/** Three phones that have each seen a part of what was ever written, each in its own order. */
const phones = anyLedger.chain((ledger) => {
  const seen = fc.shuffledSubarray([...ledger])
  return fc.tuple(seen, seen, seen)
})
const shared = (a: readonly Note[], b: readonly Note[]) => a.some(({ id }) => b.some((other) => other.id === id))
const missing = (a: readonly Note[], b: readonly Note[]) => b.some(({ id }) => !a.some((other) => other.id === id))

describe('merging two phones', () => {
  test('gives the same ledger from either side', () => {
    const met = tally('in both', 'only here', 'only there', 'nothing here')
    holds(
      fc.property(phones, ([a, b]) => {
        met.note('in both', shared(a, b))
        met.note('only here', missing(b, a))
        met.note('only there', missing(a, b))
        met.note('nothing here', a.length === 0)
        expect(asSet(union(a, b).entries)).toEqual(asSet(union(b, a).entries))
      }),
    )
    met.expectAtLeast(10)
  })

  test('gives the same ledger in whichever pairs three phones meet', () => {
    const met = tally('in all three', 'only in the third')
    holds(
      fc.property(phones, ([a, b, c]) => {
        met.note(
          'in all three',
          a.some(({ id }) =>
            shared(
              b.filter((other) => other.id === id),
              c,
            ),
          ),
        )
        met.note('only in the third', missing([...a, ...b], c))
        const left = union(union(a, b).entries, c).entries
        const right = union(a, union(b, c).entries).entries
        expect(asSet(left)).toEqual(asSet(right))
      }),
    )
    met.expectAtLeast(30)
  })

  test('twice changes nothing the second time', () => {
    const met = tally('something new the first time')
    holds(
      fc.property(phones, ([a, b]) => {
        const once = union(a, b)
        const twice = union(once.entries, b)
        met.note('something new the first time', once.added.length > 0)
        expect(twice.entries).toEqual(once.entries)
        expect({ added: twice.added, already: twice.already, clashes: twice.clashes }).toEqual({
          added: [],
          already: b.length,
          clashes: [],
        })
      }),
    )
    met.expectAtLeast(100)
  })

  test('counts every entry of the other phone exactly once', () => {
    const met = tally('a clash', 'new', 'already here')
    const another = fc.tuple(phones, fc.nat(2)).map(([[a, b], nth]) => {
      const altered = b.map((entry, i) =>
        i === nth ? { ...entry, fact: { ...entry.fact, why: 'another body' } } : entry,
      )
      return [a, altered] as const
    })
    holds(
      fc.property(another, ([a, b]) => {
        const { entries, added, already, clashes } = union(a, b)
        met.note('a clash', clashes.length > 0)
        met.note('new', added.length > 0)
        met.note('already here', already > 0)
        expect(added.length + already + clashes.length).toBe(b.length)
        expect(entries.length).toBe(a.length + added.length)
        expect(entries.slice(0, a.length)).toEqual(a)
        for (const { ours, theirs } of clashes) {
          expect(a).toContain(ours)
          expect(b).toContain(theirs)
          expect(ours.id).toBe(theirs.id)
        }
      }),
    )
    met.expectAtLeast(30)
  })
})

test('of two bodies under one id ours is kept, and both are shown', () => {
  const ours = note('001772366400001-000-kitchen', 'a cloud of copepods')
  const theirs = note('001772366400001-000-kitchen', 'three copepods')
  expect(union([ours], [theirs])).toEqual({ entries: [ours], added: [], already: 0, clashes: [{ ours, theirs }] })
})

test('an entry that arrives twice at once is added once', () => {
  const theirs = note('001772366400001-000-pocket', 'a cloud of copepods')
  expect(union([], [theirs, { ...theirs }])).toEqual({ entries: [theirs], added: [theirs], already: 1, clashes: [] })
})

test('an entry whose fields stand in another order is the same entry', () => {
  const ours = note('001772366400001-000-kitchen', 'a cloud of copepods')
  const theirs: Note = { fact: { note: 'a cloud of copepods', at: noonOn('2026-03-01'), kind: 'noted' }, id: ours.id }
  expect(union([ours], [theirs]).already).toBe(1)
  expect(canonical([{ b: 1, a: [{ d: 2, c: 3 }] }])).toBe('[{"a":[{"c":3,"d":2}],"b":1}]')
})

test('the order of a list is part of a body', () => {
  expect(canonical(['tray 1', 'tray 2'])).not.toBe(canonical(['tray 2', 'tray 1']))
})

test('a field named like the prototype is part of a body, and touches no prototype', () => {
  const hostile: unknown = JSON.parse('{"__proto__":{"polluted":true}}')
  expect(canonical(hostile)).toBe('{"__proto__":{"polluted":true}}')
  expect(Reflect.get({}, 'polluted')).toBeUndefined()
})
