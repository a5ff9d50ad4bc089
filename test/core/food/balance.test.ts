/**
 * Counts add up: what was made, with what was found and what counting by hand put right, less what was fed and what is
 * gone, is what is left. Reckoned here a second time from the entries alone.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Entry,
  type Fact,
  fold,
  type LotId,
  type Observation,
  type Taken,
  type World,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { anyLedger } from '../../support/givenAnything.ts'

const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0)
/** Put right by counting: what was counted less what the book had. */
const gaps = (observations: readonly Observation[]) => sum(observations.map(({ found, bookNow }) => found - bookNow))
const standing = ({ history }: World): readonly Entry<Fact>[] => history.all.filter(({ id }) => !history.struck.has(id))

const countOf = (taken: readonly Taken[], lot: LotId) =>
  sum(taken.map((part) => (part.from === 'portions' && part.lot === lot ? part.count : 0)))
type Change = { readonly fed: number; readonly gone: number; readonly found: number }
/** What one entry does to a lot. */
const changeOf = (fact: Fact, lot: LotId): Change => {
  const none = { fed: 0, gone: 0, found: 0 }
  if (fact.kind === 'doseGiven') return { ...none, fed: countOf(fact.taken, lot) }
  if (fact.kind === 'portionsGone' && fact.lot === lot) return { ...none, gone: fact.count }
  if (fact.kind === 'portionsFound' && fact.lot === lot) return { ...none, found: fact.count }
  return none
}

test('portions made, found and put right, less those fed and gone, are those left', () => {
  const cases = tally('fed', 'gone', 'found', 'counted', 'changed before they were first seen', 'below zero')
  const law = fc.property(anyLedger, (ledger) => {
    const world = fold(ledger)
    for (const lot of world.lots.values()) {
      const seenFirst = lot.made.kind === 'portionsOnHand' ? lot.made.at : Number.NEGATIVE_INFINITY
      const entries = standing(world)
      const changes = entries.map(({ fact }) => ({ at: fact.at, ...changeOf(fact, lot.id) }))
      const counting = changes.filter(({ at }) => at >= seenFirst)
      const total = (of: readonly Change[], what: keyof Change) => sum(of.map((change) => change[what]))
      const made = lot.made.portions + total(counting, 'found') + gaps(lot.observations)
      expect(made - total(counting, 'fed') - total(counting, 'gone')).toBe(lot.left)
      expect([lot.fed, lot.gone]).toEqual([total(changes, 'fed'), total(changes, 'gone')])

      const last = entries.findLastIndex(({ fact }) => fact.kind === 'portionsCounted' && fact.lot === lot.id)
      const counted = entries[last]?.fact
      if (counted?.kind === 'portionsCounted') {
        const since = changes.slice(last + 1).filter(({ at }) => at >= seenFirst)
        expect(counted.counted + total(since, 'found') - total(since, 'fed') - total(since, 'gone')).toBe(lot.left)
      }
      cases.note('fed', lot.fed > 0)
      cases.note('gone', lot.gone > 0)
      cases.note('found', total(counting, 'found') > 0)
      cases.note('counted', lot.observations.length > 0)
      cases.note(
        'changed before they were first seen',
        counting.some(({ at }) => at < lot.made.at) || counting.length < changes.length,
      )
      cases.note('below zero', lot.left < 0)
    }
  })
  holds(law, 500)
  cases.expectAtLeast(30)
}, 60_000)

test('a bottle holds what it held, put right by measuring, less what was frozen, fed and spilt', () => {
  const cases = tally('frozen', 'fed', 'gone', 'measured', 'below zero')
  const law = fc.property(anyLedger, (ledger) => {
    const world = fold(ledger)
    for (const bottle of world.bottles.values()) {
      const poured = standing(world).map(({ fact }) => {
        const frozen = fact.kind === 'portionsFrozen' && fact.bottle === bottle.id ? fact.taken : 0
        const gone = fact.kind === 'liquidGone' && fact.bottle === bottle.id ? fact.amount : 0
        const parts = fact.kind === 'doseGiven' ? fact.taken : []
        const fed = sum(parts.map((part) => (part.from === 'bottle' && part.bottle === bottle.id ? part.amount : 0)))
        return { at: fact.at, frozen, gone, fed }
      })
      const out = sum(
        poured.filter(({ at }) => at >= bottle.recorded.at).map((each) => each.frozen + each.gone + each.fed),
      )
      expect(bottle.recorded.contents + gaps(bottle.observations) - out).toBe(bottle.left)
      expect(bottle.frozen).toBe(sum(poured.map(({ frozen }) => frozen)))
      expect(bottle.fed).toBe(sum(poured.map(({ fed }) => fed)))
      expect(bottle.gone).toBe(sum(poured.map(({ gone }) => gone)))
      cases.note('frozen', bottle.frozen > 0)
      cases.note('fed', bottle.fed > 0)
      cases.note('gone', bottle.gone > 0)
      cases.note('measured', bottle.observations.length > 0)
      cases.note('below zero', bottle.left < 0)
    }
  })
  holds(law, 500)
  cases.expectAtLeast(30)
}, 60_000)
