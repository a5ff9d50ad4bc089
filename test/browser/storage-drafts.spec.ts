/** Half-filled forms, the clock on screen, and this phone's own matters. */
import { expect, test } from '@playwright/test'
import { open } from './harness/page.ts'

test('a form left in the same second is restored, and two tabs at one form leave each other alone', async ({
  context,
}) => {
  const one = await open(context)
  await one.getByLabel('Note').fill('from the first tab')
  await one.reload()
  await expect(one.getByLabel('Note')).toHaveValue('from the first tab')
  const two = await open(context)
  await expect(two.getByLabel('Note')).toHaveValue('from the first tab')
  await two.getByLabel('Note').fill('from the second')
  await two.waitForTimeout(500)
  await expect(one.getByLabel('Note')).toHaveValue('from the first tab')
  await one.getByLabel('Note').fill('from the first, gone on')
  await one.waitForTimeout(500)
  await two.getByRole('button', { name: 'Save' }).click()
  await expect(two.getByLabel('Note')).toHaveValue('')
  await expect(one.getByText('places: 1')).toBeVisible()
  await expect(one.getByLabel('Note')).toHaveValue('from the first, gone on')
  await one.reload()
  await expect(one.getByLabel('Note')).toHaveValue('from the first, gone on')
})

test('steady typing is saved while it goes on', async ({ context }) => {
  const page = await open(context)
  await page.getByLabel('Note').pressSequentially('nine portions left', { delay: 60 })
  const onDisk = () =>
    page.evaluate(
      () =>
        new Promise<string>((resolve, reject) => {
          const asked = indexedDB.open('smallhours-device')
          asked.onerror = () => reject(asked.error)
          asked.onsuccess = () => {
            const all = asked.result.transaction('drafts').objectStore('drafts').getAll()
            all.onsuccess = () => {
              asked.result.close()
              resolve(JSON.stringify(all.result))
            }
          }
        }),
    )
  expect(await onDisk()).toContain('nine portions')
  await expect.poll(onDisk).toContain('nine portions left')
})

test('what one tab says of this phone the other tab shows', async ({ context }) => {
  const [one, two] = [await open(context), await open(context)]
  await one.evaluate(() => window.harness.setMatter('look', 'night'))
  await expect(one.getByText('look: night')).toBeVisible()
  await expect(two.getByText('look: night')).toBeVisible()
})

test('two tabs that record first thing on a new phone are one phone, until it is made a new one', async ({
  context,
}) => {
  const [one, two] = [await open(context), await open(context)]
  const id = () => window.harness.thisDevice()
  const [a, b] = await Promise.all([one.evaluate(id), two.evaluate(id)])
  expect(a).toMatchObject({ ok: true, value: expect.stringMatching(/^[0-9a-z]{10}$/) })
  expect(b).toEqual(a)
  await one.evaluate(() => window.harness.renewDevice())
  const renewed = await one.evaluate(id)
  expect(renewed).not.toEqual(a)
  await expect.poll(() => two.evaluate(id)).toEqual(renewed)
})

test('the time shown moves on by the minute, and catches up when the phone wakes', async ({ page }) => {
  await page.clock.install({ time: new Date('2026-03-01T21:59:30Z') })
  await page.goto('./')
  await expect(page.getByText('time: 2026-03-01T21:59')).toBeVisible()
  await page.clock.runFor(31_000)
  await expect(page.getByText('time: 2026-03-01T22:00')).toBeVisible()
  await page.clock.setSystemTime(new Date('2026-03-02T06:15:00Z'))
  await page.evaluate(() => window.dispatchEvent(new Event('focus')))
  await expect(page.getByText('time: 2026-03-02T06:15')).toBeVisible()
})

test('the browser is asked to keep everything once, when the first bottle is recorded, and its answer is kept', async ({
  context,
}) => {
  const page = await open(context, () => {
    StorageManager.prototype.persist = async () => {
      performance.mark('asked')
      return false
    }
  })
  const asked = () => page.evaluate(() => performance.getEntriesByName('asked').length)
  await page.evaluate(() => window.harness.add('shelf'))
  await expect(page.getByText('kept by the browser: not asked')).toBeVisible()
  await page.evaluate(() => window.harness.addBottle())
  await expect(page.getByText('kept by the browser: mayBeCleared')).toBeVisible()
  await page.evaluate(() => window.harness.addBottle())
  expect(await asked()).toBe(1)
  await page.reload()
  await expect(page.getByText('kept by the browser: mayBeCleared')).toBeVisible()
  await page.evaluate(() => window.harness.addBottle())
  expect(await asked()).toBe(0)
})
