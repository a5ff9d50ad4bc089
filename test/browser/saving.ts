/** A backup out of a phone and into another, through This phone. */
import { readFileSync } from 'node:fs'
import { expect, type Page } from '@playwright/test'
import { go } from './keeper.ts'

export const saveBackup = async (page: Page): Promise<string> => {
  await go(page, '/phone')
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save a backup file' }).click()
  return readFileSync(await (await saving).path(), 'utf8')
}

/** Chosen and looked through; taking it in is the next touch. */
export const chooseFile = async (page: Page, text: string): Promise<void> => {
  await go(page, '/phone')
  await page
    .getByLabel('A backup file to take in')
    .setInputFiles({ name: 'backup.txt', mimeType: 'text/plain', buffer: Buffer.from(text) })
  await expect(page.getByText(/^This file holds/)).toBeVisible()
}
