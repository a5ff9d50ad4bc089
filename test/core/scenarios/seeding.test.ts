/** The night live bottles are poured. Checked only against our own worked examples, but where a source is named. */
import { expect, test } from 'vitest'
import {
  balanceOf,
  bottlesNeeded,
  gaps,
  hoursOff,
  lastNight,
  microlitres,
  notePour,
  openRuns,
  plannedIn,
  planSeeding,
  pourNights,
  type RunId,
  recordPour,
  runNow,
  type SeedingAsked,
  saltShift,
  stopRun,
  takeWater,
  tankAt,
  tickStep,
  type World,
} from '../../../core/index.ts'
import { at, type Book, done, given, refusalOf } from '../../support/given.ts'
import { lab, longGallery, mL, moveIn, tankOf, usGal } from '../../support/givenLab.ts'
import { equipmentOf } from '../../support/givenSeeding.ts'

const run = 'run1' as RunId
const equipment = equipmentOf(['topOff', 'skimmer', 'uv', 'return', 'wave', 'sumpHeater'])
const tuesday = '2027-06-15'
const asked: SeedingAsked = {
  run,
  tank: longGallery,
  animals: ['copepods'],
  pours: [
    { into: 'display', bottles: 2 },
    { into: 'refugium', bottles: 1 },
  ],
  holds: mL(473),
  waterOut: 'after',
  rinse: { each: mL(100), of: 'newSaltWater' },
  off: at(`${tuesday} 21:40`),
  morning: at('2027-06-16 07:30'),
}
const planned = (more: Partial<SeedingAsked> = {}): Book => {
  const book = given(lab, equipment)
  const now = at(`${tuesday} 18:00`)
  book.note(...done(planSeeding(book.world(), { ...asked, ...more }, now)))
  return book
}
const standing = (world: World, now: string) => {
  const known = world.runs.get(run)
  const stands = known && runNow(known, at(now))
  if (!stands) throw new Error('no run')
  return stands
}
const tick = (book: Book, step: string, now: string) => book.does((world) => tickStep(world, { run, step }, at(now)))

test('108 gallons at a reach of 40 want three bottles, and six where fish hunt them', () => {
  const water = usGal(108.33)
  expect(done(bottlesNeeded(water, 40, false))).toMatchObject({ bottles: 3 })
  expect(done(bottlesNeeded(water, 40, false)).exact).toBeCloseTo(2.71, 2)
  expect(done(bottlesNeeded(water, 40, true))).toMatchObject({ bottles: 6 })
  expect(done(bottlesNeeded(water, 40, true)).exact).toBeCloseTo(5.42, 2)
  expect(refusalOf(bottlesNeeded(usGal(0), 40, false))).toEqual({ why: 'noWater' })
  expect(refusalOf(bottlesNeeded(water, 0, false))).toEqual({ why: 'reachNotPositive' })
})

test('as much water leaves as came: bottles and rinses of new salt water, not rinses of tank water', () => {
  expect(plannedIn(asked)).toBe(mL(1719))
  expect(plannedIn({ ...asked, rinse: { each: mL(100), of: 'tankWater' } })).toBe(mL(1419))
  const book = planned()
  const pour = (into: 'display' | 'refugium', bottles: number) =>
    book.does((world) =>
      notePour(
        world,
        { run, into, bottles, amount: microlitres(bottles * 473_000), rinse: microlitres(bottles * 100_000) },
        at(`${tuesday} 21:50`),
      ),
    )
  pour('display', 2)
  pour('refugium', 1)
  const water = (way: 'out' | 'borrowed' | 'putBack', amount: number) =>
    book.does((world) => takeWater(world, { run, way, amount: mL(amount) }, at(`${tuesday} 21:58`)))
  const tally = () => {
    const known = book.world().runs.get(run)
    return known && balanceOf(known)
  }
  expect(tally()).toEqual({ in: 1_719_000, out: 0, left: 1_719_000 })
  // Borrowed to rinse with and poured back it is none; what never goes back is out already.
  water('borrowed', 300)
  expect(tally()).toMatchObject({ out: 300_000, left: 1_419_000 })
  water('putBack', 200)
  expect(tally()).toMatchObject({ out: 100_000 })
  water('out', 1619)
  expect(tally()).toEqual({ in: 1_719_000, out: 1_719_000, left: 0 })
})

test('the pumps are back within the hour of their tick, and the skimmer is off for ten hours and five minutes', () => {
  const book = planned()
  tick(book, 'topOff-off', `${tuesday} 21:10`)
  tick(book, 'skimmer-off', `${tuesday} 21:25`)
  tick(book, 'uv-off', `${tuesday} 21:25`)
  tick(book, 'return-off', `${tuesday} 21:40`)
  const quiet = standing(book.world(), `${tuesday} 22:00`)
  expect(quiet.is).toBe('pumpsOff')
  expect(quiet.pumps).toEqual({ off: at(`${tuesday} 21:40`), backBy: at(`${tuesday} 22:40`), late: 0 })
  // Opened again seventeen minutes after: no fresh hour.
  expect(standing(book.world(), `${tuesday} 22:57`).pumps).toMatchObject({ backBy: at(`${tuesday} 22:40`), late: 17 })
  tick(book, 'return-on', `${tuesday} 22:58`)
  for (const step of ['dark-display', 'level', 'sumpHeater-off', 'pour-display', 'pour-refugium', 'waterOutRest'])
    tick(book, step, `${tuesday} 22:59`)
  tick(book, 'sumpHeater-on', `${tuesday} 22:59`)
  expect(standing(book.world(), `${tuesday} 23:30`)).toMatchObject({ is: 'overnight', pumps: undefined })
  expect(standing(book.world(), '2027-06-16 07:30')).toMatchObject({ is: 'morning', next: { step: 'uv-on' } })
  const known = book.world().runs.get(run)
  expect(known && hoursOff(known, 'skimmer', at('2027-06-16 07:30'))).toBeCloseTo(10 + 5 / 60, 10)
  // The run stays open until each is ticked, a day late too.
  tick(book, 'uv-on', '2027-06-17 08:00')
  tick(book, 'morningLook', '2027-06-17 08:01')
  tick(book, 'topOff-on', '2027-06-17 08:02')
  expect(openRuns(book.world(), at('2027-06-17 08:03'))).toHaveLength(1)
  tick(book, 'skimmer-on', '2027-06-17 08:04')
  expect(standing(book.world(), '2027-06-17 08:05').is).toBe('done')
  expect(openRuns(book.world(), at('2027-06-17 08:05'))).toEqual([])
})

test('the pumps ticked off late have their hour from that tick', () => {
  const book = planned()
  tick(book, 'return-off', `${tuesday} 22:10`)
  expect(standing(book.world(), `${tuesday} 22:20`).pumps?.backBy).toBe(at(`${tuesday} 23:10`))
})

test('a litre and a half of weaker water in four hundred and ten shifts the salt by less than anybody measures', () => {
  // S′ = (S(V − v) + Sᵦv) / V, by hand: 35 − 1.419 × 7 / 410 = 34.9758
  const shift = done(saltShift(410, 35, mL(1419), 28))
  expect(shift.after).toBeCloseTo(34.98, 2)
  expect(shift.notable).toBe(false)
  // 200 L at 35, one litre at 25 in exchange: 34.95.
  expect(done(saltShift(200, 35, mL(1000), 25)).after).toBeCloseTo(34.95, 10)
  expect(refusalOf(saltShift(410, 1.025, mL(1419), 28))).toEqual({ why: 'notSalinity', typed: 1.025 })
})

test('water with copper, a lit display and a lamp that kills germs are refused as a plan, and recorded as a pour', () => {
  const now = at(`${tuesday} 18:00`)
  const copper = { kind: 'tankTreated', at: moveIn, tank: longGallery, with: 'copper' } as const
  const treated = given(lab, equipment, copper)
  expect(refusalOf(planSeeding(treated.world(), asked, now))).toEqual({ why: 'treatedWater', with: 'copper' })
  const early = { ...asked, off: at(`${tuesday} 20:30`) }
  expect(refusalOf(planSeeding(given(lab, equipment).world(), early, now))).toEqual({
    why: 'displayLit',
    dark: at(`${tuesday} 21:00`),
  })
  // A refugium may be seeded with its lamp on.
  const sump = { ...early, pours: [{ into: 'refugium' as const, bottles: 1 }] }
  expect(planSeeding(given(lab, equipment).world(), sump, now).ok).toBe(true)
  const burning = {
    ...equipment,
    devices: equipment.devices.map((it) => (it.key === 'uv' ? { ...it, stops: false } : it)),
  }
  expect(refusalOf(planSeeding(given(lab, burning).world(), asked, now))).toEqual({
    why: 'killsWhatIsPoured',
    device: 'uv',
  })
  const poured = done(
    recordPour(
      treated.world(),
      { tank: longGallery, poured: now, animals: ['copepods'], pours: asked.pours, why: 'did not know' },
      now,
    ),
  )
  expect(poured[0]).toMatchObject({ kind: 'livePoured', night: tuesday, why: 'did not know' })
})

test('fish breathing hard ends the run and keeps its tally', () => {
  const book = planned()
  tick(book, 'return-off', `${tuesday} 21:40`)
  book.does((world) =>
    notePour(world, { run, into: 'display', bottles: 1, amount: mL(473), rinse: mL(0) }, at(`${tuesday} 21:50`)),
  )
  book.does((world) => stopRun(world, { run, because: 'fishBreathingHard' }, at(`${tuesday} 21:55`)))
  const world = book.world()
  expect(standing(world, `${tuesday} 22:00`).is).toBe('stopped')
  // Stopped is not switched on: the night stays in hand until the pump is ticked.
  expect(openRuns(world, at(`${tuesday} 22:00`)).map(({ run: { id } }) => id)).toEqual([run])
  tick(book, 'return-on', `${tuesday} 22:01`)
  expect(openRuns(book.world(), at(`${tuesday} 22:02`))).toEqual([])
  expect(lastNight(book.world(), longGallery, at(`${tuesday} 22:02`))?.run.id).toBe(run)
  expect(world.runs.get(run)?.pours).toHaveLength(1)
  expect(refusalOf(stopRun(world, { run, because: 'calledOff' }, at(`${tuesday} 22:00`)))).toEqual({
    why: 'stoppedAlready',
  })
})

test('a parcel at seven in the evening: tonight is best, tomorrow is fine, then it is a decision', () => {
  const world = given(tankOf(longGallery, usGal(200)), lab.slice(1)).world()
  const came = at(`${tuesday} 19:00`)
  const tank = tankAt(world, longGallery, came)
  const nights = tank && pourNights(world, tank, came, came)
  expect(nights).toEqual([
    { night: '2027-06-15', dark: at('2027-06-15 21:00'), hours: 2, is: 'best' },
    { night: '2027-06-16', dark: at('2027-06-16 21:00'), hours: 26, is: 'fine' },
    { night: '2027-06-17', dark: at('2027-06-17 21:00'), hours: 50, is: 'decide' },
  ])
})

test('what stands between the water and live animals is a list of gaps', () => {
  expect(gaps({ ammonia: 0, nitrite: 0, copper: 'never', film: true, celsius: 25, salinity: 35 })).toEqual([])
  expect(gaps({ ammonia: 0.5, nitrite: 0, copper: 'once', film: false, celsius: 29, salinity: 1.025 })).toEqual([
    { gap: 'copper', now: false },
    { gap: 'ammonia', measured: 0.5 },
    { gap: 'nothingToGraze' },
    { gap: 'temperature', measured: 29, high: true },
    { gap: 'gravityTyped', measured: 1.025 },
  ])
  expect(gaps({})).toHaveLength(6)
})

test('a step ticked twice is done once, and one that is not in the plan is none', () => {
  const book = planned()
  tick(book, 'skimmer-off', `${tuesday} 21:25`)
  const world = book.world()
  expect(refusalOf(tickStep(world, { run, step: 'skimmer-off' }, at(`${tuesday} 21:26`)))).toEqual({
    why: 'doneAlready',
  })
  expect(refusalOf(tickStep(world, { run, step: 'moon-off' }, at(`${tuesday} 21:26`)))).toEqual({ why: 'noSuchStep' })
})
