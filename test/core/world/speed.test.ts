/** The world is folded anew on every append, so folding may not take long: it is held against reading the ledger's text. */
import { expect, test } from 'vitest'
import { day, fold } from '../../../core/index.ts'
import { foldBesideParse } from '../../bench/foldBeside.ts'
import { household } from '../../bench/household.ts'

const tonight = day('2026-11-25')
const entries = household(100_000, tonight)

// A busy machine takes long over both sides of the ratio.
test('a hundred thousand entries fold in no more than twice the time their text takes to read', {
  timeout: 60_000,
}, () => {
  expect(entries).toHaveLength(100_000)
  expect(foldBesideParse(JSON.stringify(entries), 7).ratio).toBeLessThan(2)
})

test('the household that is measured is a plausible one: every tank fed last night, nothing left to ask', () => {
  const world = fold(household(20_000, tonight))
  expect([...world.lastNight.values()]).toEqual(Array(3).fill('2026-11-24'))
  expect(world.oddities).toEqual([])
  expect(world.history.struck.size).toBeGreaterThan(50)
  const kinds = new Set(world.history.all.map(({ fact }) => fact.kind))
  expect(kinds.size).toBeGreaterThan(12)
})
