/** A plan is changed before the pumps go off: the same night, the same ticks, another hour. Our own worked examples. */
import { expect, test } from 'vitest'
import {
  type DeviceSort,
  openRuns,
  parcelsWaiting,
  planMayChange,
  planSeeding,
  type RunId,
  recordArrival,
  runNow,
  type SeedingAsked,
  stopRun,
  strikeOut,
  tickStep,
} from '../../../core/index.ts'
import { at, type Book, given, refusalOf } from '../../support/given.ts'
import { lab, longGallery, mL } from '../../support/givenLab.ts'
import { equipmentOf } from '../../support/givenSeeding.ts'

const run = 'run1' as RunId
const tuesday = '2027-06-15'
const on = (clock: string) => at(`${tuesday} ${clock}`)
const sorts: readonly DeviceSort[] = ['topOff', 'skimmer', 'uv', 'return', 'wave']
const asked: SeedingAsked = {
  run,
  tank: longGallery,
  animals: ['copepods'],
  pours: [{ into: 'display', bottles: 3 }],
  holds: mL(473),
  waterOut: 'after',
  off: on('21:40'),
  morning: at('2027-06-16 07:30'),
}
const planned = (): Book => {
  const book = given(lab, equipmentOf(sorts))
  book.does((world) => planSeeding(world, asked, on('18:00')))
  return book
}
const tick = (book: Book, step: string, clock: string) =>
  book.does((world) => tickStep(world, { run, step }, on(clock)))
const change = (book: Book, changed: Partial<SeedingAsked>, clock: string) =>
  planSeeding(book.world(), { ...asked, ...changed }, on(clock))
const standing = (book: Book, clock: string) => {
  const known = book.world().runs.get(run)
  const stands = known && runNow(known, on(clock))
  if (!stands) throw new Error('no run')
  return stands
}

test('a plan written again is the same night: the later one holds, and what was ticked stays ticked', () => {
  const book = planned()
  tick(book, 'topOff-off', '21:10')
  book.does((world) => planSeeding(world, { ...asked, off: on('22:25') }, on('21:12')))
  const { plan, steps, next, is } = standing(book, '21:15')
  expect(openRuns(book.world(), on('21:15'))).toHaveLength(1)
  expect(plan.off).toBe(on('22:25'))
  expect(is).toBe('begun')
  // Half an hour before, as with a new plan; ticked at ten past nine all the same.
  expect(steps[0]).toMatchObject({ step: 'topOff-off', at: on('21:55'), done: on('21:10') })
  expect(next).toMatchObject({ step: 'dark-display', at: on('22:05') })
})

test('struck out, the plan before it holds again', () => {
  const book = planned()
  const [changed] = book.does((world) => planSeeding(world, { ...asked, off: on('22:25') }, on('19:00')))
  expect(standing(book, '19:01').plan.off).toBe(on('22:25'))
  if (changed) book.does((world) => strikeOut(world, { target: changed, why: 'mistake' }, on('19:02')))
  expect(standing(book, '19:03').plan.off).toBe(asked.off)
})

test('it may be changed until a pump is off, something is poured or the night is stopped; then it stands', () => {
  const book = planned()
  expect(planMayChange(standing(book, '19:00'))).toBe(true)
  for (const step of ['topOff-off', 'dark-display', 'skimmer-off', 'uv-off']) tick(book, step, '21:20')
  expect(planMayChange(standing(book, '21:25'))).toBe(true)
  expect(change(book, { off: on('21:50') }, '21:25').ok).toBe(true)
  tick(book, 'return-off', '21:40')
  expect(planMayChange(standing(book, '21:41'))).toBe(false)
  expect(refusalOf(change(book, { off: on('22:30') }, '21:41'))).toEqual({ why: 'underWay' })
  tick(book, 'return-on', '21:42')
  expect(refusalOf(change(book, { off: on('22:30') }, '21:43'))).toEqual({ why: 'underWay' })
  const stopped = planned()
  stopped.does((world) => stopRun(world, { run, because: 'calledOff' }, on('19:00')))
  expect(planMayChange(standing(stopped, '19:01'))).toBe(false)
  expect(refusalOf(change(stopped, { off: on('22:30') }, '19:01'))).toEqual({ why: 'underWay' })
})

test('what a new plan would be refused for, a changed one is refused for', () => {
  const book = planned()
  expect(refusalOf(change(book, { off: on('20:30') }, '19:00'))).toEqual({ why: 'displayLit', dark: on('21:00') })
  expect(refusalOf(change(book, { pours: [] }, '19:00'))).toEqual({ why: 'nothingToPour' })
  expect(refusalOf(change(book, { morning: asked.off }, '19:00'))).toEqual({ why: 'morningFirst' })
  expect(refusalOf(change(book, { off: on('21:40') }, '21:55'))).toEqual({ why: 'alreadyGone' })
})

test('what is switched off already is switched on again, though by now it would not stop or is gone from the tank', () => {
  const book = planned()
  tick(book, 'topOff-off', '21:10')
  tick(book, 'skimmer-off', '21:11')
  // The skimmer is said to run on after all, and the top-off to be gone.
  const now = equipmentOf(['skimmer', 'uv', 'return'])
  book.note({
    ...now,
    at: on('21:12'),
    devices: now.devices.map((it) => ({ ...it, stops: it.key !== 'skimmer' })),
  })
  book.does((world) => planSeeding(world, { ...asked, off: on('22:00') }, on('21:13')))
  const left = standing(book, '21:14').steps.flatMap(({ step, done }) => (done === undefined ? [step] : []))
  expect(left).toContain('skimmer-on')
  expect(left).toContain('topOff-on')
  expect(left).not.toContain('wave-off')
})

test('a parcel in the plan stays with it', () => {
  const book = given(lab, equipmentOf(sorts))
  const parcel = 'parcel1' as NonNullable<SeedingAsked['parcel']>
  const bottles = [{ animals: 'copepods' as const, count: 3, holds: mL(473) }]
  book.does(() => recordArrival({ parcel, came: on('17:40'), bottles, looked: 'lively' }, on('17:45')))
  book.does((world) => planSeeding(world, { ...asked, parcel }, on('18:00')))
  book.does((world) => planSeeding(world, { ...asked, parcel, off: on('22:00') }, on('18:30')))
  expect(parcelsWaiting(book.world(), on('18:31'))).toEqual([])
})
