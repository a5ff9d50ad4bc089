/** The diary of the small life as a person uses it: counted by torch, told apart by the key, shown on one page. */
import { expect, type Page, test } from '@playwright/test'
import { households } from './households.ts'
import { answer, backupOf, diary, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

/** An hour and ten minutes after the lamp. */
const dark = '2026-11-25T22:10:00Z'

const opened = async (page: Page) => {
  await restore(page, backupOf(households.smallLife()))
  await go(page, '/water')
  await page.getByRole('link', { name: /^The small life/ }).click()
}
const touch = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^${name}`) }).click()

test('three panes are counted by torch in the dark look, survive a reload, and are compared with care', async ({
  context,
}) => {
  const page = await openApp(context, dark)
  await opened(page)
  await expect(answer(page)).toHaveText('92 days since the pour, 4 feedings, two kinds seen.')
  await page.getByRole('link', { name: 'Count by torch' }).click()
  await expect(page.locator('html')).toHaveAttribute('data-look', 'night')
  await expect(said(page, 'Dark for 70 minutes: the right hour to count.')).toBeVisible()
  for (const [place, counted] of [11, 7, 9].entries()) {
    await touch(page, 'Begin the minute')
    for (let times = 0; times < counted; times++) await touch(page, 'One more')
    await expect(answer(page)).toHaveText(String(counted))
    if (place === 1) {
      await page.waitForTimeout(500)
      await page.reload()
      await expect(answer(page)).toHaveText('7')
    }
    await page.clock.fastForward(61_000)
    await expect(answer(page)).toContainText(`The minute is over: ${counted}`)
    await touch(page, place < 2 ? 'To the next pane' : 'See all three')
  }
  await expect(answer(page)).toHaveText('9 in the middle, of 7 to 11.')
  await page.getByLabel('Which wall or corner?').fill('Back wall')
  await touch(page, 'Keep this count')
  await expect(page.getByText('The count is kept.')).toBeVisible()
  await expect(said(page, 'No clear change since the night of 10 October: chance alone differs as much.')).toBeVisible()
  await expect(said(page, 'Fewer than on the night of 12 September')).toBeVisible()
  // One that was miscounted is crossed out where it stands.
  await page.getByText(/^All five counts/).click()
  await page.getByRole('button', { name: /^Cross out\s*: 25\sNovember/ }).click()
  await touch(page, 'Cross it out')
  await expect(said(page, 'No clear change since the night of 10 October: chance alone differs as much.')).toHaveCount(
    0,
  )
})

test('the key leads through one question a screen, back too, to one next step that is kept', async ({ context }) => {
  const page = await openApp(context)
  await opened(page)
  await page.getByRole('link', { name: 'What is this bug?' }).click()
  await touch(page, 'Elsewhere, or swimming free')
  await touch(page, 'I cannot tell')
  await expect(answer(page)).toContainText('glides or spins')
  await expect(answer(page).locator('span')).toBeFocused()
  await touch(page, 'One answer back')
  await expect(answer(page)).toContainText('a shell in two halves')
  for (let times = 0; times < 6; times++) await touch(page, 'None of these')
  await touch(page, 'Yes: flat from top to bottom')
  await touch(page, 'Oval, like a woodlouse')
  // Marks of both kinds: care goes before comfort.
  await touch(page, 'Slow')
  await touch(page, 'A domed back')
  await touch(page, 'Big dark eyes')
  await page.waitForTimeout(500)
  await page.reload()
  await expect(page.getByRole('button', { name: 'Big dark eyes' })).toHaveAttribute('aria-pressed', 'true')
  await touch(page, 'That is what I saw')
  await expect(answer(page)).toContainText('Not sure, and that is a good answer.')
  await touch(page, 'One answer back')
  await touch(page, 'Slow')
  await touch(page, 'A domed back')
  await touch(page, 'That is what I saw')
  await expect(answer(page)).toContainText('Harmless. A sea pill bug')
  await page.getByLabel('Where was it?').fill('under the stone')
  await touch(page, 'Keep it')
  await expect(page.getByText('What you saw is kept.')).toBeVisible()
  await expect(answer(page)).toContainText('three kinds seen')
  expect((await diary(page))[0]).toContain('A sea pill bug (sphaeromatid) in Long Gallery, under the stone: harmless.')
})

test('one page holds pour, feedings, counts as they were taken and kinds; on paper nothing else is left', async ({
  context,
}) => {
  const page = await openApp(context)
  await opened(page)
  await page.getByRole('link', { name: 'All of it on one page' }).click()
  const sheet = page.locator('article')
  await expect(sheet).toContainText('25\u00a0August 2026. Copepods and rotifers')
  await expect(sheet).toContainText('4 feedings since')
  await expect(sheet.getByText('125 (70 to 206) per litre')).toBeVisible()
  await expect(sheet.getByText('4, 6 and 5 counted')).toBeVisible()
  await expect(sheet.getByText('fewer than 31 per litre')).toBeVisible()
  await expect(sheet).toContainText('A seed shrimp (ostracod)')
  await page.emulateMedia({ media: 'print' })
  await expect(sheet).toBeVisible()
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden()
  await expect(page.getByRole('navigation')).toBeHidden()
})
