/** The household to look round in is a plausible one, whatever the day and wherever the phone. */
import { expect, test } from 'vitest'
import { madeUp } from '../../app/madeup/household.ts'
import {
  addDays,
  bottleLastGood,
  type DeviceId,
  day,
  daysBetween,
  decodeEntry,
  dueOf,
  fold,
  foodAt,
  liquidLeft,
  lotLastGood,
  type Moment,
  momentAt,
  nightOf,
  portionsLeft,
  tanksAt,
  tonight,
  writtenAt,
  writtenBy,
  type Zone,
} from '../../core/index.ts'
import { at, zone } from '../support/given.ts'

const device = 'labphone' as DeviceId
const made = (now: Moment, where: Zone) => {
  let count = 0
  return madeUp({ now, zone: where, device, newId: <Id extends string>() => `madeup${count++}` as Id })
}

/** Half hours and quarters, clock changes at midnight and of half an hour, the ends of the calendar, the far south. */
const zones = [
  'UTC',
  'Europe/London',
  'America/St_Johns',
  'America/Havana',
  'Asia/Kathmandu',
  'Africa/Casablanca',
  'Africa/Cairo',
  'Asia/Beirut',
  'Australia/Lord_Howe',
  'Pacific/Chatham',
  'Pacific/Kiritimati',
  'Pacific/Pago_Pago',
  'Antarctica/Troll',
].map(zone)
/** Small hours, either side of where one night ends and the next begins, an afternoon, the dark. */
const times = [0, 3 * 60 + 7, 8 * 60 + 59, 9 * 60, 15 * 60 + 30, 21 * 60 + 5, 23 * 60 + 59]

test('on every day of three years, in zones that do odd things, it adds up and tonight is a dose night', {
  timeout: 120_000,
}, () => {
  const first = day('2026-01-01')
  const seen = new Set<string>()
  for (let on = 0; on < 3 * 365 + 1; on += 1) {
    const where = zones[on % zones.length] as Zone
    const now = momentAt(addDays(first, on), times[on % times.length] as number, where)
    const world = fold(made(now, where))
    const when = `${addDays(first, on)} ${times[on % times.length]} ${where}`
    expect(world.oddities, when).toEqual([])
    const lines = tonight(world, now)
    expect(lines, when).toHaveLength(1)
    const [line] = lines
    if (!line) throw new Error('no line')
    expect(line.state, when).toEqual({ is: 'due', since: undefined, heldUntil: undefined })
    expect(line.unlogged, when).toEqual([])
    expect(line.servings, when).toHaveLength(3)
    for (const { source, amount } of line.servings) {
      expect(source.lastGood !== undefined && daysBetween(line.night, source.lastGood) > 20, when).toBe(true)
      expect(amount, when).toBe(line.plan.amount)
    }
    seen.add(`${where} ${times[on % times.length]}`)
  }
  // Every zone at every one of these times.
  expect(seen.size).toBe(zones.length * times.length)
})

test('it holds what there is to look at: a bottle begun, trays thinned, a night skipped, a spill, a count, a crossing out', () => {
  const now = at('2026-11-25 20:30')
  const entries = made(now, zone('Europe/London'))
  const world = fold(entries)
  const kinds = entries.map(({ fact }) => fact.kind)
  for (const kind of [
    ...['nightSkipped', 'liquidGone', 'portionsGone', 'portionsCounted', 'portionsFrozen', 'portionsOnHand'],
    ...['bottlesShaken', 'entryStruckOut', 'noteWritten'],
  ])
    expect(kinds).toContain(kind)
  expect(kinds.filter((kind) => kind === 'doseGiven')).toHaveLength(18)
  expect(tanksAt(world, now)).toMatchObject([
    { name: 'Long Gallery', water: { stated: { value: 200, unit: 'usGal' } } },
  ])
  const [bottle] = world.bottles.values()
  // 120 less 48 frozen, 3 spilt and ten doses; the one crossed out is back in it.
  expect(bottle && liquidLeft(bottle)).toBe(59_000)
  // 60 less seven doses, one dropped, one counted out.
  expect([...world.lots.values()].map(portionsLeft)).toEqual([51, 48])
  const food = bottle && foodAt(world, bottle.recorded.food, now)
  if (!food) throw new Error('no food')
  expect(bottleLastGood(bottle, food)).toBe('2027-01-02')
  expect([...world.lots.values()].map((lot) => lotLastGood(lot, food))).toEqual(['2028-08-19', '2028-11-03'])
  const [plan] = [...world.plans.values()].flat()
  expect(plan && dueOf(world, plan, now)).toMatchObject({ next: '2026-11-25', lastNight: '2026-11-23' })
})

test('it is written down before now, by this phone, in the order it happened, and reads back', () => {
  const now = at('2026-11-25 03:07')
  const entries = made(now, zone('Europe/London'))
  const ids = entries.map(({ id }) => id)
  expect([...ids].sort()).toEqual(ids)
  expect(new Set(ids).size).toBe(ids.length)
  for (const entry of entries) {
    expect(writtenBy(entry.id)).toBe(device)
    expect(writtenAt(entry.id)).toBeLessThan(now)
    expect(entry.fact.at).toBeLessThanOrEqual(writtenAt(entry.id))
    expect(decodeEntry(JSON.parse(JSON.stringify(entry)))).toEqual(entry)
  }
  const [tank] = tanksAt(fold(entries), now)
  // Seven past three still belongs to the evening before.
  expect(tank && nightOf(now, tank)).toBe('2026-11-24')
})
