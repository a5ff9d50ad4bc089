/** One tab takes a new version while another has a half-filled form: what is shipped, served by a plain host. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, type Page, test } from '@playwright/test'
import { host } from '../support/host.ts'
import { households } from './households.ts'
import { backupOf, go, restore } from './keeper.ts'

const built = fileURLToPath(new URL('../../dist', import.meta.url))

/** A later edition differs by a word in its worker, which is what a browser looks at. */
const editions = async () => {
  let edition = 'first'
  const site = await host((path) => {
    const body = readFileSync(join(built, path))
    return path === '/worker.js' ? `${body}\n// ${edition}` : body
  })
  return {
    ...site,
    publish: (next: string) => {
      edition = next
    },
  }
}

test('both tabs come back in the new version, and the note that was being written is still being written', async ({
  context,
}) => {
  test.setTimeout(60_000)
  const site = await editions()
  try {
    const open = async (): Promise<Page> => {
      const page = await context.newPage()
      await page.goto(site.address)
      await page.evaluate(() => navigator.serviceWorker.ready)
      return page
    }
    const one = await open()
    await restore(one, backupOf(households.twoTanks()))
    const two = await open()
    await go(one, '/diary/note')
    const words = one.getByLabel('What happened, or what did you see?')
    await words.fill('Half a sentence about the')
    site.publish('second')
    await go(two, '/phone')
    await two.getByRole('button', { name: 'Look for an update' }).click()
    await expect(two.getByText(/^There is a newer version/)).toBeVisible()
    await expect(one.getByText('A new version is ready. Your drafts are kept.')).toBeVisible()
    let loads = 0
    for (const page of [one, two]) page.on('load', () => loads++)
    // At once after the last key: nothing of it is on disk yet.
    await words.pressSequentially(' lamp')
    await two.getByRole('button', { name: 'Take it' }).click()
    await expect.poll(() => loads).toBe(2)
    await expect(one.getByRole('heading', { level: 1, name: 'A note' })).toBeVisible()
    await expect(words).toHaveValue('Half a sentence about the lamp')
    await expect(one.getByText('A new version is ready')).toBeHidden()
    await one.waitForTimeout(500)
    expect(loads).toBe(2)
  } finally {
    site.close()
  }
})
