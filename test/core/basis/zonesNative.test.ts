/** Engines with a calendar of their own are asked first: both ways must tell the same time. */
import { Temporal } from 'temporal-polyfill'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { addDays, day, moment, momentAt, wallClock, type Zone } from '../../../core/index.ts'

let native: Pick<typeof import('../../../core/index.ts'), 'momentAt' | 'wallClock'>
beforeAll(async () => {
  vi.resetModules()
  vi.stubGlobal('Temporal', Temporal)
  native = await import('../../../core/index.ts')
})
afterAll(() => vi.unstubAllGlobals())

const names = ['Europe/London', 'America/St_Johns', 'Australia/Lord_Howe', 'Pacific/Auckland', 'Africa/Casablanca']

test.each(names)('the engine and the library show the same wall clock through three years in %s', (name) => {
  const zone = name as Zone
  const from = Date.UTC(2026, 0, 1)
  for (let hour = 0; hour < 3 * 365 * 24; hour += 3) {
    const at = moment(from + hour * 3_600_000 + 1)
    expect(native.wallClock(at, zone)).toEqual(wallClock(at, zone))
  }
})

test.each(names)('and name the same moment for a wall clock, skipped and repeated times among them, in %s', (name) => {
  const zone = name as Zone
  for (let step = 0; step < 3 * 365; step += 1)
    for (const minutes of [90, 119, 150, 179, 1260])
      expect(native.momentAt(addDays(day('2026-01-01'), step), minutes, zone)).toBe(
        momentAt(addDays(day('2026-01-01'), step), minutes, zone),
      )
})
