/** Pictures of every state, for eyes: `npm run shots` writes them to shots/, which git ignores. */
import { defineConfig } from '@playwright/test'
import tests from './playwright.config.ts'

export default defineConfig({
  ...tests,
  projects: [{ name: 'shots', testMatch: 'shots.ts' }],
  webServer: Array.isArray(tests.webServer) ? tests.webServer.slice(0, 1) : [],
})
