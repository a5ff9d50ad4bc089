/** The app as a person meets it: opened at a moment, asked through roles and labels. */
import { type BrowserContext, expect, type Page } from '@playwright/test'
import JSZip from 'jszip'
import { type DeviceId, exportLedger, type Held, type Moment } from '../../core/index.ts'
import type { PictureDrawn } from '../fixtures/photos/pictures.ts'

/** Half past eight on a Wednesday evening, half an hour before the lights go out. */
export const evening = '2026-11-25T20:30:00Z'

/** Fails the test on an error nobody caught. */
export const openApp = async (context: BrowserContext, time: string = evening, where = './'): Promise<Page> => {
  const page = await context.newPage()
  page.on('pageerror', (error) => {
    throw error
  })
  await page.clock.install({ time: new Date(time) })
  await page.goto(where)
  return page
}

export const go = async (page: Page, to: string): Promise<void> => {
  await page.evaluate((hash) => {
    window.location.hash = hash
  }, to)
}
export const answer = (page: Page) => page.locator('.page-answer')
/** A sentence on the screen. Numbers are held to their units by spaces that do not break. */
export const said = (page: Page, text: string) =>
  page.getByText(new RegExp(text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/ /g, '\\s')))
export const dosed = (page: Page) => page.getByRole('button', { name: /^Dosed/ })

/** 400 litres and a new bottle of 120 mL. */
export const beginWithBottle = async (page: Page): Promise<void> => {
  await page.getByLabel('How much water is in it?').fill('400')
  await page.getByRole('radio', { name: 'litres' }).check()
  await page.getByRole('radio', { name: 'A bottle in the fridge' }).check()
  await page.getByLabel('What does the bottle hold?').fill('120')
  await page.getByRole('radio', { name: 'mL' }).check()
  await page.getByRole('button', { name: 'Begin' }).click()
  await expect(dosed(page)).toBeVisible()
}

export const backupOf = (entries: readonly Held[], at = evening): string =>
  exportLedger(entries, { at: Date.parse(at) as Moment, device: 'elsewhere' as DeviceId, version: '0.1.0' })

/** The book and its pictures, as a zip another program might have made of them. */
export const backupWith = async (text: string, pictures: readonly PictureDrawn[]): Promise<Buffer> => {
  const zip = new JSZip()
  zip.file('smallhours.txt', text)
  for (const { id, bytes } of pictures) zip.file(`photos/${id}.jpg`, bytes)
  return zip.generateAsync({ type: 'nodebuffer' })
}

/** Through This phone, as she would. */
export const restore = async (page: Page, backup: string | Buffer): Promise<void> => {
  await go(page, '/phone')
  const buffer = Buffer.from(backup)
  await page
    .getByLabel('A backup file to take in')
    .setInputFiles(
      typeof backup === 'string'
        ? { name: 'backup.txt', mimeType: 'text/plain', buffer }
        : { name: 'backup.zip', mimeType: 'application/zip', buffer },
    )
  await page.getByRole('button', { name: /^Take in/ }).click()
  await expect(page.getByText(/^Taken in/)).toBeVisible()
}

/** The lines of the diary, newest first. */
export const diary = async (page: Page): Promise<string[]> => {
  await go(page, '/diary')
  await expect(page.getByRole('heading', { level: 1, name: 'Diary' })).toBeVisible()
  const lines = await page.locator('.line').allTextContents()
  // Numbers are held to their units by spaces that do not break.
  return lines.map((line) => line.replace(/\s+/g, ' '))
}
