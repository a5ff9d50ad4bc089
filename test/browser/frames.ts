/** What the browser's own trace says of frames: how long the page's thread worked on each, whatever else the machine did. */
import type { Page } from '@playwright/test'

type Traced = {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  readonly ts: number
  readonly dur?: number
  /** Microseconds the thread was running. */
  readonly tdur?: number
  readonly args?: { readonly data?: { readonly type?: string } }
}

/** Milliseconds of each task of the page in which such an event was heard, its layout and paint included. */
export const framesOf = async (page: Page, event: string, act: () => Promise<void>): Promise<readonly number[]> => {
  const browser = await page.context().browser()?.newBrowserCDPSession()
  if (!browser) throw new Error('No browser to trace')
  const traced: Traced[] = []
  browser.on('Tracing.dataCollected', ({ value }) => traced.push(...(value as unknown as Traced[])))
  const done = new Promise((resolve) => browser.once('Tracing.tracingComplete', resolve))
  await browser.send('Tracing.start', {
    transferMode: 'ReportEvents',
    categories: 'devtools.timeline,disabled-by-default-devtools.timeline',
  })
  await act()
  await browser.send('Tracing.end')
  await done
  await browser.detach()
  const heard = traced.filter(({ name, args }) => name === 'EventDispatch' && args?.data?.type === event)
  const tasks = traced.filter(({ name }) => name === 'RunTask')
  const within = new Set(
    heard.flatMap(
      ({ pid, tid, ts }) =>
        tasks.find((task) => task.pid === pid && task.tid === tid && task.ts <= ts && ts < task.ts + (task.dur ?? 0)) ??
        [],
    ),
  )
  return [...within].map(({ tdur = Number.NaN }) => tdur / 1000)
}
