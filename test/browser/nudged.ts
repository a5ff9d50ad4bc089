/** A household for the real clock: its lamp goes out just so long before a moment that the nudge is planned for it. */
import {
  addDays,
  type ClockTime,
  describeEquipment,
  describeFood,
  describePlace,
  describeTank,
  type Moment,
  makePlan,
  moment,
  newFood,
  nightOf,
  nudgeDelay,
  planSeeding,
  type RunId,
  recordPortionsOnHand,
  tickStep,
  wallClock,
  wallDay,
} from '../../core/index.ts'
import { bookOf, labPhone, london } from '../support/given.ts'
import { blueClip, greenFood, greenPlan, kitchenFreezer, longGallery, mL, tankOf, usGal } from '../support/givenLab.ts'
import { backupOf } from './keeper.ts'

const twoDigits = (value: number): string => String(value).padStart(2, '0')
const lightsOutFor = (planned: Moment): ClockTime => {
  const { minutes } = wallClock(moment(planned - nudgeDelay * 60_000), london)
  return `${twoDigits(Math.floor(minutes / 60))}:${twoDigits(minutes % 60)}` as ClockTime
}

/** Live bottles were poured, and the pumps went off at this moment. As a backup file's text. */
export const pumpsOffAt = (off: Moment): string => {
  const before = moment(off - 3_600_000)
  const equipment = {
    tank: longGallery,
    devices: [{ key: 'return', device: 'return', stops: true }],
    places: [{ place: 'sump', mayBeLit: true }],
  } as const
  const asked = {
    run: 'run1' as RunId,
    tank: longGallery,
    animals: ['copepods'],
    pours: [{ into: 'sump', bottles: 1 }],
    holds: mL(473),
    waterOut: 'after',
    off,
    morning: moment(off + 10 * 3_600_000),
  } as const
  const book = bookOf(labPhone)
  for (const fact of tankOf(longGallery, usGal(200), { name: 'Long Gallery' })) book.note(fact)
  book.does((world) => describeEquipment(world, equipment, before))
  book.does((world) => planSeeding(world, asked, before))
  book.does((world) => tickStep(world, { run: asked.run, step: 'return-off' }, off))
  return backupOf(book.entries(), new Date(off).toISOString())
}

/** Due tonight, whatever the time of day is. As a backup file's text. */
export const nudgedAt = (planned: number): string => {
  const lightsOut = lightsOutFor(moment(planned))
  const night = nightOf(moment(planned), { zone: london, lightsOut })
  const since = moment(planned - 10 * 86_400_000)
  const tank = {
    tank: longGallery,
    name: 'Long Gallery',
    water: { stated: usGal(200), about: false, doseBy: 'stated' as const },
    zone: london,
    lightsOut,
    pipetteMark: mL(0.05),
  }
  const portions = {
    lot: blueClip,
    food: greenFood,
    mark: 'blue clip',
    portions: 30,
    each: mL(1),
    frozenOn: addDays(wallDay(since, london), -1),
    kept: { as: 'loose' as const },
    place: kitchenFreezer,
    about: false,
  }
  const plan = {
    plan: greenPlan,
    tank: longGallery,
    food: greenFood,
    amount: mL(1),
    everyNights: 2,
    firstNight: night,
  }
  const book = bookOf(labPhone)
  book.does(() => describeTank(tank, since))
  book.does(() => describeFood(newFood(greenFood, 'Green food', 'freshNonViable'), since))
  book.note(...describePlace({ place: kitchenFreezer, name: 'kitchen freezer', door: 'freezer' }, since))
  book.does((world) => recordPortionsOnHand(world, portions, { now: since, zone: london }))
  book.does((world) => makePlan(world, plan, since))
  return backupOf(book.entries(), new Date(planned).toISOString())
}
