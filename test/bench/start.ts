/** Cold starts without a network on a slow phone: a fresh page, the worker not yet running, the processor slowed. */
import type { BrowserContext } from '@playwright/test'
import { median } from './median.ts'

declare global {
  interface Window {
    /** Milliseconds from the start until "Dosed" is on the page and a touch on it would be heard. */
    answerable: Promise<number>
  }
}

const slowed = 4
const rest = 500

const watchForDosed = () => {
  window.answerable = new Promise((resolve) => {
    const watching = new MutationObserver(() => {
      const there = [...document.querySelectorAll('button')].some(({ textContent }) => textContent.startsWith('Dosed'))
      if (!there) return
      watching.disconnect()
      // A touch waits its turn behind what runs now; so does this message.
      const { port1, port2 } = new MessageChannel()
      port1.onmessage = () => resolve(performance.now())
      port2.postMessage(null)
    })
    watching.observe(document, { childList: true, subtree: true })
  })
}

const coldStart = async (context: BrowserContext, address: string): Promise<number> => {
  const page = await context.newPage()
  const browser = await context.newCDPSession(page)
  await browser.send('ServiceWorker.enable')
  await browser.send('ServiceWorker.stopAllWorkers')
  await browser.send('Emulation.setCPUThrottlingRate', { rate: slowed })
  await page.addInitScript(watchForDosed)
  await page.goto(address, { waitUntil: 'commit' })
  const took = await page.evaluate(() => window.answerable)
  await page.close()
  // What the page had put off until after its first screen must not slow the next one, its neighbour in the comparison.
  await new Promise((resolve) => setTimeout(resolve, rest))
  return took
}

export type StartBeside = { readonly app: number; readonly empty: number; readonly ratio: number }

/** In turns, the first of each thrown away. */
export const startBesideEmpty = async (
  context: BrowserContext,
  address: string,
  times: number,
): Promise<StartBeside> => {
  const spent = { app: [] as number[], empty: [] as number[] }
  await context.setOffline(true)
  for (let turn = 0; turn <= times; turn += 1) {
    const app = await coldStart(context, address)
    const empty = await coldStart(context, `${address}empty.html`)
    if (turn === 0) continue
    spent.app.push(app)
    spent.empty.push(empty)
  }
  await context.setOffline(false)
  const [app, empty] = [median(spent.app), median(spent.empty)]
  return { app, empty, ratio: app / empty }
}
