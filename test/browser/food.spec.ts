/** At the fridge and at the freezer. */
import { expect, test } from '@playwright/test'
import { households } from './households.ts'
import { answer, backupOf, beginWithBottle, diary, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

test('a bottle of a food she has had before is two touches', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await go(page, '/food')
  await page.getByRole('link', { name: 'Log a bottle' }).click()
  await page.getByRole('button', { name: 'Put it on record' }).click()
  await expect(answer(page)).toHaveText(
    'Not too late: freeze by 25 January 2027. 116.4 mL makes 211 portions, about 14 months.',
  )
  await go(page, '/food')
  await expect(page.getByRole('link', { name: /120 mL bottle/ })).toHaveCount(2)
})

test('a bottle is frozen into trays, and Tonight takes from the tray when the bottle is done', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await go(page, '/food')
  await page.getByRole('link', { name: /120 mL bottle/ }).click()
  await page.getByRole('link', { name: 'Freeze it' }).click()
  await expect(page.getByText(/^211 portions in 15 trays/)).toBeVisible()
  await page.getByLabel('How many portions are there?').fill('208')
  await page.getByRole('button', { name: 'They are in the freezer' }).click()
  await expect(answer(page)).toContainText('208 portions left')
  await expect(page.getByRole('img', { name: /^A tray of 3 by 5 wells/ }).first()).toBeVisible()
  await go(page, '/')
  await expect(answer(page)).toContainText('Tonight: 0.55 mL from the 120 mL bottle')
  await go(page, '/food')
  await page.getByRole('link', { name: /120 mL bottle/ }).click()
  await page.getByText('It is finished').click()
  await page.getByRole('button', { name: 'Nothing more will come out of it' }).click()
  await go(page, '/')
  await expect(answer(page)).toContainText(/Tonight: one portion from tray bag 1, .*freezer. 207 left after that/i)
})

test('more portions than the bottle held is asked about with the numbers, and nothing typed is lost', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/food/bottle/bottle1/freeze')
  await page.getByLabel('How many portions are there?').fill('150')
  await page.getByRole('button', { name: 'They are in the freezer' }).click()
  await expect(said(page, 'needs 150 mL, and the bottle had 120 mL by the book')).toBeVisible()
  await expect(page.getByLabel('How many portions are there?')).toHaveValue('150')
  await page.getByRole('button', { name: /held more/i }).click()
  await expect(answer(page)).toContainText('150 portions left')
})

test('frozen before it was opened is refused with both days in words', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/food/bottle/bottle1/freeze')
  await page.getByLabel('Frozen on').fill('2026-11-01')
  await page.getByRole('button', { name: 'They are in the freezer' }).click()
  await expect(said(page, 'Frozen on 1 November 2026, but opened only on 2 November 2026?')).toBeVisible()
})

test('a day past its last good day is one touch more, and the portions keep twelve months', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.pastBottle()))
  await go(page, '/food/bottle/bottle1/freeze')
  await page.getByRole('button', { name: 'They are in the freezer' }).click()
  await expect(said(page, '5 days past its last good day in the fridge, 20 November 2026')).toBeVisible()
  await page.getByRole('button', { name: /12 months/ }).click()
  await expect(answer(page)).toContainText('good until 25 November 2027')
})

test('a count at the freezer is two numbers, and the gap stays readable', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.trays()))
  await go(page, '/food/lot/blueclip')
  await page.getByText('Count again').click()
  await page.getByRole('group').getByRole('button', { name: /fewer/i }).nth(1).click()
  await expect(page.getByText('63 portions: 1 fewer than the book said.')).toBeVisible()
  await page.getByRole('button', { name: 'Save the count' }).click()
  await expect(answer(page)).toContainText('63 portions left')
  const lines = await diary(page)
  expect(lines[0]).toContain('Counted 63 portions in blue clip, 1 fewer than the book said')
})

test('one fell on the floor: no typing, one fewer', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.trays()))
  await go(page, '/food/lot/blueclip')
  await page.getByText('Dropped or lost some').click()
  await page.getByRole('button', { name: 'dropped it' }).click()
  await page.getByRole('button', { name: 'Take 1 portion off' }).click()
  await expect(answer(page)).toContainText('63 portions left')
})

test('a draft at the freezer survives the app being closed', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/food/bottle/bottle1/freeze')
  await page.getByLabel('How many portions are there?').fill('97')
  await page.waitForTimeout(600)
  await page.close()
  const again = await openApp(context, undefined, './#/food/bottle/bottle1/freeze')
  await expect(again.getByLabel('How many portions are there?')).toHaveValue('97')
})

test('a count that is no whole number stays as typed, and nothing is written down', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/food/bottle/bottle1/freeze')
  const count = page.getByLabel('How many portions are there?')
  const save = page.getByRole('button', { name: 'They are in the freezer' })
  await count.fill('10,5')
  await save.click()
  await expect(count).toHaveValue('10,5')
  await expect(page.getByText('A whole number, please.')).toBeVisible()
  await count.fill('')
  await save.click()
  await expect(count).toHaveAccessibleDescription(/How many\?/)
  expect((await diary(page))[0]).not.toContain('Froze')
})

test('an open tray holds no more than its wells, and an empty field is no count', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.trays()))
  await go(page, '/food/lot/blueclip')
  await page.getByText('Count again').click()
  const open = page.getByLabel('Left in the open tray')
  await open.fill('60')
  await expect(open).toHaveAccessibleDescription('At most 15.')
  await open.fill('')
  await page.getByRole('button', { name: 'Save the count' }).click()
  await expect(open).toHaveAccessibleDescription('How many?')
  await expect(answer(page)).toContainText('64 portions left')
})

test('more than the bottle holds is asked about once, and taken when it is so', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/food/bottle/bottle1')
  await page.getByText('Measure what is left').click()
  await page.getByLabel('How much is left?').fill('300')
  await page.getByRole('button', { name: 'That is what is left' }).click()
  await expect(said(page, 'more than the bottle holds when full, 120 mL. Is it so?')).toBeVisible()
  await page.getByRole('button', { name: /It is so: 300/ }).click()
  await expect(said(page, '300 mL left, measured.')).toBeVisible()
})

test('a form left on another day says since when, and is begun afresh or let go', async ({ context }) => {
  const first = await openApp(context)
  await restore(first, backupOf(households.bottle()))
  await go(first, '/food/bottle/new')
  const size = (page: typeof first) => page.getByLabel('How large is the bottle?')
  await size(first).fill('77')
  await expect(first.getByText(/^Unfinished/)).toHaveCount(0)
  await first.waitForTimeout(600)
  await first.close()
  const later = await openApp(context, '2026-11-27T09:00:00Z', './#/food/bottle/new')
  await expect(later.getByText('Unfinished since 25 November, 20:30.')).toBeVisible()
  await expect(size(later)).toHaveValue('77')
  await later.getByRole('button', { name: 'Start afresh' }).click()
  await expect(size(later)).toHaveValue('120')
  await size(later).fill('88')
  await later.getByRole('button', { name: 'Not now' }).click()
  await later.getByRole('link', { name: 'Log a bottle' }).click()
  await expect(size(later)).toHaveValue('120')
})

test('a bottle without a price offers to add it, and opens there', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/food/bottle/bottle1')
  await page.getByRole('button', { name: 'Add its price' }).click()
  await expect(page.getByLabel('Price', { exact: true })).toBeFocused()
  await page.keyboard.type('99999999')
  await page.getByLabel('Currency').fill('pounds')
  await page.getByRole('button', { name: 'Put it right' }).click()
  await expect(page.getByLabel('Price', { exact: true })).toHaveAccessibleDescription(/Look at the price again/)
  await page.getByLabel('Price', { exact: true }).fill('24')
  await page.getByRole('button', { name: 'Put it right' }).click()
  await expect(page.getByLabel('Currency')).toHaveAccessibleDescription(/A currency has three letters/)
  await page.getByLabel('Currency').fill('GBP')
  await page.getByRole('button', { name: 'Put it right' }).click()
  await expect(page.getByText('£24.00')).toBeVisible()
})

test('the fold with the trays stays open, and keeps the cursor, while a figure in it is being typed', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.bottle()))
  await go(page, '/food/bottle/bottle1/freeze')
  await page.getByText(/^Trays of 3 by 5/).click()
  const rows = page.getByLabel('Rows in a tray')
  for (const typed of ['', '0', '4', 'x', '', '3']) {
    await rows.fill(typed)
    await expect(rows).toBeVisible()
    await expect(rows).toBeFocused()
  }
})
