/**
 * Every state in both looks, gone through by axe; nothing runs out of the screen, narrow, with large letters or on its side;
 * nothing shines at night.
 */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { expect, type Page, test } from '@playwright/test'
import type { AxeResults } from 'axe-core'
import { see } from './seeing.ts'
import { shining, shiningColours } from './shine.ts'
import { looks, states } from './states.ts'

declare global {
  interface Window {
    readonly axe: { readonly run: () => Promise<AxeResults> }
  }
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

// A long page is read through twice, photographed and measured in five sizes: on a busy machine that takes its time.
test.describe.configure({ timeout: 90_000 })

for (const state of states)
  test(`axe finds nothing: ${state.name}`, async ({ browser }) => {
    const { page, show } = await see(browser, state)
    // The app's policy forbids it as a script of the page; the debugger's evaluation is not the page's.
    await page.evaluate(axe)
    for (const look of looks) {
      await show(look)
      const found = await page.evaluate(async () => {
        const { violations } = await window.axe.run()
        return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)
      })
      expect(found, look).toEqual([])
      expect(await sideways(page), `${look}: sideways`).toBe(0)
    }
    expect(await shining(page), 'points that shine at night').toBe(0)
    expect(await shiningColours(page), 'colours that shine at night').toEqual([])
    // The narrowest phone, and letters twice their size.
    await page.setViewportSize({ width: 320, height: 640 })
    expect(await sideways(page), '320 px: sideways').toBe(0)
    await page.setViewportSize({ width: 844, height: 390 })
    expect(await sideways(page), 'on its side: sideways').toBe(0)
    await page.setViewportSize({ width: 390, height: 844 })
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '225%'
    })
    expect(await sideways(page), 'doubled letters: sideways').toBe(0)
    await page.context().close()
  })

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
