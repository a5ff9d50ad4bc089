/** The shapes of what is recorded when food is in doubt. */
import * as v from 'valibot'
import type { BottleId, LotId, PlaceId } from '../../basis/ids.ts'
import { count, day, id, list, maybe, moment, oneOf, text, whole } from './fields.ts'

const bottle = id<BottleId>()
const lot = id<LotId>()
const place = id<PlaceId>()
const thing = v.union([v.looseObject({ bottle }), v.looseObject({ lot })])
/** Ten weeks. */
const minutesOff = maybe(whole(1, 100_800))

export const freezerThawed = v.looseObject({
  kind: v.literal('freezerThawed'),
  at: moment,
  place,
  on: day,
  lots: list(v.looseObject({ lot, found: oneOf(['icy', 'cold', 'warm', 'notKnown']) })),
  minutesOff,
})
export const fridgeTroubled = v.looseObject({
  kind: v.literal('fridgeTroubled'),
  at: moment,
  place,
  on: day,
  bottles: list(v.looseObject({ bottle, found: oneOf(['fine', 'warm', 'frozen', 'cracked']) })),
  minutesOff,
})
export const bottleThawed = v.looseObject({ kind: v.literal('bottleThawed'), at: moment, bottle, on: day })
export const foodSmelled = v.looseObject({
  kind: v.literal('foodSmelled'),
  at: moment,
  thing,
  found: oneOf(['first', 'good', 'unsure', 'off']),
  words: maybe(text),
})
export const foodSetAside = v.looseObject({ kind: v.literal('foodSetAside'), at: moment, thing, why: maybe(text) })
export const foodTakenBack = v.looseObject({ kind: v.literal('foodTakenBack'), at: moment, thing, why: maybe(text) })
export const lotsJoined = v.looseObject({ kind: v.literal('lotsJoined'), at: moment, from: lot, into: lot, count })
