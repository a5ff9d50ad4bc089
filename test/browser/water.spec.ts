/** The plan and the tank's description. */
import { expect, test } from '@playwright/test'
import { households } from './households.ts'
import { answer, backupOf, beginWithBottle, dosed, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

test('a plan above the range is asked about once, and its doses never', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/water/plan/longgallery/greenfood')
  await page.getByLabel('One dose', { exact: true }).fill('2,6')
  await page.getByRole('button', { name: 'Save the plan' }).click()
  await expect(said(page, 'That is 1.3 × the top of the range, 2 mL.')).toBeVisible()
  await page.getByRole('button', { name: 'Keep it; do not ask again' }).click()
  await expect(page.getByRole('heading', { level: 1, name: 'Water' })).toBeVisible()
  await go(page, '/')
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for Wednesday night: 2.6 mL')
})

test('a thousand millilitres is refused as a plan, with the numbers', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/water/plan/longgallery/greenfood')
  await page.getByLabel('One dose', { exact: true }).fill('1000')
  await page.getByRole('button', { name: 'Save the plan' }).click()
  await expect(said(page, '500 × the top of the range, 2 mL')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Keep it; do not ask again' })).toBeHidden()
  await expect(page.getByLabel('One dose', { exact: true })).toHaveValue('1000')
})

test('nights between doses are whole', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/water/plan/longgallery/greenfood')
  await page.getByLabel('Nights from one dose to the next').fill('0.5')
  await page.getByRole('button', { name: 'Save the plan' }).click()
  await expect(page.getByText(/whole number from 1 to 14, not 0.5/)).toBeVisible()
})

test('what the tank was before keeps its date', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await go(page, '/water')
  await page.getByRole('link', { name: 'Change this tank' }).click()
  await page.getByLabel('When do the lights go out?').fill('22:15')
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(answer(page)).toContainText('lights out at 22:15')
  await page.getByText('What it was before').click()
  await expect(page.getByText('from Wednesday, 25 November')).toBeVisible()
  await expect(page.getByText('Tank, lights out at 21:00')).toBeVisible()
  await expect(page.getByText('How much water, from when')).toHaveCount(0)
})
