/** A phone that has lived with the app for years: its ledger comes in as a backup does. */
import type { BrowserContext } from '@playwright/test'
import { type ClockTime, moment, nightOf } from '../../core/index.ts'
import { backupOf, restore } from '../browser/keeper.ts'
import { london } from '../support/given.ts'
import { household } from './household.ts'

/** Its last night is the one before the present: something is due whenever this runs. */
export const seed = async (context: BrowserContext, address: string, entries: number): Promise<void> => {
  const now = new Date()
  const tonight = nightOf(moment(+now), { zone: london, lightsOut: '21:00' as ClockTime })
  const page = await context.newPage()
  await page.goto(address)
  await restore(page, backupOf(household(entries, tonight), now.toISOString()))
  await page.evaluate(() => navigator.serviceWorker.ready)
  // The pages beside the app are kept by the worker too, and sealing waits for an idle moment.
  await page.waitForTimeout(2_000)
  await page.close()
}
