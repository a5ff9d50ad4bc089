/** From nothing to a first dose. */
import { expect, type Locator, test } from '@playwright/test'
import { answer, dosed, go, openApp } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

test('three questions and the first dose is planned, within fifteen touches and two minutes', async ({ context }) => {
  const page = await openApp(context)
  const began = Date.now()
  let touches = 0
  const touch = async (what: Locator) => {
    touches += 1
    await what.click()
  }
  const type = async (what: Locator, text: string) => {
    await touch(what)
    await page.keyboard.type(text)
  }
  await type(page.getByLabel('How much water is in it?'), '400')
  await touch(page.getByRole('radio', { name: 'litres' }))
  await touch(page.getByRole('radio', { name: 'A bottle in the fridge' }))
  await type(page.getByLabel('What does the bottle hold?'), '120')
  await touch(page.getByRole('radio', { name: 'mL' }))
  await expect(page.getByText('One dose for this tank: 0.55 to 1.05 mL')).toBeVisible()
  await touch(page.getByRole('button', { name: 'Begin' }))
  await expect(answer(page)).toContainText('Tonight: 0.55 mL from the 120 mL bottle, kitchen fridge.')
  await touch(dosed(page))
  await expect(answer(page)).toContainText('Done for Wednesday night: 0.55 mL at 20:30')
  test.info().annotations.push({ type: 'touches', description: String(touches) })
  expect(touches).toBeLessThanOrEqual(15)
  expect(Date.now() - began).toBeLessThan(120_000)
})

test('frozen portions she has already are as easy as a new bottle', async ({ context }) => {
  const page = await openApp(context)
  await page.getByLabel('How much water is in it?').fill('200')
  await page.getByRole('radio', { name: 'US gallons' }).check()
  await page.getByRole('radio', { name: 'Frozen portions already' }).check()
  await page.getByLabel('How many portions?').fill('60')
  await page.getByLabel('How much is in each?').fill('1')
  await page.getByLabel('Frozen about when?').selectOption('2026-06-01')
  await page.getByRole('button', { name: 'Begin' }).click()
  await expect(answer(page)).toHaveText(
    /^Tonight: one portion from bag 1, kitchen freezer\. 59 left after that, enough until/,
  )
})

test('a bottle that is about 80 % full is as easy as a full one', async ({ context }) => {
  const page = await openApp(context)
  await page.getByLabel('How much water is in it?').fill('60,5')
  await page.getByRole('radio', { name: 'US gallons' }).check()
  await expect(page.getByText('60.5 US gallons, about 229 litres.')).toBeVisible()
  await page.getByRole('radio', { name: 'A bottle in the fridge' }).check()
  await page.getByLabel('What does the bottle hold?').fill('4')
  await page.getByRole('radio', { name: 'US fl oz' }).check()
  await page.getByRole('radio', { name: 'Begun already' }).check()
  await page.getByLabel('Arrived about when?').fill('2026-11-01')
  await page.getByRole('button', { name: 'Begin' }).click()
  await expect(answer(page)).toContainText('bottle')
  await go(page, '/food')
  await expect(page.getByText(/118\.29/).first()).toBeVisible()
})

test('a volume of nothing is refused with a sentence, and the rest of the form stays', async ({ context }) => {
  const page = await openApp(context)
  await page.getByRole('radio', { name: 'A bottle in the fridge' }).check()
  await page.getByLabel('What does the bottle hold?').fill('120')
  await page.getByRole('radio', { name: 'mL' }).check()
  for (const [typed, says] of [
    ['0', 'This has to be more than 0.'],
    ['-60', 'This has to be more than 0.'],
    ['', 'Nothing is entered here yet.'],
    ['1.000', /can be read two ways: 1 or 1,000/],
  ] as const) {
    await page.getByLabel('How much water is in it?').fill(typed)
    await page.getByRole('button', { name: 'Begin' }).click()
    await expect(page.getByText(says)).toBeVisible()
    await expect(page.getByLabel('What does the bottle hold?')).toHaveValue('120')
  }
  await page.getByLabel('How much water is in it?').fill('60')
  await page.getByRole('button', { name: 'Begin' }).click()
  await expect(page.getByText(/60 of what\?/)).toBeVisible()
  await page.getByRole('radio', { name: 'imperial gallons' }).check()
  await page.getByRole('button', { name: 'Begin' }).click()
  await expect(dosed(page)).toBeVisible()
})

test('a half-filled first evening is there again after the app was closed', async ({ context }) => {
  const page = await openApp(context)
  await page.getByLabel('How much water is in it?').fill('333')
  await page.waitForTimeout(600)
  await page.close()
  const again = await openApp(context)
  await expect(again.getByLabel('How much water is in it?')).toHaveValue('333')
})
