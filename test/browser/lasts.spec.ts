/** How long it lasts, night by night, and why a date moved. */
import { expect, type Page, test } from '@playwright/test'
import { households } from './households.ts'
import { answer, backupOf, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

const month = (page: Page, name: string) => page.getByRole('table', { name })
const cell = (page: Page, name: string, day: number) =>
  month(page, name)
    .getByRole('cell')
    .filter({ hasText: new RegExp(`^${day}(?!\\d)`) })

/** Two portions fall on the floor, at the freezer. */
const dropTwo = async (page: Page) => {
  await go(page, '/food/lot/bag1')
  await page.getByText('Dropped or lost some').click()
  await page.getByRole('button', { name: 'dropped it' }).click()
  await page.getByRole('button', { name: 'more' }).first().click()
  await page.getByRole('button', { name: 'Take 2 portions off' }).click()
  await expect(answer(page)).toContainText('20 portions left')
}

test('two portions fall: the page says the new date, and why it moved, now and after a reload', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.oneBag()))
  await go(page, '/food')
  await page.getByRole('link', { name: 'How long it lasts, night by night' }).click()
  // Food says the same sentence: only the heading tells that this is the other page.
  await expect(page.getByRole('heading', { level: 1, name: 'How long it lasts' })).toBeVisible()
  await expect(page.getByRole('table')).toHaveCount(3)
  await expect(answer(page)).toContainText('first night without food 8 January 2027')
  // Nothing has moved yet, and nothing is said of it.
  await expect(page.getByText('Why did this move?')).toHaveCount(0)
  await dropTwo(page)
  await go(page, '/food/lasts/greenfood')
  await expect(answer(page)).toContainText('first night without food 4 January 2027')
  await expect(said(page, 'It was 8 January 2027 before: 4 days sooner.')).toBeVisible()
  await page.getByText('Why did this move?').click()
  await expect(said(page, '2 portions lost from bag1: 4 days sooner.')).toBeVisible()
  await page.reload()
  await page.getByText('Why did this move?').click()
  await expect(said(page, '2 portions lost from bag1: 4 days sooner.')).toBeVisible()
})

test('each dose night says what it takes from, and the first night without food is ringed', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.oneBag()))
  await go(page, '/food/lasts/greenfood')
  await expect(cell(page, 'November 2026', 25)).toHaveText('25: tonight, from AA')
  await expect(cell(page, 'November 2026', 26)).toHaveText('26')
  await expect(cell(page, 'January 2027', 8)).toContainText('first night without food')
  await expect(cell(page, 'January 2027', 8).locator('[data-bare="first"]')).toHaveCount(1)
  await expect(page.getByRole('columnheader').first()).toHaveText(/Monday/)
  await page.getByText('The same in words').click()
  await expect(said(page, 'From bag1 (A) on 25, 27 and 29.')).toBeVisible()
})

test('months are turned by keyboard, three at a time, and a reload keeps the place', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.sixtyBags()))
  await go(page, '/food/lasts/greenfood')
  await expect(page.getByRole('table')).toHaveCount(3)
  await expect(page.getByRole('heading', { name: 'November 2026 to January 2027' })).toBeVisible()
  const later = page.getByRole('button', { name: 'Later' })
  await later.focus()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('heading', { name: 'February to April 2027' })).toBeVisible()
  await expect(page.getByRole('status').filter({ hasText: 'February to April 2027' })).toHaveCount(1)
  await expect(later).toBeFocused()
  await page.reload()
  await expect(page.getByRole('heading', { name: 'February to April 2027' })).toBeVisible()
  await expect(page.getByText('first night without food', { exact: false }).first()).toBeVisible()
  await page.keyboard.press('Tab')
  await page.getByRole('button', { name: 'Earlier' }).press('Enter')
  await expect(page.getByRole('button', { name: 'Earlier' })).toHaveAttribute('aria-disabled', 'true')
  await expect(page.getByRole('heading', { name: 'November 2026 to January 2027' })).toBeVisible()
})

test('where no plan feeds it, the way to a plan is there, on both pages', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.noPlan()))
  await go(page, '/food')
  await expect(answer(page)).toContainText('No plan feeds it to a tank yet')
  await page.getByRole('link', { name: 'Make a plan' }).click()
  await expect(page).toHaveURL(/#\/water\/plan\/longgallery\/greenfood/)
  await go(page, '/food/lasts/greenfood')
  await expect(page.getByRole('link', { name: 'Make a plan' })).toBeVisible()
})
