/** One tab takes a new version while another has a half-filled form: what is shipped, served by a plain host. */
import { readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, type Page, test } from '@playwright/test'
import { households } from './households.ts'
import { backupOf, go, restore } from './keeper.ts'

const built = fileURLToPath(new URL('../../dist', import.meta.url))
const types: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.webmanifest': 'application/manifest+json',
}

/** A later edition differs by a word in its worker, which is what a browser looks at. */
const host = async () => {
  let edition = 'first'
  const server = createServer((asked, answer) => {
    const { pathname } = new URL(asked.url ?? '/', 'http://host')
    const file = pathname.endsWith('/') ? `${pathname}index.html` : pathname
    try {
      const body = readFileSync(join(built, file))
      answer.setHeader('content-type', types[extname(file)] ?? 'application/octet-stream')
      answer.setHeader('cache-control', 'no-cache')
      answer.end(file === '/worker.js' ? `${body}\n// ${edition}` : body)
    } catch {
      answer.statusCode = 404
      answer.end()
    }
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const at = server.address()
  if (at === null || typeof at === 'string') throw new Error('The host has no port')
  return {
    address: `http://127.0.0.1:${at.port}/`,
    publish: (next: string) => {
      edition = next
    },
    close: () => {
      server.closeAllConnections()
      server.close()
    },
  }
}

test('both tabs come back in the new version, and the note that was being written is still being written', async ({
  context,
}) => {
  test.setTimeout(60_000)
  const site = await host()
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
