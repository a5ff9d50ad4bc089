/** Narrow, wide, on its side, enlarged: the answer and its act stay in sight. */
import { expect, type Page, test } from '@playwright/test'
import { answer, dosed } from './keeper.ts'
import { see } from './seeing.ts'
import { looks, stateCalled } from './states.ts'

const inTheDark = stateCalled('tonight, due in the dark')

const box = async (page: Page, selector: string) => {
  const found = await page.locator(selector).boundingBox()
  if (!found) throw new Error(`${selector} is not drawn`)
  return { ...found, right: found.x + found.width, bottom: found.y + found.height }
}

for (const look of looks)
  test(`a phone on its side shows the answer and Dosed at once, by ${look}`, async ({ browser }) => {
    const { page, show } = await see(browser, inTheDark)
    await show(look)
    for (const size of [
      { width: 844, height: 390 },
      { width: 667, height: 375 },
    ]) {
      await page.setViewportSize(size)
      const says = await box(page, '.page-answer')
      const act = await box(page, '.act')
      expect(says.y).toBeGreaterThanOrEqual(0)
      expect(says.bottom).toBeLessThanOrEqual(size.height)
      expect(act.y).toBeGreaterThanOrEqual(0)
      expect(act.bottom).toBeLessThanOrEqual(size.height)
      expect(says.right).toBeLessThanOrEqual(act.x)
    }
  })

for (const look of looks)
  test(`with doubled letters the whole answer stands above Dosed, by ${look}`, async ({ browser }) => {
    const { page, show } = await see(browser, inTheDark)
    await show(look)
    const before = await box(page, '.page-answer')
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '225%'
    })
    const says = await box(page, '.page-answer')
    expect(says.height).toBeGreaterThan(before.height)
    expect(says.bottom).toBeLessThanOrEqual((await box(page, '.dock')).y)
    expect((await box(page, '.act')).bottom).toBeLessThanOrEqual((await box(page, '.rooms')).y)
  })

test('a desk at 200 % has Dosed in sight and nothing running sideways', async ({ browser }) => {
  const { page } = await see(browser, inTheDark, { viewport: { width: 640, height: 400 }, deviceScaleFactor: 2 })
  await expect(dosed(page)).toBeInViewport({ ratio: 1 })
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(640)
})

test('at a desk the answer stays in sight beside a long form', async ({ browser }) => {
  const { page } = await see(browser, stateCalled('freeze'), { viewport: { width: 1280, height: 800 } })
  await page.mouse.move(900, 600)
  await page.mouse.wheel(0, 900)
  await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(400)
  await expect(answer(page)).toBeInViewport({ ratio: 1 })
  expect((await box(page, '.page-answer')).right).toBeLessThan((await box(page, '.page-body')).x)
})

test('every well of the open tray is large enough for a finger, on the narrowest phone too', async ({ browser }) => {
  const { unfolded, ...folded } = stateCalled('trays')
  const { page } = await see(browser, folded, { viewport: { width: 320, height: 640 } })
  const wells = page.getByRole('button', { name: /^Row \d+, well \d+: / })
  await expect(wells).toHaveCount(15)
  const sides = await wells.evaluateAll((keys) =>
    keys.map((key) => key.getBoundingClientRect()).flatMap(({ width, height }) => [width, height]),
  )
  expect(Math.min(...sides)).toBeGreaterThanOrEqual(44)
})
