/** Numbers, amounts and hours as typed on the screens of live bottles; what is wrong is gathered, not thrown. */
import {
  addDays,
  type BottleUnit,
  clockMinutes,
  type Day,
  isClockTime,
  isDay,
  type Microlitres,
  type Moment,
  momentAt,
  nightOf,
  readNumber,
  readSize,
  type TankDescribed,
  type WaterPlace,
  wallDay,
} from '../../../core/index.ts'
import type { Trouble } from './useSeeding.ts'

export type Gathered = Trouble[]

/** Undefined and noted where it is no number; undefined alone where nothing stands there. */
export const numberIn = (found: Gathered, at: string, typed: string): number | undefined => {
  if (typed.trim() === '') return undefined
  const read = readNumber(typed)
  if (!read.ok) found.push({ at, refusal: read.refusal })
  else if (read.value < 0) found.push({ at, refusal: { why: 'noNumberBelow' } })
  else return read.value
  return undefined
}
/** A property where there is a number, none where not. */
export const maybe = <Name extends string>(name: Name, value: number | undefined) =>
  (value === undefined ? {} : { [name]: value }) as { readonly [Key in Name]?: number }
export const amountIn = (found: Gathered, at: string, typed: string, unit: BottleUnit): Microlitres | undefined => {
  const read = readSize(typed, unit)
  if (read.ok) return read.value.amount
  found.push({ at, refusal: read.refusal })
  return undefined
}

export type PlaceFields = Readonly<Record<WaterPlace, string>>
export const noPours: PlaceFields = { display: '', sump: '', refugium: '' }
/** Bottles by place, halves and the like among them; an empty or zero one is none. */
export const poursIn = (found: Gathered, fields: PlaceFields, places: readonly WaterPlace[]) =>
  places.flatMap((into) => {
    const bottles = numberIn(found, into, fields[into])
    return bottles === undefined || bottles === 0 ? [] : [{ into, bottles }]
  })

/** When the wall clock at the tank shows this, on this day; the field is noted while it shows nothing. */
export const whenIn = (
  found: Gathered,
  fields: { readonly day: string; readonly clock: string },
  { zone }: TankDescribed,
): Moment | undefined => {
  if (!isDay(fields.day)) found.push({ at: 'day', refusal: { why: 'whenMissing' } })
  if (!isClockTime(fields.clock)) found.push({ at: 'clock', refusal: { why: 'whenMissing' } })
  return isDay(fields.day) && isClockTime(fields.clock)
    ? momentAt(fields.day, clockMinutes(fields.clock), zone)
    : undefined
}

/** An hour of a night: after midnight it stands on the day after. */
export const inNight = (night: Day, clock: string, tank: TankDescribed): Moment | undefined => {
  if (!isClockTime(clock)) return undefined
  const on = (day: Day) => momentAt(day, clockMinutes(clock), tank.zone)
  return nightOf(on(night), tank) === night ? on(night) : on(addDays(night, 1))
}
/** The first time the clock shows it after a moment. */
export const afterThat = (moment: Moment, clock: string, { zone }: TankDescribed): Moment | undefined => {
  if (!isClockTime(clock)) return undefined
  const day = wallDay(moment, zone)
  const same = momentAt(day, clockMinutes(clock), zone)
  return same > moment ? same : momentAt(addDays(day, 1), clockMinutes(clock), zone)
}
