/** Every bar in one run, as ratios: a slow machine is slow on both sides. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, expect, test } from '@playwright/test'
import { day, momentAt } from '../../core/index.ts'
import { phone } from '../browser/harness/page.ts'
import { london } from '../support/given.ts'
import type { Host } from '../support/host.ts'
import { fullFreezer, threeFoods } from './fullFreezer.ts'
import { household } from './household.ts'
import type {} from './pages/timed.ts'
import { seed } from './seed.ts'
import { benchSite, buildInto } from './site.ts'
import { sizesOf } from './sizes.ts'
import { startBesideEmpty } from './start.ts'
import { type Bar, passes, table } from './table.ts'

const starts = 11
const taps = 40
const folds = 9
const walks = 31
const ms = (value: number) => `${value.toFixed(1)} ms`

test('the bars', async () => {
  const site = await benchSite()
  try {
    const bars = [
      ...(await withPhone(site, 20_000, async (context) => [
        await start(context, site, 'ten years', 2),
        await tap(context, site, 'ten years'),
      ])),
      ...(await withPhone(site, 2_000, async (context) => [await start(context, site, 'one year', 1.5)])),
      ...(await withPhone(site, 200, async (context) => [
        await tap(context, site, 'one month'),
        ...(await folding(context, site)),
        await walking(context, site),
      ])),
      ...weighing(),
    ]
    console.log(`\n\n${table(bars)}\n`)
    expect(bars.filter((bar) => !passes(bar)).map(({ bar }) => bar)).toEqual([])
  } finally {
    site.close()
  }
})

/** A new browser over a disk of its own, with a household's ledger on it. */
const withPhone = async (
  site: Host,
  entries: number,
  measure: (context: BrowserContext) => Promise<readonly Bar[]>,
): Promise<readonly Bar[]> => {
  const pocket = phone()
  try {
    const context = await pocket.start()
    await seed(context, site.address, entries)
    return await measure(context)
  } finally {
    await pocket.throwAway()
  }
}

const start = async (context: BrowserContext, site: Host, name: string, limit: number): Promise<Bar> => {
  const { app, empty, ratio } = await startBesideEmpty(context, site.address, starts)
  const detail = `${ms(app)} beside ${ms(empty)}`
  return { bar: `cold offline start, ${name}, beside an empty page`, measured: ratio, limit, unit: 'x', detail }
}

const timedPage = async (context: BrowserContext, site: Host) => {
  const page = await context.newPage()
  await page.goto(`${site.address}timed.html`)
  await page.evaluate(() => window.timed.started)
  return page
}

const tap = async (context: BrowserContext, site: Host, name: string): Promise<Bar> => {
  const page = await timedPage(context, site)
  const took = await page.evaluate((times) => window.timed.tapBesideAdd(times), taps)
  await page.close()
  const detail = `${ms(took.tap)} beside ${ms(took.add)}; told, with the world refolded, after ${ms(took.told)}`
  return { bar: `tap to durable, ${name}, beside a bare add`, measured: took.ratio, limit: 1.5, unit: 'x', detail }
}

const folding = async (context: BrowserContext, site: Host): Promise<readonly Bar[]> => {
  const entries = household(100_000, day('2026-11-25'))
  // As two phones hand them over, one after the other, and so not in order.
  const byPhone = [...entries].sort((a, b) => (a.id.slice(20) < b.id.slice(20) ? -1 : 1))
  const page = await timedPage(context, site)
  const bars: Bar[] = []
  for (const [name, held] of [
    ['in order', entries],
    ['phone by phone', byPhone],
  ] as const) {
    const text = JSON.stringify(held)
    const took = await page.evaluate(([given, times]) => window.timed.foldBesideParse(given, times), [
      text,
      folds,
    ] as const)
    const detail = `${ms(took.fold)} beside ${ms(took.parse)}`
    bars.push({ bar: `fold of 100,000, ${name}, beside JSON.parse`, measured: took.ratio, limit: 1, unit: 'x', detail })
  }
  await page.close()
  return bars
}

const walking = async (context: BrowserContext, site: Host): Promise<Bar> => {
  const tonight = day('2026-11-25')
  const page = await timedPage(context, site)
  const took = await page.evaluate(
    ([entries, foods, now, times]) => window.timed.walkBesideFold(entries, foods, now, times),
    [fullFreezer(tonight), threeFoods, momentAt(tonight, 1_200, london), walks] as const,
  )
  await page.close()
  const detail = `${ms(took.walk)} for ${took.doses} doses beside ${ms(took.fold)}`
  return { bar: 'forecast of three years, beside the fold', measured: took.ratio, limit: 0.5, unit: 'x', detail }
}

const weighing = (): readonly Bar[] => {
  const folder = mkdtempSync(join(tmpdir(), 'smallhours-sizes-'))
  try {
    buildInto(folder)
    const { tonight, precache, scripts, kept } = sizesOf(folder)
    return [
      {
        bar: 'JavaScript for Tonight, gzip',
        measured: tonight / 1000,
        limit: 120,
        unit: 'kB',
        detail: `${scripts.length} files`,
      },
      {
        bar: 'whole precache, gzip',
        measured: precache / 1000,
        limit: 450,
        unit: 'kB',
        detail: `${kept.length + 1} files`,
      },
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
