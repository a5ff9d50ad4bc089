/** Brings a page into a state of the table. */
import { type Browser, expect, type Page } from '@playwright/test'
import { asSheWould, standIn } from './browsers.ts'
import { households } from './households.ts'
import { backupOf, evening, go, openApp, restore } from './keeper.ts'
import type { looks, State } from './states.ts'

export type Seen = { readonly page: Page; readonly show: (look: (typeof looks)[number]) => Promise<void> }

type Options = NonNullable<Parameters<Browser['newContext']>[0]>

export const see = async (browser: Browser, state: State, options: Options = {}): Promise<Seen> => {
  const context = await browser.newContext({ timezoneId: state.zone ?? 'Europe/London', ...options })
  if (state.browser) await standIn(context, state.browser)
  const page = await openApp(context, state.time ?? evening)
  const entries = households[state.household]()
  if (entries.length > 0) await restore(page, backupOf(entries))
  if (state.madeUp) {
    await page.getByRole('button', { name: 'Look round with made-up data' }).click()
    await page.getByRole('complementary', { name: 'Made-up data' }).waitFor()
  }
  await go(page, state.route)
  await page
    .locator('h1')
    .filter({ hasNotText: state.route === '/phone' ? /^$/ : /^This phone$/ })
    .waitFor()
  if (state.browser) await asSheWould(page, state.browser)
  // One at a time: opening one changes which are closed.
  const closed = page.locator('details:not([open]) > summary').first()
  if (state.unfolded) while ((await closed.count()) > 0) await closed.click()
  // What is fetched only when it is wanted has come.
  await expect(page.locator('.loading')).toHaveCount(0)
  return {
    page,
    show: async (look) => {
      await page.evaluate((wanted) => {
        document.documentElement.dataset.look = wanted
      }, look)
    },
  }
}
