/** The made-up household: everything can be tried on it, the real book lies untouched meanwhile, and nothing of it stays. */
import { type BrowserContext, expect, type Page, test } from '@playwright/test'
import { answer, beginWithBottle, diary, dosed, go, openApp } from './keeper.ts'
import { keptOutside, theBook } from './keeping.ts'

test.use({ timezoneId: 'Europe/London' })

const bar = (page: Page) => page.getByRole('complementary', { name: 'Made-up data' })
const stands = async (page: Page): Promise<void> => {
  await expect(bar(page)).toBeVisible()
  await expect(page.getByRole('heading', { level: 1, name: 'Tonight' })).toBeVisible()
}
const enter = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Look round with made-up data' }).click()
  await stands(page)
}
const leave = (page: Page) => bar(page).getByRole('button', { name: 'Leave it' }).click()
/** What the app does by itself once it is idle is done: nothing was written for a second and a half. */
const settled = async (page: Page): Promise<void> => {
  let then = ''
  for (let now = await theBook(page); now !== then; now = await theBook(page)) {
    then = now
    await page.waitForTimeout(1_500)
  }
}
const firstEvening = (page: Page) => page.getByRole('button', { name: 'Begin' })

const databases = (page: Page): Promise<string[]> =>
  page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name ?? '').sort())
const real = ['smallhours', 'smallhours-device']
const both = ['smallhours', 'smallhours-device', 'smallhours-madeup', 'smallhours-madeup-device']

/** Writes down which databases a page opens, from its beginning. */
const watchOpening = (context: BrowserContext) =>
  context.addInitScript(() => {
    const opened: string[] = []
    const open = IDBFactory.prototype.open
    IDBFactory.prototype.open = function (...asked) {
      opened.push(asked[0])
      return open.apply(this, asked)
    }
    window.opened = opened
  })
const openedBy = async (page: Page): Promise<string[]> =>
  [...new Set(await page.evaluate(() => window.opened ?? []))].sort()

test('a new keeper looks round, doses, takes it back, reloads, leaves: the first evening is there and nothing else', async ({
  context,
}) => {
  await watchOpening(context)
  const page = await openApp(context)
  await expect(firstEvening(page)).toBeVisible()
  await page.getByLabel('How much water is in it?').fill('321')
  await enter(page)
  await expect(answer(page)).toContainText('Tonight: 1 mL')
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for Wednesday night')
  await page.getByRole('button', { name: /^Undo/ }).click()
  await expect(dosed(page)).toBeVisible()
  for (const [room, title] of [
    ['/food', 'Food'],
    ['/water', 'Water'],
    ['/diary', 'Diary'],
    ['/phone', 'This phone'],
  ] as const) {
    await go(page, room)
    await expect(page.getByRole('heading', { level: 1, name: title })).toBeVisible()
    await expect(bar(page)).toBeVisible()
  }
  await expect(page.getByText('Your own book lies untouched meanwhile.')).toBeVisible()
  await expect(page.getByRole('button', { name: /backup|Ask/ })).toHaveCount(0)
  await expect(page.locator('input[type="file"]')).toHaveCount(0)
  await page.getByRole('radio', { name: 'Always night' }).click()
  await expect(page.locator('html')).toHaveAttribute('data-look', 'night')

  await go(page, '/')
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for Wednesday night')
  await go(page, '/water/tank/new')
  await page.getByLabel('How much water is in it?').fill('55')
  await page.reload()
  await expect(page.getByLabel('How much water is in it?')).toHaveValue('55')
  await expect(bar(page)).toBeVisible()
  await expect(page.locator('html')).toHaveAttribute('data-look', 'night')
  expect((await diary(page)).join('\n')).toContain('Gave Long Gallery 1 mL of Green food')
  expect(await openedBy(page)).toEqual(['smallhours-madeup', 'smallhours-madeup-device'])

  const another = await openApp(context)
  await expect(firstEvening(another)).toBeVisible()
  await expect(bar(another)).toHaveCount(0)
  await another.close()

  // The last thing typed, in the instant before it is left.
  await go(page, '/water/tank/new')
  await page.getByLabel('How much water is in it?').fill('56')
  await bar(page).getByRole('button', { name: 'Leave it' }).focus()
  await page.keyboard.press('Enter')
  await expect(firstEvening(page)).toBeVisible()
  await expect(bar(page)).toHaveCount(0)
  await expect(page.locator('html')).toHaveAttribute('data-look', 'day')
  await expect(page.getByLabel('How much water is in it?')).toHaveValue('321')
  await expect.poll(() => databases(page)).toEqual(real)
  expect(await keptOutside(page)).toEqual([])
  expect(await diary(page)).toEqual([])
})

test.describe('without a worker', () => {
  // Its arrival is noted among this phone's matters, whenever it comes.
  test.use({ serviceWorkers: 'block' })
  // It waits several times for the app to be idle.
  test.slow()

  test('a real book is byte for byte the same afterwards', async ({ context }) => {
    await watchOpening(context)
    const page = await openApp(context)
    await beginWithBottle(page)
    await dosed(page).click()
    await go(page, '/water/tank/new')
    await page.getByLabel('How much water is in it?').fill('77')
    await page.reload()
    await go(page, '/phone')
    await expect(page.getByRole('heading', { level: 1, name: 'This phone' })).toBeVisible()
    await settled(page)
    const before = await theBook(page)
    // Her own last words, which wait for her beside the book.
    const beside = await keptOutside(page)
    expect(before).toContain('bottleRecorded')
    expect(before).toContain('"77"')

    await enter(page)
    await expect(answer(page)).toContainText('Tonight: 1 mL')
    await dosed(page).click()
    await expect(answer(page)).toContainText('Done for Wednesday night')
    await go(page, '/water/tank/new')
    await expect(page.getByLabel('How much water is in it?')).toHaveValue('')
    await page.getByLabel('How much water is in it?').fill('88')
    await page.reload()
    await expect(page.getByLabel('How much water is in it?')).toHaveValue('88')
    await page.waitForTimeout(1_500)
    expect(await openedBy(page)).toEqual(['smallhours-madeup', 'smallhours-madeup-device'])
    expect(await theBook(page)).toBe(before)

    await leave(page)
    await expect(bar(page)).toHaveCount(0)
    await expect(answer(page)).toContainText('Done for Wednesday night: 0.55 mL')
    await expect.poll(() => databases(page)).toEqual(real)
    expect(await theBook(page)).toBe(before)
    expect(await keptOutside(page)).toEqual(beside)
    expect((await diary(page)).join('\n')).not.toContain('Long Gallery')
  })
})

test('one that was left behind is deleted at the next start, unless a tab is still in it', async ({ context }) => {
  const inIt = await openApp(context)
  await enter(inIt)
  await dosed(inIt).click()
  await expect(answer(inIt)).toContainText('Done for Wednesday night')

  const next = await openApp(context)
  await expect(firstEvening(next)).toBeVisible()
  await next.waitForTimeout(2_500)
  expect(await databases(next)).toEqual(both)
  await inIt.reload()
  await expect(answer(inIt)).toContainText('Done for Wednesday night')

  await inIt.close()
  await next.reload()
  await expect(firstEvening(next)).toBeVisible()
  await expect.poll(() => databases(next)).toEqual(real)
})

test('a leaving that was cut short is finished by the next start', async ({ context }) => {
  const page = await openApp(context)
  await enter(page)
  // Held open by something that does not make way until the page goes.
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        indexedDB.open('smallhours-madeup').onsuccess = () => resolve()
      }),
  )
  await leave(page)
  await expect(firstEvening(page)).toBeVisible()
  await expect.poll(() => databases(page)).toEqual(real)
  expect(await keptOutside(page)).toEqual([])
})

test('two tabs may be in it, and the last to leave takes it along', async ({ context }) => {
  const one = await openApp(context)
  await enter(one)
  const two = await openApp(context)
  await enter(two)
  await dosed(two).click()
  await expect(answer(one)).toContainText('Done for Wednesday night')
  await leave(one)
  await expect(firstEvening(one)).toBeVisible()
  expect(await databases(one)).toEqual(both)
  await two.reload()
  await expect(answer(two)).toContainText('Done for Wednesday night')
  await leave(two)
  await expect(firstEvening(two)).toBeVisible()
  await expect.poll(() => databases(two)).toEqual(real)
})
