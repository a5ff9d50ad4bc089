/** The shapes of what is recorded of a tank. */
import * as v from 'valibot'
import type { TankId } from '../../basis/ids.ts'
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
