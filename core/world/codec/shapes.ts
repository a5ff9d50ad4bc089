/** Every kind of fact this version reads, and its shape. A new kind does not compile until it has one. */
import * as v from 'valibot'
import type { Fact, FactKind } from '../facts.ts'
import * as bottles from './bottles.ts'
import * as dosing from './dosing.ts'
import { maybe, moment, stamp, text } from './fields.ts'
import * as food from './food.ts'
import * as portions from './portions.ts'
import { tankDescribed } from './tank.ts'

const entryStruckOut = v.looseObject({
  kind: v.literal('entryStruckOut'),
  at: moment,
  target: stamp,
  why: maybe(text),
})
const questionSettled = v.looseObject({
  kind: v.literal('questionSettled'),
  at: moment,
  question: text,
  answer: v.literal('asItStands'),
})

type Shapes = { readonly [Kind in FactKind]: v.GenericSchema<Extract<Fact, { kind: Kind }>> }
export const shapes: Shapes = {
  tankDescribed,
  ...food,
  ...bottles,
  ...portions,
  ...dosing,
  entryStruckOut,
  questionSettled,
}

export const isFactKind = (kind: string): kind is FactKind => Object.hasOwn(shapes, kind)
/** Every kind this version reads. */
export const factKinds: readonly FactKind[] = Object.keys(shapes).filter(isFactKind)
