/** A dose written down exactly: shared, in part, at another time, and far too much. */
import { expect, type Page, test } from '@playwright/test'
import { households } from './households.ts'
import { answer, backupOf, diary, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

const form = async (page: Page): Promise<Page> => {
  await restore(page, backupOf(households.dueInBoth()))
  await go(page, '/dose/greenplan')
  await expect(page.getByRole('heading', { level: 1, name: 'A dose' })).toBeVisible()
  return page
}
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click()
const choose = (page: Page, name: string | RegExp) => page.getByRole('radio', { name }).check()

test('one portion shared over two tanks is one act, by the water in each', async ({ context }) => {
  const page = await form(await openApp(context))
  await press(page, 'Cockle')
  await choose(page, /^Blue clip/)
  await expect(page.getByLabel('What reached Long Gallery')).toHaveValue('0.75')
  await expect(page.getByLabel('What reached Cockle')).toHaveValue('0.25')
  await press(page, 'Note it')
  await expect(said(page, 'Noted. Gave Long Gallery 0.75 mL')).toBeVisible()
  await page.getByRole('link', { name: 'Back to Tonight' }).click()
  await expect(answer(page)).toContainText('Done for Wednesday night, Long Gallery')
  await expect(said(page, 'done: 0.25 mL at 20:30')).toBeVisible()
  const [last] = await diary(page)
  expect(last).toContain('Gave Long Gallery 0.75 mL of Green food and Cockle 0.25 mL of Green food: 1 portion')
})

test('half of a portion: the stock is one less, and half of it reached the water', async ({ context }) => {
  const page = await form(await openApp(context))
  await choose(page, /^Blue clip/)
  await choose(page, 'Half')
  await expect(page.getByLabel('What reached Long Gallery')).toHaveValue('0.5')
  await press(page, 'Note it')
  await expect(said(page, 'Noted. Gave Long Gallery 0.5 mL')).toBeVisible()
  const [last] = await diary(page)
  expect(last).toContain('Gave Long Gallery 0.5 mL of Green food: 1 portion from blue clip')
})

test('at another time: an earlier night is added, one to come is not', async ({ context }) => {
  const page = await form(await openApp(context))
  await choose(page, 'At another time')
  await page.getByLabel(/^At what time/).fill('22:30')
  await press(page, 'Note it')
  await expect(said(page, '22:30 has not come yet.')).toBeVisible()
  await page.getByLabel('On which day?').fill('2026-11-23')
  await expect(said(page, 'That is Monday night, 23 November.')).toBeVisible()
  await press(page, 'two were stuck together')
  await press(page, 'Note it')
  await expect(said(page, 'Noted. Gave Long Gallery 1 mL of Green food')).toBeVisible()
  const lines = await diary(page)
  expect(lines.some((line) => /22:30.*added later.*Gave Long Gallery 1 mL.*two were stuck together/.test(line))).toBe(
    true,
  )
})

test('nothing is lost when the form is left half-filled', async ({ context }) => {
  const page = await form(await openApp(context))
  await page.getByLabel('How much was poured?').fill('1,5')
  await press(page, 'something else')
  await page.getByLabel('In your own words').fill('guests')
  await page.reload()
  await expect(page.getByLabel('How much was poured?')).toHaveValue('1,5')
  await expect(page.getByLabel('In your own words')).toHaveValue('guests')
})

test.describe('a thousand millilitres', () => {
  const pour = async (page: Page) => {
    await page.getByLabel('How much was poured?').fill('1000')
    await press(page, 'Note it')
    await expect(said(page, 'That is 500 × the top of the range')).toBeVisible()
  }

  test('was a slip of the point: one touch', async ({ context }) => {
    const page = await form(await openApp(context))
    await pour(page)
    await expect(page.getByRole('button', { name: /^I meant 10\smL$/ })).toBeVisible()
    await press(page, /^I meant 1\smL$/)
    await expect(said(page, 'Noted. Gave Long Gallery 1 mL')).toBeVisible()
  })

  test('really: with a word of why, then how the bottle of 96 held it; the bottle keeps its figure', async ({
    context,
  }) => {
    const page = await form(await openApp(context))
    await pour(page)
    await press(page, 'It is so: note it')
    await expect(page.getByText('A word or two, please.')).toBeVisible()
    await page.getByLabel('How did it come about?').fill('the whole jug')
    await press(page, 'It is so: note it')
    await expect(said(page, 'That is 1,000 mL; the bottle has 96 mL by the book.')).toBeVisible()
    await press(page, 'Note it; I’ll look later')
    await expect(said(page, 'Noted. Gave Long Gallery 1,000 mL')).toBeVisible()
    await go(page, '/')
    await expect(said(page, 'done: 1,000 mL at 20:30')).toBeVisible()
    await expect(page.getByText(/nothing was taken off it yet/)).toBeVisible()
    await go(page, '/food/bottle/bottle1')
    await expect(said(page, '96 mL').first()).toBeVisible()
  })
})
