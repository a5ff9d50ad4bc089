/** Brings a page into a state of the table. */
import { type Browser, expect, type Page } from '@playwright/test'
import { type Held, isUnread } from '../../core/index.ts'
import { pictures } from '../fixtures/photos/pictures.ts'
import { asSheWould, standIn } from './browsers.ts'
import { households } from './households.ts'
import { backupOf, backupWith, evening, go, openApp, restore } from './keeper.ts'
import type { looks, State } from './states.ts'

export type Seen = { readonly page: Page; readonly show: (look: (typeof looks)[number]) => Promise<void> }

/** The pictures a household tells of, but for those it has lost. */
const picturesOf = (entries: readonly Held[]) => {
  const told = new Set(
    entries.flatMap((entry) => (!isUnread(entry) && entry.fact.kind === 'photoKept' ? [entry.fact.photo] : [])),
  )
  return Object.values(pictures).filter(({ id }) => told.has(id))
}

type Options = NonNullable<Parameters<Browser['newContext']>[0]>

export const see = async (browser: Browser, state: State, options: Options = {}): Promise<Seen> => {
  const context = await browser.newContext({ timezoneId: state.zone ?? 'Europe/London', ...options })
  if (state.browser) await standIn(context, state.browser)
  const page = await openApp(context, state.time ?? evening)
  const entries = households[state.household]()
  const book = backupOf(entries)
  const told = picturesOf(entries)
  if (entries.length > 0) await restore(page, told.length > 0 ? await backupWith(book, told) : book)
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
