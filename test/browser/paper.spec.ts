/** Labels and a month on paper: printed as pages, and what the pen ticked put into the book. */
import { expect, type Page, test } from '@playwright/test'
import { type Household, households } from './households.ts'
import { answer, backupOf, diary, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

const begin = async (page: Page, household: Household, where: string): Promise<void> => {
  await restore(page, backupOf(households[household]()))
  await go(page, where)
}
const fold = async (page: Page, name: string): Promise<void> => {
  await page.locator('summary').filter({ hasText: name }).click()
}
/** Pages of the file a printer would get. */
const pagesOf = async (page: Page, format: 'A4' | 'Letter'): Promise<number> => {
  const file = (await page.pdf({ format })).toString('latin1')
  return file.match(/\/Type\s*\/Page\b/g)?.length ?? 0
}
/** What stands on the paper and nothing else, by the words that are drawn. */
const printed = async (page: Page): Promise<string> => {
  await page.emulateMedia({ media: 'print' })
  // biome-ignore lint/performance/useDomNodeTextContent: what is not drawn is not printed
  const text = await page.evaluate(() => document.body.innerText)
  // Whatever is asked for next decides: a printer takes the paper.
  await page.emulateMedia({ media: null })
  return text.replace(/\s+/g, ' ')
}

test('a bag’s label says in words what it is, has a square a portion, and fits one page of either size', async ({
  context,
}) => {
  await context.addInitScript(() => {
    window.print = () => {
      document.title = 'printed'
    }
  })
  const page = await openApp(context)
  await begin(page, 'ticked', '/food/lot/blueclip')
  await fold(page, 'What to write on the bag')
  await page.getByRole('link', { name: 'A label with squares to tick' }).click()
  await expect(answer(page)).toHaveText('A label for one bag.')
  await expect(page.getByRole('img', { name: '40 squares, ten in a row; the first 9 ticked.' })).toBeVisible()
  await page.getByRole('button', { name: 'Print', exact: true }).click()
  await expect(page).toHaveTitle('printed')

  expect(await printed(page)).toBe(
    [
      'blue clip Green food, 1 mL each Frozen 1 October 2026 Good until 1 October 2028 Kitchen freezer NOT FOOD',
      'For a fish tank. Not for people. 10 20 30 40 Take one out, push one through: a stroke of the pen for each portion.',
    ].join(' '),
  )
  expect(await pagesOf(page, 'A4')).toBe(1)
  expect(await pagesOf(page, 'Letter')).toBe(1)

  await page.getByRole('radio', { name: 'Copy them by hand' }).check()
  await expect(said(page, '40 squares, ten in a row; the first 9 ticked.')).toBeVisible()
  // The answer is kept where she left it.
  await page.reload()
  await expect(page.getByRole('radio', { name: 'Copy them by hand' })).toBeChecked()
})

test('a label made at night is black on white', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'ticked', '/food/labels')
  await expect(answer(page)).toHaveText('A label for one bag.')
  const colours = () =>
    page.evaluate(() => {
      document.documentElement.dataset.look = 'night'
      const paper = getComputedStyle(document.documentElement)
      const label = getComputedStyle(document.querySelector('.label-mark') ?? document.body)
      return [paper.backgroundColor, label.color]
    })
  expect(await colours()).toEqual(['rgb(0, 0, 0)', 'rgb(255, 0, 0)'])
  await page.emulateMedia({ media: 'print' })
  expect(await colours()).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)'])
})

test('what is set aside, thawed or past has a label only by hand, and it says so', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'doubtfulBags', '/food/labels')
  await expect(answer(page)).toHaveText('A label for one bag.')
  for (const name of ['redclip, set aside', 'greypeg, thawed', 'oldtin, past its day'])
    await page.getByRole('button', { name, exact: true }).click()
  await expect(answer(page)).toHaveText('Labels for four bags.')
  const label = (name: string) => page.locator('.label').filter({ hasText: name })
  await expect(label('redclip')).toContainText('Set aside')
  await expect(label('greypeg')).toContainText(/Thawed 25\sNovember 2026: by 26\sNovember 2026/)
  await expect(label('oldtin')).toContainText(/Past since 1\sAugust 2026/)
  await expect(label('blue clip').locator('.label-warning')).toHaveCount(0)
})

test('twelve bags and sixty are chosen by themselves, and go on as many pages as they need', async ({ context }) => {
  test.setTimeout(90_000)
  const page = await openApp(context)
  await begin(page, 'sixtyBags', '/food/labels')
  await expect(answer(page)).toHaveText('Labels for 60 bags.')
  const pages = await pagesOf(page, 'A4')
  expect(pages).toBeGreaterThanOrEqual(10)
  expect(pages).toBeLessThanOrEqual(18)
  await fold(page, 'Choose the bags')
  await page.getByRole('button', { name: 'None' }).click()
  await expect(answer(page)).toHaveText('No bag is chosen yet.')
  await page.getByRole('button', { name: 'All in use' }).click()
  await expect(answer(page)).toHaveText('Labels for 60 bags.')
})

test('14 ticked, where the book has nine: five more on nights not known, and one touch takes it back', async ({
  context,
}) => {
  const page = await openApp(context)
  await begin(page, 'ticked', '/food/lot/blueclip')
  await expect(answer(page)).toContainText(/31\sportions left/)
  await fold(page, 'Ticks made with a pen')
  await page.getByLabel('How many squares are ticked?').fill('14')
  await expect(
    said(
      page,
      '14 ticked: the book has 9 doses from it; five more between 14 and 24 November, nights not known. That leaves 26 portions.',
    ),
  ).toBeVisible()
  // Typed is typed, whatever becomes of the phone.
  await page.reload()
  await fold(page, 'Ticks made with a pen')
  await expect(page.getByLabel('How many squares are ticked?')).toHaveValue('14')
  await page.getByRole('button', { name: 'Enter the ticks' }).click()
  await expect(said(page, 'Entered: five more doses; 26 portions left.')).toBeVisible()
  await expect(answer(page)).toContainText(/26\sportions left/)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(answer(page)).toContainText(/31\sportions left/)
})

test('fewer ticks than the book has are asked about, more than there are squares refused', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'ticked', '/food/labels')
  await fold(page, 'Ticks made with a pen')
  const field = page.getByLabel('How many squares are ticked?')
  await field.fill('41')
  await expect(said(page, 'This bag has only 40 squares that can be ticked.')).toBeVisible()
  await field.fill('7')
  await expect(said(page, '7 ticked, but the book has 9 portions given from it. Which is right?')).toBeVisible()
  await page.getByRole('button', { name: 'The book is right' }).click()
  await expect(said(page, 'Tick two more squares with the pen, then both agree.')).toBeVisible()
  await field.fill('7')
  await page.getByRole('button', { name: /^The squares are right: 33/ }).click()
  await expect(said(page, 'Set to 33 portions left.')).toBeVisible()
  expect((await diary(page))[0]).toContain('Counted 33 portions in blue clip, 2 more than the book said')
})

test('a month for two tanks fits one page, with what to take, its nights and the first without food', async ({
  context,
}) => {
  const page = await openApp(context)
  await begin(page, 'monthOnPaper', '/food/paper')
  // In the last week of a month the next one is offered first.
  await expect(answer(page)).toHaveText('December 2026: 16 dose nights for Long Gallery and 31 dose nights for Cockle.')
  const text = await printed(page)
  expect(text).not.toContain('Which month?')
  for (const line of [
    'Lights out 21:00, dose at 21:20.',
    'One dose is 1 mL: one portion from blue clip, kitchen freezer.',
    'From Monday 7, 1 mL: two portions from redclip, boathouse freezer.',
    'First night without food: Sunday 13.',
    'Lights out 21:30, dose at 21:50.',
    'One dose is 0.3 mL from the 120 mL bottle of Amber food, kitchen fridge.',
    'Never two in one night. Never make up for a night that was missed. If unsure whether it was given, skip',
    'Shake every day: the 120 mL bottle of Amber food, kitchen fridge.',
    'NOT FOOD for people. Wash your hands.',
    'Lost, dropped or given away',
  ])
    expect(text).toContain(line)
  expect(await pagesOf(page, 'A4')).toBe(1)
  expect(await pagesOf(page, 'Letter')).toBe(1)
  await page.getByRole('radio', { name: 'November 2026, from Wednesday 25' }).check()
  await expect(answer(page)).toHaveText(
    'November 2026, from Wednesday 25: three dose nights for Long Gallery and five dose nights for Cockle.',
  )
})

test('without food, without a plan and without a tank the month says what is missing', async ({ browser, context }) => {
  const page = await openApp(context)
  await begin(page, 'nothingLeft', '/food/paper')
  await expect(said(page, 'No food for it is on record: there is nothing to take on these nights.')).toBeVisible()
  const other = await openApp(await browser.newContext())
  await go(other, '/food/paper')
  await expect(answer(other)).toHaveText('No tank is on record yet, so there is nothing to put on paper.')
  await begin(other, 'tankOnly', '/food/paper')
  await expect(answer(other)).toContainText('No plan says yet')
  await other.getByRole('link', { name: 'Make a plan' }).click()
  await expect(other.getByRole('heading', { level: 1, name: 'Water' })).toBeVisible()
  await other.context().close()
})
