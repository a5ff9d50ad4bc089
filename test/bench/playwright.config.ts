/** One browser, one run, figures to the terminal only. */
import { defineConfig } from '@playwright/test'
import tests from '../browser/playwright.config.ts'

const { launchOptions, viewport } = tests.use ?? {}

export default defineConfig({
  testDir: '.',
  testMatch: 'bars.spec.ts',
  outputDir: '../../test-results/bench',
  timeout: 600_000,
  expect: { timeout: 120_000 },
  retries: 0,
  workers: 1,
  reporter: 'line',
  use: { ...(launchOptions ? { launchOptions } : {}), ...(viewport ? { viewport } : {}) },
})
