/** Every state in both looks, gone through by axe. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { expect, test } from '@playwright/test'
import type { AxeResults } from 'axe-core'
import { see } from './seeing.ts'
import { looks, states } from './states.ts'

declare global {
  interface Window {
    readonly axe: { readonly run: () => Promise<AxeResults> }
  }
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

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
      const wide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      )
      expect(wide, `${look}: sideways`).toBe(0)
    }
    await page.context().close()
  })
