/** When to order and what becomes of it, and a card for a friend: what a person does, in a real browser. */
import { expect, type Page, test } from '@playwright/test'
import { type Household, households } from './households.ts'
import { answer, backupOf, diary, go, openApp, restore, said } from './keeper.ts'

const begin = async (page: Page, household: Household, where: string): Promise<void> => {
  await restore(page, backupOf(households[household]()))
  await go(page, where)
}
const fold = async (page: Page, name: string): Promise<void> => {
  await page.locator('summary').filter({ hasText: name }).click()
}

test('the day to order is one day on Tonight, at the food and on its page; once ordered all three say so', async ({
  context,
}) => {
  const page = await openApp(context)
  await begin(page, 'orderNow', '/')
  const order =
    'Order Green food now: the day for it was Monday, 23 November, and the first night without food is 7 December.'
  await expect(said(page, order)).toBeVisible()
  await go(page, '/food')
  await expect(said(page, 'Order Green food now: the day for it was Monday, 23 November.')).toBeVisible()
  await page.getByRole('link', { name: 'Ordering, and what can be given away' }).click()
  await expect(answer(page)).toHaveText(new RegExp(order.replace(/ /g, '\\s')))

  await fold(page, 'I have ordered it')
  await page.getByLabel('To come on').fill('2026-12-04')
  await page.getByRole('button', { name: 'I have ordered it' }).click()
  await expect(said(page, 'Noted: Green food ordered today.')).toBeVisible()
  const ordered = 'Green food is ordered, to come on Friday, 4 December.'
  await expect(answer(page)).toHaveText(new RegExp(ordered.replace(/ /g, '\\s')))
  await go(page, '/food')
  await expect(said(page, ordered)).toBeVisible()
  await go(page, '/')
  await expect(page.getByRole('heading', { name: 'To order' })).toHaveCount(0)
  expect((await diary(page)).join(' ')).toContain('Ordered Green food on 25 November, to come on 4 December.')
})

test('an order three days late is asked about, and what was typed is there after a reload', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'orderLate', '/')
  await expect(said(page, 'Has Green food come? It was to come on Friday, 20 November.')).toBeVisible()
  await page.getByRole('link', { name: 'All about ordering' }).click()
  await fold(page, 'Still waiting for it')
  await page.getByLabel('When is it to come now?').fill('2026-11-30')
  await page.reload()
  await fold(page, 'Still waiting for it')
  await expect(page.getByLabel('When is it to come now?')).toHaveValue('2026-11-30')
  await page.getByRole('button', { name: 'Still waiting' }).click()
  await expect(answer(page)).toContainText(/to come on Monday, 30\sNovember/)
  await fold(page, 'It was never ordered')
  await page.getByRole('button', { name: 'Cross it out' }).click()
  await expect(answer(page)).toContainText('Order Green food now')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(answer(page)).toContainText(/to come on Monday, 30\sNovember/)
})

test('days away are minded, and the day to order by does not move for them', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'toOrder', '/food/order')
  await expect(answer(page)).toHaveText(/^Order Green food by Friday, 11\sDecember/)
  const by = (await answer(page).textContent()) ?? ''
  await expect(page.getByRole('note').first()).toContainText(/nobody is at home from 13\sDecember/)
  await page.getByRole('button', { name: /^Cross out.*Sunday, 13/ }).click()
  await expect(said(page, 'Crossed out: somebody is at home.')).toBeVisible()
  await expect(page.getByRole('note').first()).toContainText(/that is a weekend\. Better to order on/)
  await expect(answer(page)).toHaveText(by)
})

test('what can be spared is given away with a card for the friend, which a reload does not empty', async ({
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  const page = await openApp(context)
  await begin(page, 'toOrder', '/food/order')
  await page.getByRole('link', { name: /from blue clip/ }).click()
  await fold(page, 'Give some away')
  await expect(page.getByText(/You can give .* of these away and never run short/)).toBeVisible()
  await page.getByRole('link', { name: 'A small card for your friend' }).click()
  await page.getByLabel('How much water is in their tank?').fill('60')
  await page.getByRole('radio', { name: 'US gallons' }).check()
  await expect(answer(page)).toHaveText('Half of a portion is one dose for a tank of 60 US gallons.')
  await page.reload()
  await expect(answer(page)).toHaveText('Half of a portion is one dose for a tank of 60 US gallons.')
  await page.evaluate(() => Object.defineProperty(navigator, 'share', { value: undefined }))
  await page.getByRole('button', { name: 'Send or copy it' }).click()
  await expect(page.getByText('Copied: it can be pasted into a message.')).toBeVisible()
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('NOT FOOD for people.')
  // On paper there is the card alone.
  await page.emulateMedia({ media: 'print' })
  await expect(page.locator('.friend-card')).toBeVisible()
  await expect(answer(page)).toBeHidden()
  await expect(page.getByRole('navigation').first()).toBeHidden()
})
