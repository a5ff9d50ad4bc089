/** Offline, installed, backed up, and nothing leaves the phone. */
import { readFileSync } from 'node:fs'
import { expect, type Request, test } from '@playwright/test'
import { day } from '../../core/index.ts'
import { household } from '../bench/household.ts'
import { answer, backupOf, beginWithBottle, dosed, go, openApp, restore } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

test('every room opens cold with the network off', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await page.evaluate(() => navigator.serviceWorker.ready)
  await page.close()
  await context.setOffline(true)
  for (const [where, title] of [
    ['#/', 'Tonight'],
    ['#/food', 'Food'],
    ['#/water', 'Water'],
    ['#/diary', 'Diary'],
    ['#/phone', 'This phone'],
  ] as const) {
    const cold = await openApp(context, undefined, `./${where}`)
    await expect(cold.getByRole('heading', { level: 1, name: title })).toBeVisible()
    await cold.close()
  }
})

test('it can be installed: a manifest with its icons, a maskable one among them', async ({
  page,
  request,
  baseURL,
}) => {
  await page.goto('./')
  const href = await page.locator('link[rel="manifest"]').getAttribute('href')
  const address = new URL(href ?? '', baseURL)
  const manifest = await (await request.get(address.href)).json()
  expect(manifest).toMatchObject({ name: 'Smallhours', display: 'standalone', start_url: './', scope: './' })
  const purposes = manifest.icons.map(({ purpose }: { purpose?: string }) => purpose ?? 'any')
  expect(purposes).toContain('maskable')
  expect(purposes).toContain('any')
  for (const { src } of manifest.icons as { src: string }[])
    expect((await request.get(new URL(src, address).href)).headers()['content-type']).toBe('image/png')
})

test('no request leaves the origin, from the page or from the worker', async ({ context, baseURL }) => {
  const asked: Request[] = []
  context.on('request', (request) => asked.push(request))
  const { origin } = new URL(baseURL ?? '')
  const foreign = () =>
    asked.map((request) => request.url()).filter((url) => !/^(blob|data):/.test(url) && new URL(url).origin !== origin)
  const page = await openApp(context)
  await beginWithBottle(page)
  await page.evaluate(() => navigator.serviceWorker.ready)
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for')
  for (const room of ['/food', '/water', '/diary', '/phone']) {
    await go(page, room)
    await expect(page.getByRole('heading', { level: 1 })).not.toHaveText('Tonight')
  }
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save a backup file' }).click()
  await saving
  // The second time everything comes by way of the worker.
  await page.reload()
  await expect(page.getByRole('heading', { level: 1, name: 'This phone' })).toBeVisible()
  const [fromPage, fromWorker] = [false, true].map((ofWorker) =>
    asked.filter((request) => (request.serviceWorker() !== null) === ofWorker),
  )
  expect(fromPage?.length).toBeGreaterThan(10)
  expect(fromWorker?.length).toBeGreaterThan(10)
  expect(foreign()).toEqual([])
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')
  expect(policy).toContain("default-src 'none'")

  // The policy does not bind the worker, so nothing but this watch would tell. That it does is seen by asking a stranger.
  const [worker] = context.serviceWorkers()
  await worker?.evaluate(() => fetch('http://stranger.invalid/').catch(() => {}))
  await expect.poll(foreign).toEqual(['http://stranger.invalid/'])
})

test('a backup comes back on another phone, all of it, and twice changes nothing', async ({ context, browser }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for')
  await go(page, '/phone')
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save a backup file' }).click()
  const text = readFileSync(await (await saving).path(), 'utf8')
  expect(text.split('\n')[0]).toContain('smallhours-ledger')

  const elsewhere = await browser.newContext({ timezoneId: 'Asia/Tokyo' })
  try {
    const other = await openApp(elsewhere)
    await restore(other, text)
    await go(other, '/')
    await expect(answer(other)).toContainText('Done for Wednesday night: 0.55 mL at 20:30')
    await go(other, '/phone')
    await other
      .getByLabel('A backup file to take in')
      .setInputFiles({ name: 'again.txt', mimeType: 'text/plain', buffer: Buffer.from(text) })
    await expect(other.getByText(/0 are new here|none are new here|nothing is new here/i)).toBeVisible()
  } finally {
    await elsewhere.close()
  }
})

test('a broken, cut or hostile file is refused whole, with a sentence', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await go(page, '/phone')
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save a backup file' }).click()
  const text = readFileSync(await (await saving).path(), 'utf8')
  const lines = text.trimEnd().split('\n')
  for (const [file, says] of [
    ['', /^Nothing is entered here yet|empty/i],
    ['hello', /not a Smallhours backup/],
    [lines.slice(0, -1).join('\n'), /cut short/],
    [[...lines.slice(0, -1), '{"id":"x"}'].join('\n'), /cannot be read/],
    [text.replace('"format":1', '"format":2'), /newer Smallhours/],
  ] as const) {
    await page
      .getByLabel('A backup file to take in')
      .setInputFiles({ name: 'odd.txt', mimeType: 'text/plain', buffer: Buffer.from(file) })
    await expect(page.getByText(says)).toBeVisible()
  }
})

test('a hostile name is shown as text', async ({ context }) => {
  const page = await openApp(context)
  await page.getByLabel('How much water is in it?').fill('400')
  await page.getByRole('radio', { name: 'litres' }).check()
  await page.getByRole('radio', { name: 'None yet' }).check()
  await page.getByText('Make the tank more exact').click()
  const name = `<img src=x onerror="document.title='owned'">${'long'.repeat(75)}`
  await page.getByLabel('Name', { exact: true }).fill(name)
  await page.getByRole('button', { name: 'Begin' }).click()
  await go(page, '/water')
  await expect(page.getByRole('heading', { name, exact: true })).toBeVisible()
  expect(await page.title()).not.toBe('owned')
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  expect(wide).toBe(0)
})

test('ten years come back from a backup, and she sees how far it is', async ({ context }) => {
  test.setTimeout(120_000)
  const page = await openApp(context)
  await go(page, '/phone')
  await page.evaluate(() => {
    const seen: number[] = []
    new MutationObserver(() => {
      const value = document.querySelector('progress')?.value
      if (value !== undefined && value !== seen.at(-1)) seen.push(value)
      document.body.dataset.seen = seen.join(' ')
    }).observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ['value'] })
  })
  const text = backupOf(household(20_000, day('2026-11-25')))
  await page
    .getByLabel('A backup file to take in')
    .setInputFiles({ name: 'ten years.txt', mimeType: 'text/plain', buffer: Buffer.from(text) })
  await page.getByRole('button', { name: /^Take in/ }).click({ timeout: 60_000 })
  await expect(page.getByText(/^Taken in: 20,000 entries/)).toBeVisible({ timeout: 60_000 })
  const seen = ((await page.locator('body').getAttribute('data-seen')) ?? '').split(' ').map(Number)
  // It moves, and never backwards.
  expect(seen.filter((value) => value > 0 && value < 20_000).length).toBeGreaterThan(3)
  expect(seen).toEqual([...seen].sort((a, b) => a - b))
  await go(page, '/')
  await expect(dosed(page)).toBeVisible()
  await page.reload()
  await expect(dosed(page)).toBeVisible()
})
