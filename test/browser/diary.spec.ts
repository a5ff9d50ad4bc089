/** The diary as a person uses it: looked through, written in, crossed out, and long. */
import { expect, type Page, test } from '@playwright/test'
import { day } from '../../core/index.ts'
import { household } from '../bench/household.ts'
import { households } from './households.ts'
import { answer, backupOf, diary, evening, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

const lines = (page: Page) => page.locator('.diary-book .line')
const status = (page: Page, text: RegExp) => page.getByRole('status').filter({ hasText: text })

test('it is looked through by kind, tank and day together; counts are said, and nothing found is said', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.written()))
  const all = (await diary(page)).length
  await page.getByText('Look something up').click()
  await page.getByRole('button', { name: 'notes', exact: true }).click()
  await expect(status(page, /^Only notes: 5 entries\.$/)).toBeVisible()
  await expect(lines(page)).toHaveCount(5)
  // By keyboard: the tank's chips are pressed as buttons are.
  await page.getByRole('button', { name: 'Cockle', exact: true }).focus()
  await page.keyboard.press('Space')
  await expect(status(page, /^Only notes, of Cockle: 1 entry\.$/)).toBeVisible()
  await expect(lines(page)).toContainText(['Cockle: Polyps out before the lamp was.'])
  await expect(lines(page)).toContainText(['on kitchen phone'])
  await page.getByLabel('From this day back').fill('2026-11-22')
  await expect(
    status(page, /^Nothing is written here of this: notes, of Cockle, up to 22\s+November 2026\.$/),
  ).toBeVisible()
  await expect(lines(page)).toHaveCount(0)
  await page.getByRole('button', { name: 'Show everything' }).click()
  await expect(lines(page)).toHaveCount(all)
  await page.getByRole('button', { name: 'crossed out', exact: true }).click()
  await expect(lines(page)).toHaveCount(1)
  await expect(lines(page)).toContainText(['Crossed out on 24\u00a0November, 22:16, on lab phone: put right.'])
})

test('a note about an earlier day is kept half-typed, written down as text, and says when it was added', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.twoTanks()))
  await go(page, '/diary/note')
  await page.getByRole('button', { name: 'Write it down' }).click()
  await expect(page.getByText('A word or two, please.')).toBeVisible()
  const text = page.getByLabel('What happened, or what did you see?')
  await expect(text).toBeFocused()
  await text.fill('Eggs on the glass.\n<img src=x onerror=alert(1)>')
  await page.getByLabel('On which day?').fill('2026-11-12')
  await page.getByLabel('At what time?').fill('22:35')
  await page.getByRole('button', { name: 'Cockle', exact: true }).click()
  await page.waitForTimeout(500)
  await page.reload()
  await expect(text).toHaveValue(/^Eggs on the glass/)
  await expect(page.getByLabel('At what time?')).toHaveValue('22:35')
  await page.getByRole('button', { name: 'Write it down' }).click()
  await expect(page.getByRole('heading', { level: 1, name: 'Diary' })).toBeVisible()
  await expect(page.getByText(/^Your note stands under Thursday, 12\sNovember\.$/)).toBeVisible()
  const note = lines(page).filter({ hasText: 'Eggs on the glass.' })
  await expect(note).toContainText('Cockle: Eggs on the glass.')
  await expect(note).toContainText('<img src=x onerror=alert(1)>')
  await expect(note).toContainText(/22:35, added later \(25\s+November, 20:30\)/)
  const thatDay = page.getByRole('region', { name: /Thursday, 12\s+November/ })
  await expect(thatDay.locator('.diary-text').filter({ hasText: 'Eggs on the glass.' })).toBeVisible()
  await go(page, '/diary/note')
  await expect(text).toHaveValue('')
})

test('a note is not of tomorrow, and a very long one stands folded', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.twoTanks()))
  await go(page, '/diary/note')
  const text = page.getByLabel('What happened, or what did you see?')
  await text.fill('many '.repeat(2_100))
  await page.getByLabel('At what time?').fill('23:45')
  await page.getByRole('button', { name: 'Write it down' }).click()
  await expect(page.getByText(/^That is longer than 10,000 letters\.$/)).toBeVisible()
  await text.fill(`many ${'polyps '.repeat(900)}end`)
  await page.getByRole('button', { name: 'Write it down' }).click()
  await expect(page.getByText('23:45 has not come yet.')).toBeVisible()
  await page.getByLabel('At what time?').fill('')
  await page.getByRole('button', { name: 'Write it down' }).click()
  const note = lines(page).first()
  await expect(note).toContainText('…')
  await expect(note).not.toContainText('polyps end')
  expect(((await answer(page).textContent()) ?? '').length).toBeLessThan(300)
  await note.getByRole('button', { name: 'Read all of it' }).click()
  await expect(note).toContainText('polyps end')
})

test('crossing out asks once, takes her own reason, and stays readable with who and when', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.trays()))
  await go(page, '/diary')
  const last = lines(page)
    .filter({ hasText: /Gave Long Gallery/ })
    .first()
  await last.getByRole('button', { name: /^Cross out/ }).click()
  await last.getByRole('button', { name: 'something else' }).click()
  await last.getByLabel('In your own words').fill('the net was in the way')
  await last.getByRole('button', { name: 'Cross it out' }).click()
  await expect(last).toContainText(/Crossed out on 25\s+November, 20:30, on this phone: the net was in the way\./)
  await expect(last.locator('s')).toContainText('Gave Long Gallery')
  await expect(last).toBeVisible()
})

test('ten years open as quickly as a week, a page at a time', async ({ context }) => {
  test.setTimeout(120_000)
  const page = await openApp(context)
  await restore(page, backupOf(household(20_000, day('2026-11-25')), evening))
  await go(page, '/')
  await expect(page.getByText(/^Wednesday night/).first()).toBeVisible()
  // Once before: what is measured is the book, not the fetching of the room.
  await go(page, '/diary')
  await expect(lines(page).first()).toBeVisible()
  await go(page, '/')
  await expect(page.getByText(/^Wednesday night/).first()).toBeVisible()
  expect(
    await scripting(
      page,
      () => go(page, '/diary'),
      () => expect(lines(page)).toHaveCount(50),
    ),
  ).toBeLessThan(400)
  await expect(said(page, 'The newest 50 of')).toBeVisible()
  const first = await lines(page).first().elementHandle()
  const older = () => page.getByRole('button', { name: 'Show older' }).click()
  expect(await scripting(page, older, () => expect(lines(page)).toHaveCount(100))).toBeLessThan(400)
  // What stood there stands there still, and reading goes on at the first new line.
  expect(await first?.evaluate((line) => line.isConnected)).toBe(true)
  await expect(lines(page).nth(50).locator('.diary-line')).toBeFocused()
  await page.getByText('Look something up').click()
  const notes = () => page.getByRole('button', { name: 'crossed out', exact: true }).click()
  expect(await scripting(page, notes, () => expect(status(page, /^Only crossed out/)).toBeVisible())).toBeLessThan(400)
})

/** Milliseconds of script the page ran for it. */
const scripting = async (page: Page, act: () => Promise<void>, done: () => Promise<void>): Promise<number> => {
  const devtools = await page.context().newCDPSession(page)
  await devtools.send('Performance.enable')
  const spent = async (): Promise<number> => {
    const { metrics } = await devtools.send('Performance.getMetrics')
    return (metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? Number.NaN) * 1_000
  }
  const before = await spent()
  await act()
  await done()
  const took = (await spent()) - before
  test.info().annotations.push({ type: 'script', description: `${Math.round(took)} ms` })
  await devtools.detach()
  return took
}
