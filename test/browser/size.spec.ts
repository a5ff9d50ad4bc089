/** What is shipped stays light: sizes do not wobble, so the bars themselves are held. */
import { fileURLToPath } from 'node:url'
import { expect, test } from '@playwright/test'
import { sizesOf } from '../bench/sizes.ts'

const shipped = sizesOf(fileURLToPath(new URL('../../dist', import.meta.url)))

test('the JavaScript that Tonight needs is at most 120 kB compressed, React included', () => {
  expect(shipped.scripts.length).toBeGreaterThan(1)
  expect(shipped.tonight).toBeLessThanOrEqual(120_000)
})

test('all that the worker keeps, and the worker, is at most 450 kB compressed', () => {
  expect(shipped.kept).toContain('index.html')
  expect(shipped.kept).toEqual(expect.arrayContaining([...shipped.scripts]))
  expect(shipped.precache).toBeLessThanOrEqual(450_000)
})
