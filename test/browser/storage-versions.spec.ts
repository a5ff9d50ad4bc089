/** Old apps and new ones over one disk. */
import { expect, test } from '@playwright/test'
import { open } from './harness/page.ts'

test('a tab with an older schema makes way, and its next tap is refused while its draft is kept', async ({
  context,
}) => {
  const old = await open(context)
  await old.evaluate(() => window.harness.add('before the update'))
  await old.getByLabel('Note').fill('half-typed')
  const newer = await context.newPage()
  await newer.goto('./index.html')
  await newer.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open('smallhours', 99)
        asked.onblocked = () => reject(new Error('blocked'))
        asked.onsuccess = () => resolve()
        asked.onerror = () => reject(asked.error)
      }),
  )
  await expect(old.getByText('status: closedForUpdate')).toBeVisible()
  const refused = await old.evaluate(() => window.harness.add('after the update'))
  expect(refused).toEqual({ ok: false, refusal: { why: 'closedForUpdate' } })
  await old.getByRole('button', { name: 'Save' }).click()
  await expect(old.getByLabel('Note')).toHaveValue('half-typed')
  await old.evaluate(() => window.harness.flushAndReload())
  await expect(old.getByLabel('Note')).toHaveValue('half-typed')
  await expect(old.getByText('status: closedForUpdate')).toBeVisible()
})

test('every step of the schema runs from nothing and from each older version, and a deaf old tab is named', async ({
  context,
}) => {
  const page = await context.newPage()
  await page.route('**/*', (route) => route.fulfill({ contentType: 'text/html', body: '<title>an older app</title>' }))
  await page.goto('./')
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open('smallhours', 1)
        asked.onupgradeneeded = () => {
          const store = asked.result.createObjectStore('entries', { autoIncrement: true })
          store.createIndex('stamp', 'entry.id', { unique: true })
          const fact = { kind: 'placeDescribed', at: 1_700_000_000_000, place: 'shelf', name: 'old', door: 'fridge' }
          store.add({ entry: { id: '001700000000000-000-olderphone', fact }, codec: 1 })
        }
        asked.onsuccess = () => resolve()
        asked.onerror = () => reject(asked.error)
        // Nothing listens for versionchange here: this tab does not make way.
        Object.assign(window, { close: () => asked.result.close() })
      }),
  )
  const next = await context.newPage()
  await next.goto('./')
  await expect(next.getByText('status: blocked')).toBeVisible()
  await page.evaluate(() => window.close())
  await expect(next.getByText('status: ready')).toBeVisible()
  expect(await next.evaluate(() => window.harness.names())).toEqual(['old'])
})

test('what another version of the codec wrote is read again, and what no longer reads is kept word for word', async ({
  context,
}) => {
  const page = await open(context)
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open('smallhours')
        asked.onerror = () => reject(asked.error)
        asked.onsuccess = () => {
          const tx = asked.result.transaction(['entries', 'sealed'], 'readwrite')
          const place = { kind: 'placeDescribed', at: 1_700_000_000_000, place: 'shelf', door: 'fridge' }
          const id = (n: number) => `00170000000000${n}-000-otherphone`
          const once = [
            { id: id(1), fact: { ...place, name: 'reads as ever' } },
            { id: id(2), fact: { ...place, name: 'no longer reads', door: 'cellar' } },
            { id: id(3), unread: { id: id(3), fact: { ...place, name: 'reads by now' } } },
            { id: id(4), unread: { id: id(4), fact: { ...place, kind: 'moonPhased' } } },
          ]
          tx.objectStore('sealed').add({ text: JSON.stringify(once.slice(0, 2)), codec: 0 }, 2)
          for (const entry of once.slice(2)) tx.objectStore('entries').add({ entry, codec: 99 }, Number(entry.id[14]))
          tx.oncomplete = () => {
            asked.result.close()
            resolve()
          }
        }
      }),
  )
  const added = await page.evaluate(() => window.harness.add('asked on top of them'))
  expect(added.ok).toBe(true)
  expect(new Set(await page.evaluate(() => window.harness.names()))).toEqual(
    new Set(['reads as ever', 'reads by now', 'asked on top of them']),
  )
  expect(await page.evaluate(() => window.harness.unread())).toBe(2)
  const backup = await page.evaluate(async () => {
    const made = await window.harness.makeBackup()
    return made.ok ? made.value.text() : ''
  })
  expect(backup).toContain('"door":"cellar"')
  expect(backup).toContain('"kind":"moonPhased"')
  expect(backup).not.toContain('"unread"')
  await page.reload()
  await page.evaluate(() => window.harness.started)
  expect(await page.evaluate(() => window.harness.unread())).toBe(2)
})
