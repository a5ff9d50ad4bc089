/** What a phone is called, how it goes on after a restore, and when it asks for a backup. */
import { expect, test } from '@playwright/test'
import { households } from './households.ts'
import { backupOf, go, openApp, restore } from './keeper.ts'
import { saveBackup } from './saving.ts'

test.use({ timezoneId: 'Europe/London' })

test('a named phone goes on under its name after a restore, and its old entries are its own', async ({ browser }) => {
  test.setTimeout(60_000)
  const before = await openApp(await browser.newContext())
  await restore(before, backupOf(households.trays()))
  await before.getByRole('button', { name: 'It was another phone' }).click()
  await before.getByRole('button', { name: 'kitchen phone' }).click()
  await before.getByRole('button', { name: 'Call it so' }).click()
  await expect(before.getByText(/^This phone is called “kitchen phone”/)).toBeVisible()
  await go(before, '/diary/note')
  await before.getByLabel('What happened, or what did you see?').fill('Lamp cleaned.')
  await before.getByRole('button', { name: 'Write it down' }).click()
  const note = '.diary-book .line:has-text("Lamp cleaned.")'
  await expect(before.locator(note).locator('.line-lead')).toHaveText('20:30')
  const text = await saveBackup(before)
  await before.context().close()

  const after = await openApp(await browser.newContext())
  await restore(after, text)
  await go(after, '/diary')
  await expect(after.locator(note).locator('.line-lead')).toHaveText('20:30, on kitchen phone')
  await go(after, '/phone')
  await after.getByRole('button', { name: 'This phone goes on as “kitchen phone”' }).click()
  await expect(after.getByText(/^This phone is called “kitchen phone”/)).toBeVisible()
  await go(after, '/diary')
  await expect(after.locator(note).locator('.line-lead')).toHaveText('20:30')
  // Those of the phone before it are still another's.
  await expect(after.locator('.diary-book .line').filter({ hasText: 'Gave Long Gallery' }).first()).toContainText(
    'on another phone',
  )
  await after.context().close()
})

test('a month without a backup is a mark beside the room, in words for ears, and gone with the next one', async ({
  browser,
}) => {
  const page = await openApp(await browser.newContext(), '2026-12-24T20:30:00Z')
  await restore(page, backupOf(households.trays()))
  const room = page.getByRole('link', { name: /^This phone/ })
  await expect(room).toHaveAccessibleName('This phone')
  await page.clock.setSystemTime(new Date('2026-12-26T20:30:00Z'))
  await page.reload()
  await expect(room).toHaveAccessibleName('This phone (no backup for more than a month)')
  await expect(page.getByText('That is more than a month ago: a good day for a new one.')).toBeVisible()
  await saveBackup(page)
  await expect(room).toHaveAccessibleName('This phone')
  await page.context().close()
})
