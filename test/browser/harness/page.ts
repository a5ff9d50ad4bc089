/** Opens the page without screens, and stops a browser the way a phone does: without a word. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium, type Page, test } from '@playwright/test'
import type {} from './main.tsx'

/** `before` runs in the page ahead of everything else. */
export const open = async (context: BrowserContext, before: () => void = () => {}): Promise<Page> => {
  const page = await context.newPage()
  page.on('pageerror', (error) => {
    throw error
  })
  await page.addInitScript(before)
  await page.goto('./')
  await page.evaluate(() => window.harness.started)
  return page
}
export const ids = (page: Page): Promise<string[]> => page.evaluate(() => window.harness.ids())
export const sorted = (of: readonly string[]): string[] => [...of].sort()

export type Phone = {
  /** A browser over the same disk each time. */
  readonly start: () => Promise<BrowserContext>
  /** SIGKILL to the browser's own process: nothing is flushed, nothing is told. */
  readonly kill: () => Promise<void>
  readonly throwAway: () => Promise<void>
}
export const phone = (): Phone => {
  const disk = mkdtempSync(join(tmpdir(), 'smallhours-'))
  const { launchOptions, baseURL, viewport } = test.info().project.use
  let running: BrowserContext | undefined
  return {
    start: async () => {
      running = await chromium.launchPersistentContext(disk, {
        ...launchOptions,
        ...(baseURL === undefined ? {} : { baseURL }),
        ...(viewport === undefined ? {} : { viewport }),
      })
      return running
    },
    kill: async () => {
      const gone = running?.waitForEvent('close')
      for (const line of execFileSync('ps', ['-Ao', 'pid=,args='], { encoding: 'utf8' }).split('\n'))
        if (line.includes(`--user-data-dir=${disk}`) && !line.includes('--type='))
          process.kill(Number.parseInt(line, 10), 'SIGKILL')
      await gone
    },
    throwAway: async () => {
      await running?.close()
      rmSync(disk, { recursive: true, force: true, maxRetries: 5 })
    },
  }
}
