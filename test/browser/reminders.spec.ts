/**
 * Every way a reminder can come, in a real browser with a real notification service: a call from outside and the browser's
 * own wake, with the page closed, the worker stopped and no network; and what the page about reminders says of each.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type BrowserContext, type CDPSession, chromium, expect, type Page, test } from '@playwright/test'
import ICAL from 'ical.js'
import { host } from '../support/host.ts'
import { type Bell, hangBell } from './bell.ts'
import { diary, go, restore, said } from './keeper.ts'
import { nudgedAt } from './nudged.ts'

// Each starts a browser of its own.
test.describe.configure({ timeout: 90_000 })

let bell: Bell
let disk: string
let context: BrowserContext
let origin: string

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
  origin = new URL(baseURL ?? '').origin
  await context.grantPermissions(['notifications'], { origin })
})
test.afterEach(async () => {
  await context.close()
  await bell.stop()
  rmSync(disk, { recursive: true, force: true, maxRetries: 5 })
})

const built = fileURLToPath(new URL('../../dist', import.meta.url))
const minute = 60_000
const thisMinute = () => Math.floor(Date.now() / minute) * minute
const open = async (where = './'): Promise<Page> => {
  const page = await context.newPage()
  page.on('pageerror', (error) => {
    throw error
  })
  await page.goto(where)
  return page
}
/** Nudges are wished for, and this one is planned for later than now, so that no page shows it of its own accord. */
const begin = async (planned: number, where?: string): Promise<Page> => {
  const page = await open(where)
  await page.evaluate(() => navigator.serviceWorker.ready)
  await restore(page, nudgedAt(planned))
  await go(page, '/phone/reminders')
  await page.getByRole('radio', { name: 'Yes, while Smallhours is open' }).click()
  await expect(page.getByText(/^Next:/)).toBeVisible()
  return page
}
/** The browser's own desk, spoken to through a page that is not the app: it may call the worker, and stop it. */
const desk = async (): Promise<{ session: CDPSession; registrationId: string }> => {
  const blank = await context.newPage()
  const session = await context.newCDPSession(blank)
  const registered = new Promise<string>((resolve) =>
    session.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
      const [ours] = registrations.filter(({ scopeURL }) => scopeURL.startsWith(origin))
      if (ours) resolve(ours.registrationId)
    }),
  )
  await session.send('ServiceWorker.enable')
  return { session, registrationId: await registered }
}
const stop = async (session: CDPSession) => {
  const stopped = new Promise<void>((resolve) =>
    session.on('ServiceWorker.workerVersionUpdated', ({ versions }) => {
      if (versions.length > 0 && versions.every(({ runningStatus }) => runningStatus === 'stopped')) resolve()
    }),
  )
  await session.send('ServiceWorker.stopAllWorkers')
  await stopped
}
const titles = () => bell.rung.map(({ title }) => title)
const onGlass = () => {
  const ids = new Set(bell.rung.map(({ id }) => id))
  for (const id of bell.takenAway) ids.delete(id)
  return ids.size
}
const given = async (page: Page) => (await diary(page)).filter((line) => line.includes('Gave Long Gallery'))

test('a call from outside shows what is due: page closed, worker stopped, no network', async () => {
  // Its minute is still to come, so the call finds no nudge to show, and says what is true.
  const page = await begin(thisMinute() + 30 * minute)
  await page.goto('about:blank')
  const { session, registrationId } = await desk()
  await session.send('ServiceWorker.deliverPushMessage', { origin, registrationId, data: '' })
  await expect.poll(titles, { timeout: 20_000 }).toEqual(['Smallhours'])
  expect(bell.rung[0]?.body).toContain('Due tonight: Long Gallery.')
  await page.close()
  await context.setOffline(true)
  await stop(session)
  await session.send('ServiceWorker.deliverPushMessage', { origin, registrationId, data: 'anything at all' })
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBe(2)
  expect(bell.rung[1]?.body).toContain('Due tonight: Long Gallery.')
  await context.setOffline(false)
})

test('the browser’s own wake catches up: page closed, worker stopped, its host gone', async () => {
  test.setTimeout(240_000)
  // A host of its own that can be taken away: the browser holds such a wake back while it thinks itself without a network.
  const site = await host((path) => readFileSync(join(built, path)))
  origin = new URL(site.address).origin
  await context.grantPermissions(['notifications'], { origin })
  const page = await begin(thisMinute() + 2 * minute, site.address)
  const { session, registrationId } = await desk()
  // Nobody is there at its minute.
  await page.close()
  site.close()
  await stop(session)
  const wake = () => session.send('ServiceWorker.dispatchPeriodicSyncEvent', { origin, registrationId, tag: 'evening' })
  await wake()
  await new Promise((resolve) => setTimeout(resolve, 3_000))
  expect(titles()).toEqual([])
  await expect
    .poll(
      async () => {
        await wake()
        return titles()
      },
      { timeout: 150_000, intervals: [5_000] },
    )
    .toEqual(['Long Gallery, tonight'])
  await wake()
  await new Promise((resolve) => setTimeout(resolve, 2_500))
  expect(titles()).toEqual(['Long Gallery, tonight'])
  const later = await open(`${site.address}#/phone/reminders`)
  await expect(said(later, 'when the browser woke it.')).toBeVisible()
})

test('two tabs and a call in the same second are one notification and one dose', async () => {
  const page = await begin(thisMinute() - minute)
  await open()
  const { session, registrationId } = await desk()
  await Promise.all([
    session.send('ServiceWorker.deliverPushMessage', { origin, registrationId, data: '' }),
    session.send('ServiceWorker.deliverPushMessage', { origin, registrationId, data: '' }),
    page.evaluate(() => window.dispatchEvent(new Event('focus'))),
  ])
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBeGreaterThan(0)
  await page.waitForTimeout(4_000)
  expect(new Set(titles())).toEqual(new Set(['Long Gallery, tonight']))
  expect(onGlass()).toBe(1)
  expect(await page.evaluate(async () => (await (await navigator.serviceWorker.ready).getNotifications()).length)).toBe(
    1,
  )
  const nudge = bell.rung.at(-1)
  if (!nudge) throw new Error('Nothing was shown')
  bell.touch(nudge, 'Dosed')
  await expect.poll(() => titles().at(-1), { timeout: 20_000 }).toBe('Noted')
  await session.send('ServiceWorker.deliverPushMessage', { origin, registrationId, data: '' })
  await expect.poll(() => bell.rung.at(-1)?.body, { timeout: 20_000 }).toContain('Done for tonight: Long Gallery.')
  expect(await given(page)).toHaveLength(1)
})

test('what was done on this phone meanwhile is refused from the worker, and said', async () => {
  const page = await begin(thisMinute())
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBe(1)
  const [nudge] = bell.rung
  if (!nudge) throw new Error('Nothing was shown')
  // Without the wish nobody takes the offer away, as when the other phone noted it.
  await page.getByRole('radio', { name: 'No', exact: true }).click()
  await go(page, '/')
  await page.getByRole('button', { name: /^Dosed/ }).click()
  await expect(page.locator('.page-answer')).toContainText('Done for')
  await context.newPage()
  await page.close()
  // A second touch of the same moment would be taken for the first one.
  await new Promise((resolve) => setTimeout(resolve, 6_000))
  bell.touch(nudge, 'Dosed')
  await expect.poll(() => titles().at(-1), { timeout: 20_000 }).toBe('Noted already')
  const later = await open()
  await expect(later.locator('.page-answer')).toContainText('Done for')
  expect(await given(later)).toHaveLength(1)
})

test('a touch beside the button opens Tonight at its tank', async () => {
  const page = await begin(thisMinute())
  await expect.poll(() => bell.rung.length, { timeout: 20_000 }).toBe(1)
  const [nudge] = bell.rung
  if (!nudge) throw new Error('Nothing was shown')
  bell.touchBody(nudge)
  await page.waitForURL(/#\/tank\/longgallery$/)
  await expect(page.getByRole('button', { name: /^Dosed/ })).toBeVisible()
})

test('leave refused, and leave taken back later, are said, and the calendar is offered there', async ({
  browser,
  baseURL,
}) => {
  const page = await begin(thisMinute() + 60 * minute)
  const answer = page.locator('.page-answer')
  await expect(answer).toContainText('nothing will ring')
  const file = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Take a calendar file' }).click()
  const text = await (await file).createReadStream().then(async (stream) => {
    const parts: Buffer[] = []
    for await (const part of stream) parts.push(Buffer.from(part))
    return Buffer.concat(parts).toString('utf8')
  })
  const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent')
  expect(events.length).toBeGreaterThan(35)
  await expect(answer).toContainText('only your calendar will ring, until')
  await expect(said(page, 'Then open one in your calendar')).toBeVisible()
  // Taken back in the browser's own settings.
  await context.clearPermissions()
  await page.evaluate(() => window.dispatchEvent(new Event('focus')))
  await expect(page.getByText(/^Nudges are off/)).toBeVisible()
  await expect(page.getByRole('radio', { name: 'No', exact: true })).toBeChecked()
  await expect(answer).toContainText('only your calendar will ring, until')

  // Without a window nobody can be asked, and the browser says no at once.
  const other = await browser.newContext({ ...(baseURL === undefined ? {} : { baseURL }), timezoneId: 'Europe/London' })
  const refused = await other.newPage()
  await refused.goto('./')
  await restore(refused, nudgedAt(thisMinute() + 60 * minute))
  await go(refused, '/phone/reminders')
  await refused.getByRole('radio', { name: 'Yes, while Smallhours is open' }).click()
  await expect(refused.getByText(/The calendar file below needs no leave|was told not to show any/)).toBeVisible()
  await expect(refused.getByRole('radio', { name: 'No', exact: true })).toBeChecked()
  await expect(refused.getByRole('button', { name: 'Take a calendar file' })).toBeVisible()
  await other.close()
})

test('the evening watch calls when it is time, can be put off, and leads to the dose', async () => {
  const page = await begin(thisMinute() - minute)
  await go(page, '/watch')
  await expect(page.locator('.page-answer')).toContainText('Time for Long Gallery.')
  await page.getByRole('button', { name: 'Again in 30 minutes' }).click()
  await expect(page.locator('.page-answer')).toContainText('Quiet until')
  await page.reload()
  await page.getByRole('link', { name: 'To tonight’s dose' }).click()
  await page.getByRole('button', { name: /^Dosed/ }).click()
  await expect(page.locator('.page-answer')).toContainText('Done for')
})
