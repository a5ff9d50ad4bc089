import { existsSync, readFileSync } from 'node:fs'
import { defineConfig } from '@playwright/test'

const known: string[] = JSON.parse(readFileSync(new URL('./chromiums.json', import.meta.url), 'utf8'))
const system = known.find((path) => existsSync(path))
if (!system) throw new Error('No Chromium found: install the package chromium.')
const host = 'http://127.0.0.1'
const address = `${host}:4173/reef/app/`
const harness = `${host}:4174/`
const preview = 'npx vite preview --strictPort --host 127.0.0.1'
const harnessConfig = 'test/browser/harness/vite.config.ts'

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results',
  forbidOnly: true,
  retries: 0,
  workers: 1,
  reporter: 'list',
  use: {
    baseURL: address,
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'allow',
    launchOptions: {
      executablePath: system,
      chromiumSandbox: process.getuid?.() !== 0,
      args: ['--disable-background-networking', '--disable-component-update', '--disable-sync', '--no-first-run'],
    },
  },
  // Storage and state are tried without the app's screens; the screens' tests use what is shipped.
  projects: [
    { name: 'storage', testMatch: 'storage*.spec.ts', use: { baseURL: harness } },
    { name: 'app', testIgnore: 'storage*.spec.ts' },
  ],
  webServer: [
    {
      command: `${preview} --port 4173 --base /reef/app/`,
      cwd: '../..',
      url: address,
      reuseExistingServer: false,
    },
    {
      command: `npx vite build -c ${harnessConfig} && ${preview} --port 4174 -c ${harnessConfig}`,
      cwd: '../..',
      url: harness,
      reuseExistingServer: false,
    },
  ],
})
