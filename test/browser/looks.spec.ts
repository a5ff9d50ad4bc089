/** What the eye needs: nothing that shines at night, nothing that moves unasked, and a person's own colours kept. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type BrowserContext, expect, type Page, test } from '@playwright/test'
import { households } from './households.ts'
import { answer, backupOf, dosed, go, openApp, restore } from './keeper.ts'
import { see } from './seeing.ts'
import { shining } from './shine.ts'
import { stateCalled } from './states.ts'

declare global {
  interface Window {
    looksSeen: (string | null)[]
  }
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const inTheDark = stateCalled('tonight, due in the dark')

test.describe('before the first screen stands', () => {
  test('the page is dark when no script has run yet', async ({ page }) => {
    await page.route('**/*.js', (route) => route.abort())
    await page.goto('./')
    expect(await shining(page)).toBe(0)
    expect(await page.locator('meta[name="theme-color"]').getAttribute('content')).toBe('#000000')
  })

  /** Every look the page has had since it was opened. */
  const looksOf = (page: Page): Promise<(string | null)[]> => page.evaluate(() => window.looksSeen)
  const watchLooks = (context: BrowserContext): Promise<unknown> =>
    context.addInitScript(() => {
      window.looksSeen = []
      new MutationObserver(() => {
        const look = document.documentElement.getAttribute('data-look')
        if (look !== window.looksSeen.at(-1)) window.looksSeen.push(look)
      }).observe(document, { attributes: true, attributeFilter: ['data-look'], subtree: true })
    })

  test('an app opened in the dark is never in the day look', async ({ context }) => {
    await watchLooks(context)
    const page = await openApp(context, '2026-11-25T22:10:00Z')
    await restore(page, backupOf(households.trays()))
    await go(page, '/')
    await expect(dosed(page)).toBeVisible()
    await page.reload()
    await expect(dosed(page)).toBeVisible()
    expect(await looksOf(page)).toEqual(['night'])
    expect(await page.locator('meta[name="theme-color"]').getAttribute('content')).toBe('#000000')
  })

  test('whoever chose the night look has it from the start, in the kitchen as well', async ({ context }) => {
    await watchLooks(context)
    const page = await openApp(context)
    await restore(page, backupOf(households.trays()))
    await page.getByRole('radio', { name: /^Always night/ }).click()
    await expect(page.locator('html')).toHaveAttribute('data-look', 'night')
    await go(page, '/food')
    await page.reload()
    await expect(answer(page)).toContainText('portions')
    expect(await looksOf(page)).toEqual(['night'])
  })
})

test('a list that drops down at night is as dark as its page', async ({ browser }) => {
  const { page, show } = await see(browser, stateCalled('portions already'))
  await show('night')
  await page.getByRole('combobox').first().click()
  await expect(page.getByRole('option').nth(1)).toBeVisible()
  expect(await shining(page)).toBe(0)
})

test('nothing moves for whoever asked for less motion', async ({ browser }) => {
  const { page } = await see(browser, inTheDark, { reducedMotion: 'reduce' })
  await dosed(page).click()
  await expect(page.getByRole('button', { name: 'Undo' })).toBeVisible()
  // One there is that shows nothing: it keeps the undo from answering the second half of a double tap.
  const moving = await page.evaluate(() =>
    document
      .getAnimations()
      .map((one) => (one instanceof CSSAnimation ? one.animationName : 'transition'))
      .filter((name) => name !== 'undo-awake'),
  )
  expect(moving).toEqual([])
})

for (const name of ['tonight, due in the dark', 'portions already', 'trays', 'diary, logged twice'])
  test(`a person's own colours are kept: ${name}`, async ({ browser }) => {
    const { page } = await see(browser, stateCalled(name), { forcedColors: 'active', reducedMotion: 'reduce' })
    await page.evaluate(axe)
    const found = await page.evaluate(async () => {
      const { violations } = await window.axe.run()
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)
    })
    expect(found).toEqual([])
    await page.keyboard.press('Tab')
    const ring = await page.evaluate(() => {
      const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement ?? document.body)
      return `${outlineStyle} ${outlineWidth}`
    })
    expect(ring).toBe('solid 3px')
  })

test("what is chosen, the act and the tray's edges are seen in a person's own colours", async ({ browser }) => {
  const { page } = await see(browser, stateCalled('trays'), { forcedColors: 'active' })
  const chip = page.getByRole('button', { name: 'dropped it' })
  const other = page.getByRole('button', { name: 'broken' })
  await chip.click()
  const ground = (of: typeof chip) => of.evaluate((element) => getComputedStyle(element).backgroundColor)
  expect(await ground(chip)).not.toBe(await ground(other))
  const [text, rim] = await page.evaluate(() => {
    const tray = document.querySelector('.tray-rim')
    return [getComputedStyle(document.body).color, tray && getComputedStyle(tray).stroke]
  })
  expect(rim).toBe(text)
  await go(page, '/')
  await expect(dosed(page)).toHaveCSS('border-top-style', 'solid')
  await expect(dosed(page)).toHaveCSS('border-top-color', text ?? '')
})
