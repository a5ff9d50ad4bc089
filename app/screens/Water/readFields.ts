/** Reading a tank's form: every field that does not do is said, not the first alone. */

import type { WaterAmount } from '../../../core/index.ts'
import { mostCentimetres, ok, type Result, readNumber, readWater, refuse, type WaterUnit } from '../../../core/index.ts'
import type { WaterFormRefusal } from '../../words/waterRefusals.ts'
import type { TankField } from './tankFields.ts'

export type FieldRefusal = { readonly field: TankField; readonly refusal: WaterFormRefusal }
export type TankWrong = readonly FieldRefusal[]
export type Read<Value> = Result<Value, TankWrong>

export const wrongAt = (wrong: TankWrong, field: TankField): WaterFormRefusal | undefined =>
  wrong.find((each) => each.field === field)?.refusal

export const wrong = (field: TankField, refusal: WaterFormRefusal) => refuse<TankWrong>([{ field, refusal }])
export const at = <Value>(field: TankField, read: Result<Value, WaterFormRefusal>): Read<Value> =>
  read.ok ? read : wrong(field, read.refusal)

/** All of them, or everything that is wrong with any. */
export const all = <Values extends object>(
  reads: { readonly [Key in keyof Values]: Read<Values[Key]> },
): Read<Values> => {
  const each = Object.entries<Read<unknown>>(reads)
  const found = each.flatMap(([, read]) => (read.ok ? [] : read.refusal))
  if (found.length > 0) return refuse(found)
  return ok(Object.fromEntries(each.map(([key, read]) => [key, read.ok ? read.value : undefined])) as Values)
}

/** Centimetres, millimetres or kilograms. */
export const measure = (field: TankField, typed: string): Read<number> => {
  const read = measureOr0(field, typed)
  return read.ok && read.value === 0 ? wrong(field, { why: 'notPositive', typed }) : read
}
export const measureOr0 = (field: TankField, typed: string): Read<number> => {
  const read = at(field, readNumber(typed))
  if (!read.ok) return read
  if (read.value > mostCentimetres) return wrong(field, { why: 'beyondAnyTank' })
  return read.value < 0 ? wrong(field, { why: 'notPositive', typed }) : read
}

const isNothing = (typed: string): boolean => {
  const read = readNumber(typed)
  return read.ok ? read.value === 0 : read.refusal.why === 'empty'
}
/** Nothing typed, and 0, both say that there is none. */
export const measureIfAny = (field: TankField, typed: string): Read<number | undefined> =>
  isNothing(typed) ? ok(undefined) : measure(field, typed)

/** Whether a vast one is meant is asked about the whole, not about its parts. */
export const waterIfAny = (field: TankField, typed: string, unit: WaterUnit): Read<WaterAmount | undefined> =>
  isNothing(typed) ? ok(undefined) : at(field, readWater(typed, unit, true))
