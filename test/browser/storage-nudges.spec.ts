/** The record that keeps a nudge from being shown twice. */
import { expect, test } from '@playwright/test'
import { open } from './harness/page.ts'

test('of two tabs that ask at once one may show a nudge, and it is on disk first', async ({ context }) => {
  const watch = () => {
    const begin = IDBDatabase.prototype.transaction
    IDBDatabase.prototype.transaction = function (...given) {
      const tx = begin.apply(this, given)
      if (tx.mode === 'readwrite') performance.mark(`${[...tx.objectStoreNames].join(' and ')}: ${tx.durability}`)
      return tx
    }
  }
  const [one, two] = [await open(context, watch), await open(context, watch)]
  for (const night of ['2026-11-25', '2026-11-27', '2026-11-29']) {
    const claimed = await Promise.all(
      [one, two, one].map((page) => page.evaluate((key) => window.harness.claimNudge(key), `longgallery/${night}`)),
    )
    expect(claimed.map((each) => each.ok && each.value).filter(Boolean)).toHaveLength(1)
    expect(claimed.every(({ ok }) => ok)).toBe(true)
  }
  const writes = await one.evaluate(() => performance.getEntriesByType('mark').map(({ name }) => name))
  expect(writes.filter((write) => write.startsWith('nudges'))).toContain('nudges: strict')
  expect(writes.filter((write) => write.startsWith('nudges') && write !== 'nudges: strict')).toEqual([])
  await one.reload()
  await one.evaluate(() => window.harness.started)
  expect(await one.evaluate(() => window.harness.claimNudge('longgallery/2026-11-25'))).toEqual({
    ok: true,
    value: false,
  })
})
