/** The ledger on a real disk, in a real browser, several pages at once. */
import { expect, type Page, test } from '@playwright/test'
import { ids, open, sorted } from './harness/page.ts'

/** A tab that was frozen while the others talked. */
const deaf = () => {
  Object.defineProperty(BroadcastChannel.prototype, 'onmessage', { set: () => {} })
}
test('two tabs that record at once collide nowhere, and both see everything', async ({ context }) => {
  const [one, two] = [await open(context), await open(context)]
  const burst = (page: Page, tab: string) =>
    page.evaluate((tab) => Promise.all(Array.from({ length: 60 }, (_, i) => window.harness.add(`${tab} ${i}`))), tab)
  const done = (await Promise.all([burst(one, 'one'), burst(two, 'two')])).flat()
  expect(done.filter(({ ok }) => ok)).toHaveLength(120)
  await expect.poll(async () => (await ids(one)).length).toBe(120)
  await expect.poll(async () => (await ids(two)).length).toBe(120)
  expect(new Set(await ids(one)).size).toBe(120)
  expect(sorted(await ids(two))).toEqual(sorted(await ids(one)))
})

test('a request is asked again of what the other tab has just written', async ({ context }) => {
  const [one, two] = [await open(context), await open(context)]
  const done = await Promise.all([one, two].map((page) => page.evaluate(() => window.harness.addOnce('kitchen'))))
  expect(done.filter(({ ok }) => ok)).toHaveLength(1)
  expect(done.find(({ ok }) => !ok)).toEqual({ ok: false, refusal: { why: 'known' } })
  await expect.poll(() => one.evaluate(() => window.harness.names())).toEqual(['kitchen'])
  await expect.poll(() => two.evaluate(() => window.harness.names())).toEqual(['kitchen'])
})

test('sealed entries read back as the same set, and a tab that had read half of them misses and repeats none', async ({
  context,
}) => {
  const writer = await open(context)
  await writer.evaluate(() => window.harness.addMany(700))
  const reader = await open(context, deaf)
  expect(await ids(reader)).toHaveLength(700)
  await writer.evaluate(async () => {
    for (const count of [900, 1_400]) await window.harness.addMany(count)
    await window.harness.sealNow()
  })
  const before = sorted(await ids(writer))
  expect(before).toHaveLength(3_000)
  const stores = await writer.evaluate(
    () =>
      new Promise<number[]>((resolve, reject) => {
        const asked = indexedDB.open('smallhours')
        asked.onerror = () => reject(asked.error)
        asked.onsuccess = () => {
          const tx = asked.result.transaction(['entries', 'sealed'])
          const [entries, sealed] = [tx.objectStore('entries').count(), tx.objectStore('sealed').count()]
          tx.oncomplete = () => {
            asked.result.close()
            resolve([entries.result, sealed.result])
          }
        }
      }),
  )
  expect(stores).toEqual([1_000, 2])
  const added = await reader.evaluate(() => window.harness.add('after the sealing'))
  expect(added.ok).toBe(true)
  const all = sorted(await ids(reader))
  expect(all).toHaveLength(3_001)
  expect(new Set(all).size).toBe(3_001)
  expect(all.filter((id) => before.includes(id))).toEqual(before)
  await expect.poll(async () => sorted(await ids(writer))).toEqual(all)
  await writer.reload()
  await writer.evaluate(() => window.harness.started)
  expect(sorted(await ids(writer))).toEqual(all)
})

test('every write waits for the disk', async ({ context }) => {
  const page = await open(context, () => {
    const begin = IDBDatabase.prototype.transaction
    IDBDatabase.prototype.transaction = function (...given) {
      const tx = begin.apply(this, given)
      if (tx.mode === 'readwrite') performance.mark(`${[...tx.objectStoreNames].join(' and ')}: ${tx.durability}`)
      return tx
    }
  })
  const writes = () => page.evaluate(() => performance.getEntriesByType('mark').map(({ name }) => name))
  // Kept whenever the phone is idle, so it may come at any moment.
  const glance = 'glance: strict'
  const asked = async () => [...new Set(await writes())].filter((write) => write !== glance)
  const during = async (act: () => Promise<unknown>) => {
    await page.evaluate(() => performance.clearMarks())
    await act()
    await expect.poll(asked).not.toEqual([])
    return asked()
  }
  const ledger = ['entries and sealed: strict']
  await page.evaluate(() => window.harness.add('the device takes its id'))
  expect(await during(() => page.evaluate(() => window.harness.addMany(1_600)))).toEqual(ledger)
  expect(
    await during(() =>
      page.evaluate(async () => {
        await window.harness.addMany(1_000)
        await window.harness.sealNow()
      }),
    ),
  ).toEqual(ledger)
  expect(await during(() => page.evaluate(() => window.harness.takeIn(window.harness.strangers(2_500))))).toEqual(
    ledger,
  )
  expect(await during(() => page.evaluate(() => window.harness.setMatter('look', 'night')))).toEqual([
    'matters: strict',
  ])
  expect(await during(() => page.evaluate(() => window.harness.renewDevice()))).toEqual(['matters: strict'])
  expect(await during(() => page.getByLabel('Note').fill('half a word'))).toEqual(['drafts: strict'])
  expect(await during(() => page.getByRole('button', { name: 'Save' }).click())).toEqual(expect.arrayContaining(ledger))
  await expect.poll(writes).toContain(glance)
})
