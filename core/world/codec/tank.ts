/** The shapes of what is recorded of a tank. */
import * as v from 'valibot'
import type { TankId } from '../../basis/ids.ts'
import type { TankShape } from '../../tank/facts.ts'
import {
  clockTime,
  id,
  list,
  maybe,
  measure,
  moment,
  oneOf,
  share,
  someAmount,
  text,
  water,
  whole,
  yesOrNo,
  zone,
} from './fields.ts'

const centimetres = measure(100_000)

const inside = v.looseObject({
  shape: v.variant('form', [
    v.looseObject({ form: v.literal('rectangle'), length: centimetres, width: centimetres, waterline: centimetres }),
    v.looseObject({ form: v.literal('cylinder'), diameter: centimetres, waterline: centimetres }),
  ]),
  solids: share(0.6),
  sump: maybe(water),
})

/** From 0: what stands at the brim, or is not there. */
const fromNothing = share(100_000)
const knownForms = v.variant('form', [
  v.looseObject({ form: v.literal('rectangle'), length: centimetres, width: centimetres }),
  v.looseObject({ form: v.literal('cylinder'), diameter: centimetres }),
  v.looseObject({ form: v.literal('hexagon'), side: centimetres }),
  v.looseObject({ form: v.literal('bowFront'), length: centimetres, width: centimetres, bow: centimetres }),
])
const forms: readonly unknown[] = knownForms.options.map(({ entries }) => entries.form.literal)
/** A newer version's form must not cost this one the whole tank: it is read, and no volume follows from it (tank/facts.ts). */
const newerForm = v.pipe(
  v.string(),
  v.regex(/^[A-Za-z]\w{0,99}$/),
  v.check((form) => !forms.includes(form)),
)
const tankShape = v.custom<TankShape>(
  (value) => v.is(knownForms, value) || v.is(v.looseObject({ form: newerForm }), value),
)

const exact = v.looseObject({
  shape: tankShape,
  measures: v.variant('taken', [
    v.looseObject({ taken: v.literal('inside'), waterline: centimetres }),
    v.looseObject({
      taken: v.literal('outside'),
      height: centimetres,
      glass: centimetres,
      base: centimetres,
      down: fromNothing,
    }),
  ]),
  solids: v.variant('by', [
    v.looseObject({ by: v.literal('share'), share: share(0.6) }),
    v.looseObject({ by: v.literal('sandAndRock'), sandDepth: maybe(fromNothing), rockKg: maybe(fromNothing) }),
  ]),
  sump: maybe(water),
  refugium: maybe(water),
})

export const tankDescribed = v.looseObject({
  kind: v.literal('tankDescribed'),
  at: moment,
  tank: id<TankId>(),
  name: text,
  water: v.looseObject({
    stated: maybe(water),
    about: yesOrNo,
    measured: maybe(water),
    inside: maybe(inside),
    exact: maybe(exact),
    doseBy: oneOf(['stated', 'true']),
  }),
  zone,
  lightsOut: clockTime,
  lamp: maybe(oneOf(['followsClocks', 'dial', 'ownClock', 'losesTime'])),
  pipetteMark: someAmount,
})
export const tankRetired = v.looseObject({
  kind: v.literal('tankRetired'),
  at: moment,
  tank: id<TankId>(),
  why: maybe(text),
})
export const lampSeen = v.looseObject({
  kind: v.literal('lampSeen'),
  at: moment,
  tank: id<TankId>(),
  goesOut: clockTime,
})
export const powerCut = v.looseObject({
  kind: v.literal('powerCut'),
  at: moment,
  minutes: whole(1, 20_160),
  tanks: list(id<TankId>()),
})
