/**
 * What single values may be. Every check is a guard and never a conversion, so that what was read stands exactly as it was
 * written, and brands are put on by asking, not by casting. The limits are our own judgement: far beyond any household,
 * near enough that no sum leaves the whole numbers and no walk over nights or wells goes on for ever.
 */
import * as v from 'valibot'
import type { Microlitres } from '../../basis/amounts.ts'
import { type Day, isDay } from '../../basis/days.ts'
import { idPattern } from '../../basis/ids.ts'
import { type ClockTime, isClockTime, isZone, type Moment, type Zone } from '../../basis/zones.ts'
import { isStamp, type Stamp } from '../../ledger/stamp.ts'

const isText = (value: unknown): value is string => typeof value === 'string'
const isWhole = (value: unknown, from: number, to: number): value is number =>
  Number.isSafeInteger(value) && Number(value) >= from && Number(value) <= to

/** A thousand litres of food. */
const mostFood = 1_000_000_000
const mostKept = 1_000_000
const firstOf2200 = 7_258_118_400_000

export const moment = v.custom<Moment>(
  (value) => typeof value === 'number' && Number.isFinite(value) && value >= 0 && value < firstOf2200,
)
export const day = v.custom<Day>((value) => isText(value) && isDay(value))
export const zone = v.custom<Zone>((value) => isText(value) && isZone(value))
export const clockTime = v.custom<ClockTime>((value) => isText(value) && isClockTime(value))
export const stamp = v.custom<Stamp>((value) => isText(value) && isStamp(value))
export const id = <Id extends string>() => v.custom<Id>((value) => isText(value) && idPattern.test(value))

export const text = v.custom<string>((value) => isText(value) && value.length <= 10_000)
/** A line of a file, kept as it came: the file's own limit, less what the line that holds it needs. */
export const longText = v.custom<string>((value) => isText(value) && value.length <= mostKept)
export const yesOrNo = v.boolean()
export const oneOf = v.picklist

export const amount = v.custom<Microlitres>((value) => isWhole(value, 0, mostFood))
/** Where it is divided by: a dose, a portion, a step of the pipette. */
export const someAmount = v.custom<Microlitres>((value) => isWhole(value, 1, mostFood))
/** A figure of the book is carried raw and may have fallen below zero. */
export const bookAmount = v.custom<Microlitres>((value) => isWhole(value, -mostFood, mostFood))

export const whole = (from: number, to: number) => v.custom<number>((value) => isWhole(value, from, to))
export const count = whole(0, 1_000_000)
export const bookCount = whole(-1_000_000, 1_000_000)
export const nights = whole(1, 1_000)

export const share = (most: number) =>
  v.custom<number>((value) => typeof value === 'number' && value >= 0 && value <= most)
/** A positive measurement, whole or not. */
export const measure = (most: number) =>
  v.custom<number>((value) => typeof value === 'number' && value > 0 && value <= most)

export const water = v.looseObject({ value: measure(1_000_000_000), unit: oneOf(['L', 'usGal', 'impGal']) })
export const span = v.looseObject({ count: whole(0, 3_660), unit: oneOf(['days', 'months']) })

export const list = <Item extends v.GenericSchema>(item: Item) => v.pipe(v.array(item), v.maxLength(10_000))
export const maybe = v.exactOptional
