/** A new version comes while the app is in use. */
import { type BrowserContext, expect, type Page, test } from '@playwright/test'
import { type Site, site } from './harness/site.ts'

let host: Site
test.beforeAll(async () => {
  host = await site(['first', 'second'])
})
test.afterAll(() => host.close())
test.beforeEach(() => host.publish('first'))

const open = async (context: BrowserContext): Promise<Page> => {
  const page = await context.newPage()
  await page.goto(host.address)
  await page.evaluate(() => window.harness.started.then(() => window.harness.watchForUpdates()))
  await page.evaluate(() => navigator.serviceWorker.ready)
  return page
}
const lookForUpdate = (page: Page) =>
  page.evaluate(() => navigator.serviceWorker.getRegistration().then((registration) => registration?.update()))

test('it says once that it works offline, and then it does', async ({ context }) => {
  const page = await open(context)
  await expect(page.getByText('offline: ready')).toBeVisible()
  await page.evaluate(() => window.harness.add('shelf'))
  await context.setOffline(true)
  await page.goto(`${host.address}?from=home#/anywhere`)
  await expect(page.getByText('places: 1')).toBeVisible()
  const backup = await page.evaluate(() => window.harness.makeBackup().then(({ ok }) => ok))
  expect(backup).toBe(true)
  await page.evaluate(() => window.harness.watchForUpdates())
  await expect(page.getByText('offline: not said')).toBeVisible()
})

test('it waits until one tab takes it; then every tab keeps its draft and comes back in the new version', async ({
  context,
}) => {
  const [one, two] = [await open(context), await open(context)]
  await one.getByLabel('Note').fill('half a word')
  host.publish('second')
  await lookForUpdate(one)
  await expect(two.getByRole('button', { name: 'Take the new version' })).toBeVisible()
  await expect(one.getByText('edition: first')).toBeVisible()
  await expect(one.getByLabel('Note')).toHaveValue('half a word')
  let loads = 0
  for (const page of [one, two]) page.on('load', () => loads++)
  await two.getByRole('button', { name: 'Take the new version' }).click()
  await expect(one.getByText('edition: second')).toBeVisible()
  await expect(two.getByText('edition: second')).toBeVisible()
  await expect(one.getByLabel('Note')).toHaveValue('half a word')
  await one.waitForTimeout(500)
  expect(loads).toBe(2)
})

test('a tab that did not hear of it moves on when it needs a part that is gone', async ({ context }) => {
  const deaf = await context.newPage()
  await deaf.addInitScript(() => {
    const listen = ServiceWorkerContainer.prototype.addEventListener
    ServiceWorkerContainer.prototype.addEventListener = function (
      this: ServiceWorkerContainer,
      ...given: Parameters<typeof listen>
    ) {
      if (given[0] !== 'controllerchange') listen.apply(this, given)
    }
  })
  await deaf.goto(host.address)
  await deaf.evaluate(() => window.harness.started.then(() => window.harness.watchForUpdates()))
  const other = await open(context)
  await deaf.getByLabel('Note').fill('half a word')
  host.publish('second')
  await lookForUpdate(other)
  await other.getByRole('button', { name: 'Take the new version' }).click()
  await expect(other.getByText('edition: second')).toBeVisible()
  await expect(deaf.getByText('edition: first')).toBeVisible()
  await deaf.evaluate(() => void window.harness.makeBackup())
  await expect(deaf.getByText('edition: second')).toBeVisible()
  await expect(deaf.getByLabel('Note')).toHaveValue('half a word')
})

test('what is being recorded when the page moves to a new version is there afterwards, once', async ({ context }) => {
  const page = await open(context)
  await page.evaluate(() => {
    void window.harness.add('tapped in that moment')
    void window.harness.flushAndReload()
  })
  await page.waitForEvent('load')
  await page.evaluate(() => window.harness.started)
  expect(await page.evaluate(() => window.harness.names())).toEqual(['tapped in that moment'])
})
