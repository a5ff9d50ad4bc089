/** The shapes of what is recorded of live bottles and of the night they are poured. */
import * as v from 'valibot'
import type { ParcelId, RunId, TankId } from '../../basis/ids.ts'
import { deviceSorts } from '../../seeding/facts.ts'
import { amount, count, day, id, list, maybe, measure, moment, oneOf, someAmount, text, yesOrNo } from './fields.ts'

const tank = id<TankId>()
const run = id<RunId>()
const parcel = id<ParcelId>()
/** Of a device or a step: a word, and a number or a second word after a hyphen. */
const key = v.pipe(v.string(), v.regex(/^[a-zA-Z][a-zA-Z0-9-]{0,99}$/))
const into = oneOf(['display', 'sump', 'refugium'])
const animals = oneOf(['copepods', 'rotifers', 'others'])
const bottles = measure(1_000)
/** Parts per thousand. */
const salinity = measure(1_000)

export const equipmentDescribed = v.looseObject({
  kind: v.literal('equipmentDescribed'),
  at: moment,
  tank,
  devices: list(
    v.looseObject({
      key,
      device: oneOf(deviceSorts),
      name: maybe(text),
      stops: yesOrNo,
    }),
  ),
  places: list(v.looseObject({ place: into, mayBeLit: yesOrNo })),
})
export const tankTreated = v.looseObject({
  kind: v.literal('tankTreated'),
  at: moment,
  tank,
  with: oneOf(['medicine', 'copper', 'nothing']),
  what: maybe(text),
})
export const podHuntersNoted = v.looseObject({
  kind: v.literal('podHuntersNoted'),
  at: moment,
  tank,
  there: yesOrNo,
  what: maybe(text),
})
export const liveBottlesCame = v.looseObject({
  kind: v.literal('liveBottlesCame'),
  at: moment,
  parcel,
  came: moment,
  bottles: list(v.looseObject({ animals, count, holds: someAmount })),
  claimHours: maybe(measure(10_000)),
  looked: oneOf(['lively', 'stillCold', 'notSure', 'dead']),
  words: maybe(text),
})
export const liveBottlesUncapped = v.looseObject({ kind: v.literal('liveBottlesUncapped'), at: moment, parcel })
export const seedingPlanned = v.looseObject({
  kind: v.literal('seedingPlanned'),
  at: moment,
  run,
  tank,
  night: day,
  parcel: maybe(parcel),
  animals: list(animals),
  pours: list(v.looseObject({ into, bottles })),
  holds: someAmount,
  waterOut: oneOf(['before', 'after', 'half']),
  rinse: maybe(v.looseObject({ each: amount, of: oneOf(['newSaltWater', 'tankWater']) })),
  tankSalt: maybe(salinity),
  bottleSalt: maybe(salinity),
  steps: list(v.looseObject({ step: key, at: moment })),
  off: moment,
  morning: moment,
  anyway: maybe(text),
})
export const seedingStepDone = v.looseObject({ kind: v.literal('seedingStepDone'), at: moment, run, step: key })
export const seedingWaterTaken = v.looseObject({
  kind: v.literal('seedingWaterTaken'),
  at: moment,
  run,
  amount,
  way: oneOf(['out', 'borrowed', 'putBack']),
})
export const seedingPoured = v.looseObject({
  kind: v.literal('seedingPoured'),
  at: moment,
  run,
  into,
  bottles,
  amount,
  rinse: amount,
})
export const seedingStopped = v.looseObject({
  kind: v.literal('seedingStopped'),
  at: moment,
  run,
  because: oneOf(['fishBreathingHard', 'calledOff']),
  why: maybe(text),
})
export const letterWritten = v.looseObject({ kind: v.literal('letterWritten'), at: moment, tank, text, opens: day })
