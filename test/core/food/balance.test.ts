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
type Change = { readonly fed: number; readonly gone: number; readonly found: number; readonly moved: number }
/** What one entry does to a lot. Counted nights are told by the count itself: what the book lacked was fed. */
const changeOf = ({ id, fact }: Entry<Fact>, lot: LotId, { lots }: World): Change => {
  const none = { fed: 0, gone: 0, found: 0, moved: 0 }
  if (fact.kind === 'lotsJoined') {
    const [from, into] = [lots.get(fact.from), lots.get(fact.into)]
    // Of two sizes they stay two lots, and a bag does not go into itself.
    if (!from || !into || from === into || from.made.each !== into.made.each) return none
    if (fact.from === lot) return { ...none, moved: fact.count }
    return fact.into === lot ? { ...none, found: fact.count } : none
  }
  if (fact.kind === 'doseGiven' || fact.kind === 'doseGivenOffPlan') return { ...none, fed: countOf(fact.taken, lot) }
  if (fact.kind === 'portionsGone' && fact.lot === lot) return { ...none, gone: fact.count }
  if (fact.kind === 'portionsGivenAway' && fact.lot === lot) return { ...none, gone: fact.count }
  if (fact.kind === 'portionsFound' && fact.lot === lot) return { ...none, found: fact.count }
  // Nothing leaves where nothing arrives.
  if (fact.kind === 'portionsMoved' && fact.from === lot && lots.get(fact.lot)?.entry === id)
    return { ...none, moved: fact.count }
  return none
}
const countsOf = (fact: Fact, lot: LotId) =>
  fact.kind === 'portionsCounted'
    ? [{ lot: fact.lot, counted: fact.counted, book: fact.book, fed: 0 }].filter((each) => each.lot === lot)
    : fact.kind === 'nightsCounted'
      ? fact.lots
          .filter((each) => each.lot === lot)
          .map((each) => ({ ...each, fed: Math.max(0, each.book - each.counted) }))
      : []

test('portions made, found and put right, less those fed, gone and moved away, are those left', () => {
  const cases = tally(
    'fed',
    'gone',
    'found',
    'moved away',
    'a part of another',
    'a part of a part',
    'counted',
    'counted with its nights',
    'changed before they were first seen',
    'below zero',
  )
  const law = fc.property(anyLedger, (ledger) => {
    const world = fold(ledger)
    for (const lot of world.lots.values()) {
      const looked = lot.made.kind === 'portionsOnHand' && lot.partOf === undefined
      const seenFirst = looked ? lot.made.at : Number.NEGATIVE_INFINITY
      const entries = standing(world)
      const changes = entries.map((entry) => ({ at: entry.fact.at, ...changeOf(entry, lot.id, world) }))
      const counting = changes.filter(({ at }) => at >= seenFirst)
      const total = (of: readonly Change[], what: keyof Change) => sum(of.map((change) => change[what]))
      const out = (of: readonly Change[]) => total(of, 'fed') + total(of, 'gone') + total(of, 'moved')
      const made = lot.made.portions + total(counting, 'found') + gaps(lot.observations)
      expect(made - out(counting)).toBe(lot.left)
      const byCount = sum(entries.flatMap(({ fact }) => countsOf(fact, lot.id)).map(({ fed }) => fed))
      expect([lot.fed, lot.gone]).toEqual([total(changes, 'fed') + byCount, total(changes, 'gone')])

      const last = entries.findLastIndex(({ fact }) => countsOf(fact, lot.id).length > 0)
      const counted = entries[last] && countsOf(entries[last].fact, lot.id).at(-1)
      if (counted) {
        const since = changes.slice(last + 1).filter(({ at }) => at >= seenFirst)
        expect(counted.counted + total(since, 'found') - out(since)).toBe(lot.left)
      }
      cases.note('fed', lot.fed > 0)
      cases.note('gone', lot.gone > 0)
      cases.note('found', total(counting, 'found') > 0)
      cases.note('moved away', total(counting, 'moved') > 0)
      cases.note('a part of another', lot.partOf !== undefined)
      cases.note(
        'a part of a part',
        world.lots.get(lot.partOf ?? lot.id)?.partOf !== undefined && lot.partOf !== undefined,
      )
      cases.note('counted', lot.observations.length > 0)
      cases.note('counted with its nights', byCount > 0)
      cases.note(
        'changed before they were first seen',
        counting.some(({ at }) => at < lot.made.at) || counting.length < changes.length,
      )
      cases.note('below zero', lot.left < 0)
    }
  })
  holds(law, 900)
  cases.expectAtLeast(10)
}, 60_000)

test('a bottle holds what it held, put right by measuring, less what was frozen, fed and spilt', () => {
  const cases = tally('frozen', 'fed', 'gone', 'measured', 'below zero')
  const law = fc.property(anyLedger, (ledger) => {
    const world = fold(ledger)
    for (const bottle of world.bottles.values()) {
      const poured = standing(world).map(({ fact }) => {
        const frozen = fact.kind === 'portionsFrozen' && fact.bottle === bottle.id ? fact.taken : 0
        const gone = fact.kind === 'liquidGone' && fact.bottle === bottle.id ? fact.amount : 0
        const parts = fact.kind === 'doseGiven' || fact.kind === 'doseGivenOffPlan' ? fact.taken : []
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
