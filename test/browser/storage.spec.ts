/** The ledger on a real disk, in a real browser, several pages at once. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
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
  const watchWrites = () => {
    const begin = IDBDatabase.prototype.transaction
    IDBDatabase.prototype.transaction = function (...given) {
      const tx = begin.apply(this, given)
      if (tx.mode === 'readwrite') performance.mark(`${[...tx.objectStoreNames].join(' and ')}: ${tx.durability}`)
      return tx
    }
  }
  const page = await open(context, watchWrites)
  const writes = () => page.evaluate(() => performance.getEntriesByType('mark').map(({ name }) => name))
  // Kept whenever the phone is idle, so it may come at any moment.
  const glance = 'glance: strict'
  const asked = async () => [...new Set(await writes())].filter((write) => write !== glance).sort()
  const during = async (act: () => Promise<unknown>, written: readonly string[]) => {
    await page.evaluate(() => performance.clearMarks())
    await act()
    await expect.poll(asked).toEqual(written)
  }
  const [atOnce, withTexts] = ['entries: strict', 'entries and sealed: strict']
  const [matters, drafts] = ['matters: strict', 'drafts: strict']
  // The first entry of a phone's life brings the phone its id.
  await during(() => page.evaluate(() => window.harness.add('the first')), [atOnce, matters])
  await during(
    () => page.evaluate(() => window.harness.addMany(1_600).then(window.harness.sealNow)),
    [withTexts, atOnce],
  )
  const deafPage = await open(context, deaf)
  await during(() => page.evaluate(() => window.harness.add('unheard of')), [atOnce])
  await deafPage.evaluate(watchWrites)
  await deafPage.evaluate(() => window.harness.add('asked again'))
  expect(await deafPage.evaluate(() => performance.getEntriesByType('mark').map(({ name }) => name))).toEqual(
    expect.arrayContaining([atOnce, withTexts]),
  )
  await deafPage.close()
  await during(() => page.evaluate(() => window.harness.takeIn(window.harness.strangers(2_500))), [withTexts])
  await during(() => page.evaluate(() => window.harness.setMatter('look', 'night')), [matters])
  await during(() => page.evaluate(() => window.harness.renewDevice()), [matters])
  await during(() => page.getByLabel('Note').fill('half a word'), [drafts])
  await during(() => page.getByRole('button', { name: 'Save' }).click(), [drafts, atOnce])
  await expect.poll(writes).toContain(glance)
})

test('nothing begins a write but the one function that waits for the disk', () => {
  const app = fileURLToPath(new URL('../../app', import.meta.url))
  const writing = /'readwrite'[,)]|\bdb\.(?:put|add|delete|clear)\(/
  const files = readdirSync(app, { recursive: true, encoding: 'utf8' }).filter((file) => /\.tsx?$/.test(file))
  expect(files.filter((file) => writing.test(readFileSync(join(app, file), 'utf8')))).toEqual([
    join('storage', 'transaction.ts'),
  ])
})
