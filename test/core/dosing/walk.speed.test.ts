/** The forecast is asked for while a screen is drawn, so it may not take long: it is held against folding the same ledger. */
import { expect, test } from 'vitest'
import { day, momentAt } from '../../../core/index.ts'
import { fullFreezer, threeFoods } from '../../bench/fullFreezer.ts'
import { walkBesideFold } from '../../bench/walkBeside.ts'
import { london } from '../../support/given.ts'

const tonight = day('2026-11-25')

test('three years of three tanks, three foods and forty bags are walked in no longer than their ledger takes to fold', {
  timeout: 60_000,
}, () => {
  const entries = fullFreezer(tonight)
  const { ratio, doses } = walkBesideFold(entries, threeFoods, momentAt(tonight, 1_200, london), 25)
  // Four plans, every night, for three years.
  expect(doses).toBeGreaterThan(4 * 3 * 365)
  expect(ratio).toBeLessThan(1)
})
