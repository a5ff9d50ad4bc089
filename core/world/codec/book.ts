/** The shapes of what is recorded of the book itself: notes, phones, crossings-out, questions. */
import * as v from 'valibot'
import type { DeviceId, TankId } from '../../basis/ids.ts'
import { id, longText, maybe, moment, stamp, text } from './fields.ts'

export const noteWritten = v.looseObject({
  kind: v.literal('noteWritten'),
  at: moment,
  text,
  tank: maybe(id<TankId>()),
})
export const phoneNamed = v.looseObject({
  kind: v.literal('phoneNamed'),
  at: moment,
  device: id<DeviceId>(),
  name: text,
})
export const clashNoted = v.looseObject({
  kind: v.literal('clashNoted'),
  at: moment,
  entry: stamp,
  theirs: longText,
})
export const entryStruckOut = v.looseObject({
  kind: v.literal('entryStruckOut'),
  at: moment,
  target: stamp,
  why: maybe(text),
})
export const questionSettled = v.looseObject({
  kind: v.literal('questionSettled'),
  at: moment,
  question: text,
  answer: v.literal('asItStands'),
})
