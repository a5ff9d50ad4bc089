/** Not a test: nothing here is right or wrong but to the eye. */
import { test } from '@playwright/test'
import { see } from './seeing.ts'
import { looks, states } from './states.ts'

const sizes = [
  { name: 'phone', viewport: { width: 390, height: 844 } },
  { name: 'desk', viewport: { width: 1280, height: 800 } },
] as const

for (const state of states)
  for (const { name, viewport } of sizes)
    test(`${state.name}, ${name}`, async ({ browser }) => {
      const { page, show } = await see(browser, state, { viewport })
      for (const look of looks) {
        await show(look)
        await page.evaluate(() => window.scrollTo(0, 0))
        const file = `${state.name} ${name} ${look}`.replace(/[^a-z0-9]+/gi, '-')
        await page.screenshot({ path: `shots/${file}.png` })
        // In a window as tall as the page: what is pinned to the edge would lie across a taller picture.
        const height = await page.evaluate(() => document.documentElement.scrollHeight)
        await page.setViewportSize({ width: viewport.width, height: Math.max(height, viewport.height) })
        await page.screenshot({ path: `shots/${file}-whole.png` })
        await page.setViewportSize(viewport)
      }
      await page.context().close()
    })
