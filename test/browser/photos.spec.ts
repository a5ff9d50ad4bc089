/** Photos in a real browser: the entry first, the picture second, and both in one file that brings them back. */
import { readFileSync } from 'node:fs'
import { type Download, expect, type Page, test } from '@playwright/test'
import JSZip from 'jszip'
import { pictures } from '../fixtures/photos/pictures.ts'
import { households } from './households.ts'
import { answer, backupOf, backupWith, diary, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

const life = '/water/longgallery/life'
const jpeg = (name: string, { bytes }: { readonly bytes: Buffer }) => ({ name, mimeType: 'image/jpeg', buffer: bytes })
const touch = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^${name}`) }).click()
/** Drawn, not only there. */
const drawn = (page: Page, name: RegExp) =>
  page
    .getByRole('img', { name })
    .first()
    .evaluate((img: HTMLImageElement) => img.decode().then(() => img.naturalWidth))
const onDisk = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const asked = indexedDB.open('smallhours-photos')
        asked.onerror = () => reject(asked.error)
        asked.onsuccess = () => {
          const count = asked.result.transaction('pictures').objectStore('pictures').count()
          count.onsuccess = () => {
            asked.result.close()
            resolve(count.result)
          }
        }
      }),
  )
const countPane = async (page: Page, count: string) => {
  await go(page, `${life}/pane`)
  await page.getByLabel('Square 1').fill(count)
  await page.getByLabel('Which pane?').fill('sump glass')
  await touch(page, 'Keep this count')
}
const saved = async (page: Page, name: string | RegExp): Promise<Download> => {
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name }).click()
  return coming
}

test('a pane is counted and photographed, and the next photo is held against the last', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.smallLife()))
  await countPane(page, '12')
  await page.getByLabel('A photo of it').setInputFiles(jpeg('one.jpg', pictures.glassInSeptember))
  await expect(page.getByText('The photo is kept.')).toBeVisible()
  await page.clock.fastForward('50:00:00')
  await countPane(page, '70')
  await expect(page.getByText('The last one. Hold the phone')).toBeVisible()
  await page.getByLabel('A photo of it').setInputFiles(jpeg('two.jpg', pictures.glassInNovember))
  await expect(page.getByText('The photo is kept.')).toBeVisible()
  // On disk: it is there after the page is gone.
  await page.reload()
  await go(page, `${life}/photos`)
  await expect(answer(page)).toHaveText('2 photos of what lives here.')
  const pair = page.getByRole('figure', { name: 'On a pane by day, sump glass' })
  await expect(pair.getByText('2 days between them.')).toBeVisible()
  await expect(pair.getByRole('img')).toHaveCount(2)
  expect(await drawn(page, /^Photo of/)).toBe(480)
})

test('a photo is told of in a line, seen whole, and crossed out; its picture goes only when she deletes it', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.smallLife()))
  await go(page, life)
  await touch(page, 'Add a photo\\s*: Long Gallery')
  await page.getByLabel(/^Add a photo/).setInputFiles(jpeg('box.jpg', pictures.box))
  await expect(page.getByText('The photo is kept.')).toBeVisible()
  const thumb = page.getByRole('button', { name: /^Photo of/ })
  await thumb.click()
  const whole = page.getByRole('dialog')
  await whole.getByRole('button', { name: 'What it shows, and when' }).click()
  await whole.getByLabel('What does it show?').fill('the box, just opened')
  await whole.getByRole('button', { name: 'Save' }).click()
  await expect(whole).toHaveCount(0)
  await expect(thumb).toContainText('the box, just opened')
  await thumb.click()
  await whole.getByRole('button', { name: 'Cross out' }).click()
  await whole.getByRole('button', { name: 'Cross it out' }).click()
  await expect(thumb).toHaveCount(0)
  expect((await diary(page))[0]).toContain('Crossed out')
  await go(page, '/phone')
  expect(await onDisk(page)).toBe(1)
  await expect(page.getByText(/^1\sphoto that was crossed out still takes room on this phone\.$/)).toBeVisible()
  await touch(page, 'Delete them$')
  await touch(page, 'Delete them for good')
  await expect(page.getByText(/^1\sphoto deleted from this phone/)).toBeVisible()
  expect(await onDisk(page)).toBe(0)
  await page.reload()
  await expect(page.getByRole('button', { name: 'Save a backup file' })).toBeVisible()
  await expect(page.getByText('still takes room')).toHaveCount(0)
})

test('where it was taken is not kept, and a file that is no picture is refused', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.smallLife()))
  await go(page, life)
  await touch(page, 'Add a photo\\s*: Long Gallery')
  const field = page.getByLabel(/^Add a photo/)
  await field.setInputFiles({ name: 'film.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture at all') })
  await expect(page.getByText('This browser cannot draw that file.')).toBeVisible()
  // An APP1 segment after the first marker, as a camera writes the place into it.
  const place = Buffer.from('Exif\0\0 51.4779 N 0.0015 W')
  const head = Buffer.from([0xff, 0xe1, 0, place.length + 2])
  const { bytes } = pictures.box
  const told = Buffer.concat([bytes.subarray(0, 2), head, place, bytes.subarray(2)])
  await field.setInputFiles({ name: 'placed.jpg', mimeType: 'image/jpeg', buffer: told })
  await expect(page.getByText('The photo is kept.')).toBeVisible()
  await go(page, '/phone')
  const zip = await JSZip.loadAsync(readFileSync(await (await saved(page, /^Save it with the photos/)).path()))
  const [photo] = zip.file(/^photos\//)
  const kept = await photo?.async('nodebuffer')
  expect(kept?.subarray(0, 2)).toEqual(Buffer.from([0xff, 0xd8]))
  expect(kept?.includes('51.4779')).toBe(false)
  expect(told.includes('51.4779')).toBe(true)
})

test('a full phone costs the picture and never the entry; there is a way back', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.smallLife()))
  await page.evaluate(() => {
    const put = IDBObjectStore.prototype.put
    window.full = true
    IDBObjectStore.prototype.put = function (...given) {
      if (this.name === 'pictures' && window.full) throw new DOMException('no room', 'QuotaExceededError')
      return put.apply(this, given)
    }
  })
  await go(page, life)
  await touch(page, 'Add a photo\\s*: Long Gallery')
  const field = page.getByLabel(/^Add a photo/)
  await field.setInputFiles(jpeg('box.jpg', pictures.box))
  await expect(page.getByText('There is no room left on this phone for the picture.')).toBeVisible()
  await expect(page.getByText('Not on this phone').first()).toBeVisible()
  await page.evaluate(() => {
    window.full = false
  })
  await expect(page.getByText('The photo is kept.')).toHaveCount(0)
  await field.setInputFiles(jpeg('box.jpg', pictures.box))
  await expect(page.getByText('The photo is kept.')).toBeVisible()
  expect(await drawn(page, /^Photo of/)).toBe(480)
  expect((await diary(page)).filter((line) => line.includes('A photo'))).toHaveLength(1)
})

test('the book says how many photos it leaves out; with them it is one zip, and an empty phone has all of it again', async ({
  browser,
  context,
}) => {
  const told = [pictures.glassInSeptember, pictures.glassInNovember, pictures.box]
  const page = await openApp(context)
  await restore(page, await backupWith(backupOf(households.photographed()), told))
  await expect(page.getByText(/3\sphotos taken in\./)).toBeVisible()
  await expect(said(page, 'The book tells of 4 photos, 3 of them on this phone.')).toBeVisible()
  const text = readFileSync(await (await saved(page, 'Save a backup file')).path(), 'utf8')
  expect(JSON.parse(text.split('\n')[0] ?? '')).toMatchObject({ photos: { told: 4, inside: 0 } })
  const file = await saved(page, /^Save it with the photos, 19\skB/)
  expect(file.suggestedFilename()).toBe('smallhours-2026-11-25.zip')
  const zipped = readFileSync(await file.path())
  const zip = await JSZip.loadAsync(zipped, { checkCRC32: true })
  expect(zip.file(/^photos\//).map(({ name }) => name)).toHaveLength(3)
  const book = await zip.file('smallhours-2026-11-25.txt')?.async('string')
  expect(JSON.parse(book?.split('\n')[0] ?? '')).toMatchObject({ photos: { told: 4, inside: 3 } })

  const other = await openApp(await browser.newContext({ timezoneId: 'Europe/London' }))
  await restore(other, text)
  await go(other, `${life}/photos`)
  await expect(other.getByText('Not on this phone').first()).toBeVisible()
  // The entries are all there: the pictures alone are new.
  await go(other, '/phone')
  await other
    .getByLabel('A backup file to take in')
    .setInputFiles({ name: 'it.zip', mimeType: 'application/zip', buffer: zipped })
  await expect(said(other, 'It tells of 4 photos, and 3 of them are in it.')).toBeVisible()
  await touch(other, 'Take in 3')
  await expect(said(other, '3 photos taken in.')).toBeVisible()
  await go(other, `${life}/photos`)
  expect(await drawn(other, /the left corner/)).toBe(480)
  await other.context().close()
})

test('a zip that was cut short is refused, and a picture that changed on its way is left out', async ({ context }) => {
  const page = await openApp(context)
  const book = backupOf(households.photographed())
  const { box, glassInNovember } = pictures
  const changed = { ...box, bytes: Buffer.from(box.bytes.map((byte, i) => (i === 2_000 ? byte ^ 1 : byte))) }
  const zipped = await backupWith(book, [changed, glassInNovember])
  await go(page, '/phone')
  const field = page.getByLabel('A backup file to take in')
  await field.setInputFiles({ name: 'it.zip', mimeType: 'application/zip', buffer: zipped.subarray(0, 9_000) })
  await expect(page.getByText('That file was cut short on its way, or is damaged.')).toBeVisible()
  const without = await new JSZip().file('letter.doc', 'not a book').generateAsync({ type: 'nodebuffer' })
  await field.setInputFiles({ name: 'it.zip', mimeType: 'application/zip', buffer: without })
  await expect(page.getByText(/not a Smallhours/)).toBeVisible()
  await restore(page, zipped)
  await expect(page.getByText(/1\sphoto taken in\. One in the file had changed on the way/)).toBeVisible()
})

test('two tabs: a picture that comes in one is drawn in the other, and a photo crossed out here does not come back', async ({
  context,
}) => {
  const [one, two] = [await openApp(context), await openApp(context)]
  const book = backupOf(households.photographed())
  await restore(one, book)
  await go(two, `${life}/photos`)
  await expect(two.getByText('Not on this phone').first()).toBeVisible()
  const zipped = await backupWith(book, Object.values(pictures))
  const field = one.getByLabel('A backup file to take in')
  const zip = { name: 'it.zip', mimeType: 'application/zip', buffer: zipped }
  await field.setInputFiles(zip)
  await touch(one, 'Take in 3')
  await expect(said(one, '3 photos taken in.')).toBeVisible()
  expect(await drawn(two, /the left corner/)).toBe(480)
  await go(one, life)
  await one.getByRole('button', { name: /the box, just opened/ }).click()
  await one.getByRole('dialog').getByRole('button', { name: 'Cross out' }).click()
  await one.getByRole('button', { name: 'Cross it out' }).click()
  await expect(one.getByRole('button', { name: /the box, just opened/ })).toHaveCount(0)
  await go(one, '/phone')
  await touch(one, 'Delete them$')
  await touch(one, 'Delete them for good')
  await expect(one.getByText(/^1\sphoto deleted from this phone/)).toBeVisible()
  expect(await onDisk(one)).toBe(2)
  await field.setInputFiles(zip)
  await expect(said(one, 'and 3 of them are in it, all here already.')).toBeVisible()
})

test('on the keyboard: opened, looked at, closed, and back where it was', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, await backupWith(backupOf(households.photographed()), Object.values(pictures)))
  await go(page, life)
  const thumb = page.getByRole('button', { name: /the box, just opened/ })
  await thumb.focus()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('dialog', { name: '25 August' })).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await expect(thumb).toBeFocused()
  await page.keyboard.press('Enter')
  await page.getByRole('button', { name: 'What it shows, and when' }).press('Enter')
  await page.getByLabel('What does it show?').fill('the box from above')
  await page.getByRole('button', { name: 'Save' }).press('Enter')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await expect(page.getByRole('button', { name: /the box from above/ })).toBeFocused()
})

declare global {
  interface Window {
    full: boolean
  }
}
