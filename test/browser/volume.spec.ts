/** How much water there truly is: a bow front measured, its volume read off, and which volume held from when. */
import { expect, type Page, test } from '@playwright/test'
import { answer, beginWithBottle, dosed, go, openApp, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

const form = async (page: Page) => {
  await go(page, '/water')
  await page.getByRole('link', { name: 'Change this tank' }).click()
  await page.getByText('Make it more exact').click()
}
const bowFront = [
  ['Length', '120'],
  ['Width at the ends, front to back', '45'],
  ['How far the bow stands out', '10'],
  ['Height of the tank', '60'],
  ['Glass of the sides', '12'],
  ['Glass of the bottom', '15'],
  ['Water below the rim', '4'],
  ['Depth of the sand', '3,5'],
  ['Weight of the rock, dry', '28'],
  ['Running water in the sump', '62'],
] as const

test('a bow front says its volume while it is typed, survives a reload, and its history has dates', async ({
  context,
}) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for Wednesday night')
  // A week later she measures.
  await page.clock.setSystemTime(new Date('2026-12-02T19:00:00Z'))
  await page.reload()
  await form(page)
  await page.getByRole('radio', { name: 'Rectangle with a bow front' }).check()
  await page.getByRole('radio', { name: 'Outside, over the glass' }).check()
  await page.getByRole('radio', { name: 'Depth of sand and weight of rock' }).check()
  for (const [label, typed] of bowFront) await page.getByLabel(label, { exact: true }).fill(typed)
  const truth = page.locator('.fact', { hasText: 'True volume' })
  await expect(truth).toContainText('about 353 litres')
  for (const [term, fact] of [
    ['In US gallons', 'about 93.1'],
    ['As sand and rock differ', 'about 346 to 356 litres'],
    ['The number you go by', 'about 400 litres'],
  ] as const)
    await expect(page.locator('.fact', { hasText: term })).toContainText(fact)
  // In sight where she types, however far down.
  await page.getByLabel('Running water in the sump').scrollIntoViewIfNeeded()
  await expect(truth).toBeInViewport()
  await page.waitForTimeout(600)
  await page.reload()
  await page.getByText('Make it more exact').click()
  await expect(page.getByLabel('How far the bow stands out')).toHaveValue('10')
  await expect(truth).toContainText('about 353 litres')
  await page.getByRole('radio', { name: 'The true volume' }).check()
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(answer(page)).toContainText('about 353 litres, lights out')
  await page.getByText('How much water, from when').click()
  const lines = page.locator('details', { hasText: 'How much water, from when' }).locator('.line')
  await expect(lines).toHaveText([
    /from Wednesday, 2.December.*about 400 litres; truly about 353 litres/,
    /from Wednesday, 25.November.*about 400 litres/,
  ])
  await expect(lines.nth(1)).not.toContainText('truly')
  await expect(page.getByText('What it was before')).toHaveCount(0)
  // The dose of that Wednesday stands as it was given.
  await go(page, '/diary')
  await expect(said(page, '0.55 mL').first()).toBeVisible()
  await expect(page.getByText(/the top of the range/)).toHaveCount(0)
})

test('a bow too deep and a measure left out are said beside their fields, and nothing typed is lost', async ({
  context,
}) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await form(page)
  await page.getByRole('radio', { name: 'Rectangle with a bow front' }).check()
  await page.getByLabel('Length', { exact: true }).fill('1.200')
  await page.getByLabel('How far the bow stands out').fill('0')
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(page.getByText(/can be read two ways: 1.2 or 1,200/)).toBeVisible()
  await expect(page.getByText('This has to be more than 0.')).toBeVisible()
  await expect(page.getByText('Nothing is entered here yet.')).toHaveCount(2)
  await page.getByLabel('Length', { exact: true }).fill('90')
  await page.getByLabel('Width at the ends, front to back').fill('40')
  await page.getByLabel('Height of the water').fill('45')
  await page.getByLabel('How far the bow stands out').fill('46')
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(said(page, 'at most half the length of the front, 45 cm here')).toBeVisible()
  await expect(page.getByLabel('How far the bow stands out')).toHaveValue('46')
})

test('a fill of 20,000 litres is asked about, and taken with one touch', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await form(page)
  await page.getByLabel('A measured fill, if you have one').fill('20000')
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(page.getByText('20,000 litres is bigger than a van. Is that right?')).toBeVisible()
  await page.getByRole('button', { name: 'Yes, it is that big' }).click()
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(page.getByText('about 20,000 litres', { exact: true })).toBeVisible()
})
