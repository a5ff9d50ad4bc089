/** The touch on "Dosed": early, late, twice, taken back, and with the phone dead the next second. */
import { expect, type Page, test } from '@playwright/test'
import { phone } from './harness/page.ts'
import { answer, beginWithBottle, diary, dosed, evening, go, openApp } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

test('undo stands where the touch was, and everything is as before', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  const before = (await answer(page).textContent()) ?? ''
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for Wednesday night')
  // A second touch of the same thumb in the first moment is not an undo.
  await page.waitForTimeout(700)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(answer(page)).toHaveText(before)
  const [last] = await diary(page)
  expect(last).toContain('Crossed out: Gave Tank 0.55 mL')
})

test('after ten seconds the undo is gone, and the diary still has one', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await dosed(page).click()
  await expect(page.getByRole('button', { name: 'Undo' })).toBeVisible()
  await page.clock.fastForward(11_000)
  await expect(page.getByRole('button', { name: 'Undo' })).toBeHidden()
  await go(page, '/diary')
  await expect(page.getByText(/^Gave Tank/).first()).toBeVisible()
})

test('after midnight it is still the evening before', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await page.close()
  const late = await openApp(context, '2026-11-26T00:25:00Z')
  await expect(late.getByText('Wednesday night, 25 November')).toBeVisible()
  await dosed(late).click()
  await expect(answer(late)).toContainText('Done for Wednesday night: 0.55 mL at 00:25. Next: Friday night')
})

test('the night look comes by itself when the lights are out, and holds nothing white', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await expect(page.locator('html')).toHaveAttribute('data-look', 'day')
  await page.clock.fastForward('01:00:00')
  await expect(page.locator('html')).toHaveAttribute('data-look', 'night')
  expect(await brightestButRed(page)).toBeLessThan(40)
  await go(page, '/food')
  await expect(page.locator('html')).toHaveAttribute('data-look', 'day')
})

test('two tabs touched at once give one dose, and the other hears of it', async ({ context }) => {
  const first = await openApp(context)
  await beginWithBottle(first)
  const second = await openApp(context)
  await expect(dosed(second)).toBeVisible()
  // One word both tabs hear at once: playing through the mouse, one would always be later.
  for (const page of [first, second])
    await page.evaluate(() => {
      new BroadcastChannel('touch').onmessage = () => document.querySelector<HTMLButtonElement>('.act')?.click()
    })
  await first.evaluate(() => new BroadcastChannel('touch').postMessage('now'))
  await expect(answer(first)).toContainText('Done for Wednesday night')
  await expect(answer(second)).toContainText('Done for Wednesday night')
  const lines = await diary(first)
  expect(lines.filter((line) => line.includes('Gave Tank'))).toHaveLength(1)
})

test('dosed with the network off and the app killed the next moment: it is there, once', async () => {
  const pocket = phone()
  try {
    const context = await pocket.start()
    const page = await openApp(context)
    await beginWithBottle(page)
    await page.evaluate(() => navigator.serviceWorker.ready)
    await context.setOffline(true)
    await page.reload()
    await dosed(page).click()
    await expect(answer(page)).toContainText('Done for')
    await pocket.kill()
    const again = await pocket.start()
    await again.setOffline(true)
    const reopened = await openApp(again, evening)
    await expect(answer(reopened)).toContainText('Done for')
    const lines = await diary(reopened)
    expect(lines.filter((line) => line.includes('Gave Tank'))).toHaveLength(1)
  } finally {
    await pocket.throwAway()
  }
})

test('skipped, dropped and forgotten are noted apart, and only a skipped or forgotten night is over', async ({
  context,
}) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await page.getByText('Something else happened').click()
  await page.getByRole('button', { name: 'Spilt a dose of it' }).click()
  await expect(page.getByText('Noted: dropped. Tonight is still due.')).toBeVisible()
  await expect(dosed(page)).toBeVisible()
  await page.getByRole('button', { name: 'I can’t remember' }).click()
  await expect(answer(page)).toHaveText('Not known for Wednesday night; less is safe. Next: Friday night.')
  const lines = await diary(page)
  expect(lines.some((line) => line.includes('Spilt 0.55 mL'))).toBe(true)
  expect(lines.some((line) => line.includes('Not known whether Tank was fed'))).toBe(true)
})

test('one touch notes that the bottles were shaken', async ({ context }) => {
  const page = await openApp(context)
  await beginWithBottle(page)
  await page.getByRole('button', { name: 'Shaken' }).click()
  await expect(page.getByText(/was shaken just now/)).toBeVisible()
  await expect(page.getByRole('button', { name: 'Shaken' })).toBeHidden()
})

/** The brightest green or blue anywhere on the screen, 0 to 255. */
const brightestButRed = async (page: Page): Promise<number> => {
  const picture = [...(await page.screenshot())]
  return page.evaluate(async (bytes) => {
    const { width, height, ...bitmap } = await createImageBitmap(new Blob([new Uint8Array(bytes)])).then((image) => {
      const pen = new OffscreenCanvas(image.width, image.height).getContext('2d')
      pen?.drawImage(image, 0, 0)
      return { width: image.width, height: image.height, pen }
    })
    const pixels = bitmap.pen?.getImageData(0, 0, width, height).data ?? []
    if (pixels.length === 0) throw new Error('Nothing was drawn')
    let brightest = 0
    for (let i = 0; i < pixels.length; i += 4) brightest = Math.max(brightest, pixels[i + 1] ?? 0, pixels[i + 2] ?? 0)
    return brightest
  }, picture)
}
