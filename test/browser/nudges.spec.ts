/**
 * Nudges, as a person gets them: on the glass of a real browser's notification service, touched for real. The worker keeps
 * the real clock, so the household is made for it: its lamp went out, or is about to, at the right minute before now.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium, expect, type Page, test } from '@playwright/test'
import { moment } from '../../core/index.ts'
import { type Bell, hangBell } from './bell.ts'
import { diary, go, restore, said } from './keeper.ts'
import { nudgedAt, pumpsOffAt } from './nudged.ts'

// Each starts a browser of its own.
test.describe.configure({ timeout: 90_000 })

let bell: Bell
let disk: string
let context: BrowserContext

test.beforeEach(async ({ baseURL, launchOptions, viewport }) => {
  bell = await hangBell()
  disk = mkdtempSync(join(tmpdir(), 'smallhours-'))
  context = await chromium.launchPersistentContext(disk, {
    ...launchOptions,
    ...(baseURL === undefined ? {} : { baseURL }),
    viewport,
    timezoneId: 'Europe/London',
    env: { ...process.env, DBUS_SESSION_BUS_ADDRESS: bell.address } as Record<string, string>,
  })
  await context.grantPermissions(['notifications'], { origin: new URL(baseURL ?? '').origin })
})
test.afterEach(async () => {
  await context.close()
  await bell.stop()
  rmSync(disk, { recursive: true, force: true, maxRetries: 5 })
})

const minute = 60_000
const open = async (where = './'): Promise<Page> => {
  const page = await context.newPage()
  page.on('pageerror', (error) => {
    throw error
  })
  await page.goto(where)
  return page
}
/** The book of a household whose nudge is planned for this moment, and her wish to be nudged. */
const begin = async (planned: number): Promise<Page> => {
  const page = await open()
  await page.evaluate(() => navigator.serviceWorker.ready)
  await restore(page, nudgedAt(planned))
  await go(page, '/phone/reminders')
  await page.getByRole('radio', { name: 'Yes, while Smallhours is open' }).click()
  await expect(page.getByText(/^Next:/)).toBeVisible()
  return page
}
const thisMinute = () => Math.floor(Date.now() / minute) * minute
const given = async (page: Page) => (await diary(page)).filter((line) => line.includes('Gave Long Gallery'))
const madeUpBar = (page: Page) => page.getByRole('complementary', { name: 'Made-up data' })
/** All workers, as the browser stops one that has nothing to do. */
const stopWorkers = async (page: Page) => {
  const session = await context.newCDPSession(page)
  const stopped = new Promise<void>((resolve) =>
    session.on('ServiceWorker.workerVersionUpdated', ({ versions }) => {
      if (versions.length > 0 && versions.every(({ runningStatus }) => runningStatus === 'stopped')) resolve()
    }),
  )
  await session.send('ServiceWorker.enable')
  await session.send('ServiceWorker.stopAllWorkers')
  await stopped
  await session.detach()
}

test('a nudge comes at its minute, and once, however many tabs are open and reloaded', async () => {
  test.setTimeout(150_000)
  // Far enough ahead to get ready for, and no further.
  const planned = thisMinute() + (Date.now() - thisMinute() < 25_000 ? minute : 2 * minute)
  const page = await begin(planned)
  const other = await open()
  await expect(other.getByRole('button', { name: /^Dosed/ })).toBeVisible()
  expect(bell.rung).toEqual([])
  await expect.poll(() => bell.rung.length, { timeout: 130_000, intervals: [100] }).toBe(1)
  expect(Date.now() - planned).toBeGreaterThanOrEqual(0)
  expect(Date.now() - planned).toBeLessThan(10_000)
  const [nudge] = bell.rung
  expect(nudge?.title).toContain('Long Gallery, tonight')
  expect(nudge?.body.replace(/\s/g, ' ')).toMatch(
    /One portion from blue clip, kitchen freezer\. Planned for \d\d:\d\d\./,
  )
  await other.reload()
  await expect(other.getByRole('button', { name: /^Dosed/ })).toBeVisible()
  await page.bringToFront()
  await page.waitForTimeout(2_000)
  expect(bell.rung).toHaveLength(1)
  expect(await page.evaluate(async () => (await (await navigator.serviceWorker.ready).getNotifications()).length)).toBe(
    1,
  )
})

test('"Dosed" touched on it is one dose, in every tab, although it is touched twice', async () => {
  const page = await begin(thisMinute())
  const other = await open()
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBe(1)
  const [nudge] = bell.rung
  if (!nudge) throw new Error('Nothing was shown')
  bell.touch(nudge, 'Dosed')
  bell.touch(nudge, 'Dosed')
  await expect.poll(() => bell.rung.at(-1)?.title, { timeout: 20_000 }).toBe('Noted')
  await page.waitForTimeout(1_000)
  expect(bell.rung.slice(1).map(({ title }) => title)).not.toContain('Not noted')
  expect(bell.rung.at(-1)?.body.replace(/\s/g, ' ')).toContain('Dosed 1 mL for Long Gallery. Undo is in the app.')
  await go(page, '/')
  await expect(page.locator('.page-answer')).toContainText('Done for')
  await expect(other.locator('.page-answer')).toContainText('Done for')
  expect(await given(page)).toHaveLength(1)
})

test('"Dosed" wakes a worker that was stopped, and nothing is asked of any other origin', async ({ baseURL }) => {
  const asked: string[] = []
  context.on('request', (request) => asked.push(request.url()))
  const page = await begin(thisMinute())
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBe(1)
  const [nudge] = bell.rung
  if (!nudge) throw new Error('Nothing was shown')
  await stopWorkers(page)
  bell.touch(nudge, 'Dosed')
  await expect.poll(() => bell.rung.at(-1)?.title, { timeout: 20_000 }).toBe('Noted')
  await go(page, '/')
  await expect(page.locator('.page-answer')).toContainText('Done for')
  expect(await given(page)).toHaveLength(1)
  const { origin } = new URL(baseURL ?? '')
  expect(asked.filter((url) => !url.startsWith(origin) && !url.startsWith('blob:'))).toEqual([])
})

test('"Dosed" is noted with every page closed, under the id this phone has', async () => {
  const page = await begin(thisMinute())
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBe(1)
  const [nudge] = bell.rung
  if (!nudge) throw new Error('Nothing was shown')
  await context.newPage()
  await page.close()
  bell.touch(nudge, 'Dosed')
  await expect.poll(() => bell.rung.at(-1)?.title, { timeout: 20_000 }).toBe('Noted')
  const later = await open()
  await expect(later.locator('.page-answer')).toContainText('Done for')
  expect(await given(later)).toHaveLength(1)
})

test('what was noted in the app meanwhile takes the nudge off the screen', async () => {
  const page = await begin(thisMinute())
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBe(1)
  await go(page, '/')
  await page.getByRole('button', { name: /^Dosed/ }).click()
  await expect.poll(() => bell.takenAway).toContain(bell.rung[0]?.id)
})

test('a touch beside the button opens the app', async () => {
  const page = await begin(thisMinute())
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBe(1)
  const [nudge] = bell.rung
  if (!nudge) throw new Error('Nothing was shown')
  await context.newPage()
  await page.close()
  const opening = context.waitForEvent('page')
  bell.touchBody(nudge)
  const opened = await opening
  await expect(opened.getByRole('button', { name: /^Dosed/ })).toBeVisible()
})

test('a touch beside the button leaves a tab that looks round alone', async () => {
  const page = await begin(thisMinute())
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBe(1)
  const [nudge] = bell.rung
  if (!nudge) throw new Error('Nothing was shown')
  await go(page, '/phone')
  await page.getByRole('button', { name: 'Look round with made-up data' }).click()
  await expect(madeUpBar(page)).toBeVisible()
  const opening = context.waitForEvent('page')
  bell.touchBody(nudge)
  const opened = await opening
  await expect(opened.getByRole('button', { name: /^Dosed/ })).toBeVisible()
  await expect(madeUpBar(opened)).toHaveCount(0)
})

test('pumps that are off past their hour ring by themselves, and a touch opens that night', async () => {
  const page = await open()
  await page.evaluate(() => navigator.serviceWorker.ready)
  await restore(page, pumpsOffAt(moment(Date.now() - 77.5 * minute)))
  await go(page, '/phone/reminders')
  await page.getByRole('radio', { name: 'Yes, while Smallhours is open' }).click()
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBeGreaterThan(0)
  const [nudge] = bell.rung
  if (!nudge) throw new Error('Nothing was shown')
  expect(nudge.title).toBe('Long Gallery: switch the pumps on')
  expect(nudge.body.replace(/\s/g, ' ')).toContain('The hour is over for 17 min')
  bell.touchBody(nudge)
  await expect(page.getByText('17 minutes late')).toBeVisible()
  await page.getByRole('button', { name: /^Done Return pump on/ }).click()
  await expect.poll(() => bell.takenAway).toContain(nudge.id)
})

test('a trial shows what one looks like, and No means no', async () => {
  const page = await begin(thisMinute() + 60 * minute)
  await expect(said(page, 'While Smallhours is closed, nothing will ring.')).toBeVisible()
  await page.getByRole('button', { name: 'Try it now' }).click()
  await expect.poll(() => bell.rung.map(({ title }) => title)).toEqual(['Smallhours'])
  await page.getByRole('radio', { name: 'No', exact: true }).click()
  await expect(page.getByText(/^Next:/)).toBeHidden()
  await page.reload()
  await expect(page.getByRole('radio', { name: 'No', exact: true })).toBeChecked()
})
