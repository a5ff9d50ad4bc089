/** A report about a door: the form’s fields, and what was said of which thing. */
import { type Day, isDay, ok, type Result, readNumber } from '../../../../core/index.ts'
import { placed, type Trouble, trouble } from '../useAct.ts'

export type DoorFields<Found extends string> = {
  readonly how: 'alike' | 'each'
  readonly alike: Found | ''
  readonly each: Readonly<Record<string, Found>>
  readonly hours: string
  readonly on: string
}
export const doorFields = <Found extends string>(today: Day): DoorFields<Found> => ({
  how: 'alike',
  alike: '',
  each: {},
  hours: '',
  on: today,
})

export type Said<Found extends string> = { readonly id: string; readonly found: Found }

/** What is said so far, of the things there are. */
export const saidOf = <Found extends string>(
  { how, alike, each }: DoorFields<Found>,
  ids: readonly string[],
): readonly Said<Found>[] =>
  ids.flatMap((id) => {
    const found = how === 'alike' || ids.length === 1 ? alike : each[id]
    return found ? [{ id, found }] : []
  })

export type DoorRead<Found extends string> = {
  readonly said: readonly Said<Found>[]
  readonly on: Day
  readonly minutesOff?: number
}

export const readDoor = <Found extends string>(
  fields: DoorFields<Found>,
  ids: readonly string[],
): Result<DoorRead<Found>, Trouble> => {
  const said = saidOf(fields, ids)
  if (said.length < ids.length) return trouble('found', { why: 'howFound' })
  if (!isDay(fields.on)) return trouble('on', { why: 'dayMissing' })
  if (fields.hours.trim() === '') return ok({ said, on: fields.on })
  const hours = placed(readNumber(fields.hours), 'hours')
  if (!hours.ok) return hours
  return ok({ said, on: fields.on, minutesOff: Math.round(hours.value * 60) })
}

/** Where the core's refusals belong. */
export const doorPlaces = { offOutOfRange: 'hours', foundNotYet: 'on' } as const
