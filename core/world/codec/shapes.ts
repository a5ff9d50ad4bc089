/** Every kind of fact this version reads, and its shape. A new kind does not compile until it has one. */
import type * as v from 'valibot'
import type { Fact, FactKind } from '../facts.ts'
import * as book from './book.ts'
import * as bottles from './bottles.ts'
import * as buying from './buying.ts'
import * as dosing from './dosing.ts'
import * as food from './food.ts'
import * as portions from './portions.ts'
import * as seeding from './seeding.ts'
import * as tank from './tank.ts'
import * as trouble from './trouble.ts'
import * as watch from './watch.ts'

type Shapes = { readonly [Kind in FactKind]: v.GenericSchema<Extract<Fact, { kind: Kind }>> }
export const shapes: Shapes = {
  ...tank,
  ...food,
  ...bottles,
  ...trouble,
  ...buying,
  ...portions,
  ...dosing,
  ...watch,
  ...seeding,
  ...book,
}

export const isFactKind = (kind: string): kind is FactKind => Object.hasOwn(shapes, kind)
/** Every kind this version reads. */
export const factKinds: readonly FactKind[] = Object.keys(shapes).filter(isFactKind)
