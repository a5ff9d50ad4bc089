/** What the screens of the night ask. Checked only against our own worked examples. */
import { describe, expect, test } from 'vitest'
import {
  bottlesNeeded,
  day,
  describeEquipment,
  type EquipmentDescribed,
  inFront,
  lettersClosed,
  lettersOpen,
  lookAgain,
  notePour,
  noteTreated,
  type ParcelId,
  parcelAt,
  parcelsWaiting,
  planSeeding,
  type RunId,
  recordArrival,
  runNow,
  type SeedingAsked,
  stillOff,
  stopRun,
  takeWater,
  tickStep,
  toPourAt,
  toTakeAt,
  treatedAt,
  uncapBottles,
  writeLetter,
} from '../../../core/index.ts'
import { at, type Book, done, given, refusalOf } from '../../support/given.ts'
import { lab, longGallery, mL, moveIn, usGal } from '../../support/givenLab.ts'

const run = 'run1' as RunId
const parcel = 'parcel1' as ParcelId
const tuesday = '2027-06-15'
const equipment: EquipmentDescribed = {
  kind: 'equipmentDescribed',
  at: moveIn,
  tank: longGallery,
  devices: [
    { key: 'sock', device: 'sock', stops: true },
    { key: 'skimmer', device: 'skimmer', stops: true },
    { key: 'return', device: 'return', stops: true },
  ],
  places: [{ place: 'display', mayBeLit: false }],
}
const asked: SeedingAsked = {
  run,
  tank: longGallery,
  parcel,
  animals: ['copepods'],
  pours: [{ into: 'display', bottles: 3 }],
  holds: mL(473),
  waterOut: 'half',
  rinse: { each: mL(100), of: 'newSaltWater' },
  off: at(`${tuesday} 21:40`),
  morning: at('2027-06-16 07:30'),
}
const came = {
  parcel,
  came: at(`${tuesday} 17:40`),
  bottles: [{ animals: 'copepods' as const, count: 3, holds: mL(473) }],
  looked: 'stillCold' as const,
}
const planned = (): Book => {
  const book = given(lab, equipment)
  book.does(() => recordArrival(came, at(`${tuesday} 17:45`)))
  book.does((world) => planSeeding(world, asked, at(`${tuesday} 18:00`)))
  return book
}
const tick = (book: Book, step: string, now: string) =>
  book.does((world) => tickStep(world, { run, step }, at(`${tuesday} ${now}`)))
const standing = (book: Book, now: string) => {
  const known = book.world().runs.get(run)
  const stands = known && runNow(known, at(`${tuesday} ${now}`))
  if (!stands) throw new Error('no run')
  return stands
}

describe('the night', () => {
  test('pumps that are due come before a step that was left out, and no sooner', () => {
    const book = planned()
    for (const step of ['sock-out', 'dark-display', 'skimmer-off', 'return-off']) tick(book, step, '21:40')
    expect(inFront(standing(book, '22:39'), at(`${tuesday} 22:39`))?.step).toBe('level')
    expect(inFront(standing(book, '22:40'), at(`${tuesday} 22:40`))?.step).toBe('return-on')
    tick(book, 'return-on', '22:41')
    expect(inFront(standing(book, '22:42'), at(`${tuesday} 22:42`))?.step).toBe('level')
  })

  test('half of the water before, the rest by what really came', () => {
    const book = planned()
    const take = (step: string) => {
      const known = book.world().runs.get(run)
      return known && toTakeAt(step, asked, known)
    }
    // 3 × (473 + 100) = 1719 mL, of which half.
    expect(take('waterOut')).toBe(859_500)
    book.does((world) => takeWater(world, { run, way: 'out', amount: mL(860) }, at(`${tuesday} 21:44`)))
    expect(take('waterOut')).toBe(0)
    const one = { into: 'display' as const, bottles: 1, amount: mL(473), rinse: mL(100) }
    book.does((world) => notePour(world, { run, ...one }, at(`${tuesday} 21:46`)))
    expect(take('waterOutRest')).toBe(0)
    const known = book.world().runs.get(run)
    const rest = known && toPourAt('display', asked, known)
    expect(rest).toEqual({ into: 'display', bottles: 2, amount: 946_000, rinse: 200_000 })
    if (rest) book.does((world) => notePour(world, { run, ...rest }, at(`${tuesday} 21:50`)))
    expect(take('waterOutRest')).toBe(859_000)
    const after = book.world().runs.get(run)
    expect(after && toPourAt('display', asked, after)).toBeUndefined()
  })

  test('a heater in the sump waits for the pumps, however late they went off', () => {
    const devices = [...equipment.devices, { key: 'sumpHeater', device: 'sumpHeater' as const, stops: true }]
    const book = given(lab, { ...equipment, devices })
    book.does((world) => planSeeding(world, asked, at(`${tuesday} 18:00`)))
    const heater = (now: string) => standing(book, now).steps.find(({ step }) => step === 'sumpHeater-on')
    expect(heater('21:00')?.at).toBe(at(`${tuesday} 22:40`))
    tick(book, 'return-off', '21:53')
    expect(heater('22:41')).toMatchObject({ at: at(`${tuesday} 22:53`), late: 0 })
    expect(standing(book, '22:41').pumps).toMatchObject({ backBy: at(`${tuesday} 22:53`), late: 0 })
  })

  test('stopped, what is still off is told, what moves the water first', () => {
    const book = planned()
    for (const step of ['sock-out', 'skimmer-off', 'return-off']) tick(book, step, '21:40')
    book.does((world) => stopRun(world, { run, because: 'fishBreathingHard' }, at(`${tuesday} 21:50`)))
    expect(stillOff(standing(book, '21:51'))).toEqual(['return', 'sock', 'skimmer'])
    tick(book, 'return-on', '21:52')
    tick(book, 'sock-in', '21:53')
    expect(stillOff(standing(book, '21:54'))).toEqual(['skimmer'])
  })
})

describe('what is told', () => {
  test('bottles wait until a night takes them, and again when it is called off', () => {
    const book = given(lab, equipment)
    book.does(() => recordArrival(came, at(`${tuesday} 17:45`)))
    const waiting = (now: string) => parcelsWaiting(book.world(), at(now)).map((each) => each.parcel)
    expect(waiting(`${tuesday} 18:00`)).toEqual([parcel])
    book.does((world) => planSeeding(world, asked, at(`${tuesday} 18:00`)))
    expect(waiting(`${tuesday} 18:01`)).toEqual([])
    book.does((world) => stopRun(world, { run, because: 'calledOff' }, at(`${tuesday} 20:00`)))
    expect(waiting(`${tuesday} 20:01`)).toEqual([parcel])
    expect(waiting('2027-06-23 20:01')).toEqual([])
  })

  test('a parcel is of something, has come, and is opened once; it is judged again when it is warm', () => {
    const now = at(`${tuesday} 17:45`)
    expect(refusalOf(recordArrival({ ...came, bottles: [] }, now))).toEqual({ why: 'noBottles' })
    const later = at(`${tuesday} 19:00`)
    expect(refusalOf(recordArrival({ ...came, came: later }, now))).toEqual({ why: 'notYet', at: later })
    expect(refusalOf(recordArrival({ ...came, claimHours: 0 }, now))).toEqual({ why: 'claimHours', most: 672 })
    const book = given(lab)
    book.does(() => recordArrival(came, now))
    book.does((world) => uncapBottles(world, parcel, now))
    expect(refusalOf(uncapBottles(book.world(), parcel, later))).toEqual({ why: 'uncappedAlready' })
    book.does((world) => lookAgain(world, { parcel, looked: 'lively' }, later))
    expect(parcelAt(book.world(), parcel, later)).toMatchObject({ looked: 'lively', came: came.came })
  })

  test('a tank has a place to pour into; copper is told and taken back', () => {
    const now = at(`${tuesday} 17:45`)
    const book = given(lab)
    const none = { tank: longGallery, devices: [], places: [] }
    expect(refusalOf(describeEquipment(book.world(), none, now))).toEqual({ why: 'noPlaces' })
    book.does((world) => noteTreated(world, { tank: longGallery, with: 'copper' }, now))
    expect(treatedAt(book.world(), longGallery, now)?.with).toBe('copper')
    book.does((world) => noteTreated(world, { tank: longGallery, with: 'nothing' }, at(`${tuesday} 18:00`)))
    expect(treatedAt(book.world(), longGallery, at(`${tuesday} 18:01`))?.with).toBe('nothing')
    expect(done(bottlesNeeded(usGal(80), 40, false)).bottles).toBe(2)
  })

  test('a letter is closed until its day, open for a fortnight, and opens tomorrow at the soonest', () => {
    const now = at(`${tuesday} 22:50`)
    const book = given(lab)
    const letter = (opens: string, text = 'Are there young ones?') =>
      writeLetter(book.world(), { tank: longGallery, text, opens: day(opens) }, now)
    expect(refusalOf(letter(tuesday))).toEqual({ why: 'opensTooSoon', opens: tuesday })
    expect(refusalOf(letter('2027-07-13', '  '))).toEqual({ why: 'noWords' })
    book.note(...done(letter('2027-07-13')))
    const open = (today: string) => lettersOpen(book.world(), longGallery, day(today)).map(({ text }) => text)
    expect(open('2027-07-12')).toEqual([])
    expect(lettersClosed(book.world(), longGallery, day('2027-07-12'))).toEqual({ count: 1, next: '2027-07-13' })
    expect(open('2027-07-13')).toEqual(['Are there young ones?'])
    expect(lettersClosed(book.world(), longGallery, day('2027-07-13'))).toBeUndefined()
    expect(open('2027-07-26')).toHaveLength(1)
    expect(open('2027-07-27')).toEqual([])
  })
})
