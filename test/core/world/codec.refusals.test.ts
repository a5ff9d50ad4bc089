import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decodeEntry, type Fact, type FactKind, factKinds } from '../../../core/index.ts'
import { anyOf } from '../../fixtures/facts.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { stamp } from '../../fixtures/notes.ts'
import { parts, replaced } from '../../fixtures/paths.ts'

const id = stamp('001767225600000-000-kitchen')

/** What a person writes freely, whatever the kind; and where only one kind lets her. */
const free = new Set(['name', 'why', 'mark', 'question'])
const freeIn: ReadonlySet<string> = new Set([
  'portionsGivenAway to',
  'noteWritten text',
  'clashNoted theirs',
  'foodSmelled words',
  'tankTreated what',
  'podHuntersNoted what',
  'liveBottlesCame words',
  'seedingPlanned anyway',
  'letterWritten text',
  'smallLifeCounted words',
  'smallLifeCounted where',
  'photoKept words',
  'kindSeen words',
  'kindSeen where',
  'purchaseRecorded what',
])
/** A line of a file, kept whole, is longer than anything she writes. */
const longest = (kind: FactKind) => (kind === 'clashNoted' ? 1_000_000 : 10_000)

const isFree = (kind: FactKind, field: string) => free.has(field) || freeIn.has(`${kind} ${field}`)

describe.each(factKinds)('a broken entry of the kind %s', (kind: FactKind) => {
  test('is not read, whichever of its values is broken', () => {
    const met = tally('a number', 'a text', 'any value')
    holds(
      fc.property(anyOf[kind], (fact) => {
        for (const { path, part } of parts(fact)) {
          const broken: unknown[] = [null, { much: 1 }, [[]]]
          if (typeof part === 'number') broken.push(-1e300, 1e300, Number.NaN, Number.POSITIVE_INFINITY, String(part))
          if (typeof part === 'string')
            broken.push('a'.repeat(longest(kind) + 1), 7, ...(isFree(kind, String(path.at(-1))) ? [] : ['☃', '']))
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
