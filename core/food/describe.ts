/** Describing a food and the doors it stands behind. */
import type { Microlitres, WaterAmount } from '../basis/amounts.ts'
import { microlitres } from '../basis/amounts.ts'
import type { Span } from '../basis/days.ts'
import type { FoodId, PlaceId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { Door, DoseBand, FoodDescribed, FoodKind, PlaceDescribed } from './facts.ts'

export type FoodAsked = Omit<FoodDescribed, 'kind' | 'at'>
export type FoodRefusal =
  | { readonly why: 'bandUpsideDown'; readonly low: Microlitres; readonly high: Microlitres }
  | { readonly why: 'bandEmpty' }
  | {
      readonly why: 'lifeOutOfRange'
      readonly which: 'fridge' | 'freezer'
      readonly asked: Span
      readonly most: number
    }
  | { readonly why: 'nightsOutOfRange'; readonly asked: number }
  | { readonly why: 'shakeOutOfRange'; readonly asked: number }
  | { readonly why: 'residueOutOfRange'; readonly asked: number }
  /** A live or shelf-stable food is not promised a life in the freezer. */
  | { readonly why: 'noFreezerLife'; readonly sort: FoodKind }

/** Months a label may promise. Above them it is a slip of the finger. */
const mostMonths = { fridge: 36, freezer: 60 } as const

const badSpan = (which: 'fridge' | 'freezer', span: Span): FoodRefusal | undefined => {
  const most = mostMonths[which] * (span.unit === 'months' ? 1 : 31)
  return Number.isInteger(span.count) && span.count >= 1 && span.count <= most
    ? undefined
    : { why: 'lifeOutOfRange', which, asked: span, most }
}

export const describeFood = (asked: FoodAsked, now: Moment): Result<readonly [FoodDescribed], FoodRefusal> => {
  const { low, high, per } = asked.band
  if (low <= 0 || high <= 0 || per.value <= 0) return refuse({ why: 'bandEmpty' })
  if (low > high) return refuse({ why: 'bandUpsideDown', low, high })
  const span = badSpan('fridge', asked.fridgeLife) ?? (asked.freezerLife && badSpan('freezer', asked.freezerLife))
  if (span) return refuse(span)
  if (asked.freezerLife && asked.sort !== 'freshNonViable') return refuse({ why: 'noFreezerLife', sort: asked.sort })
  const { everyNights, shakeHours, residueShare } = asked
  if (!Number.isInteger(everyNights) || everyNights < 1 || everyNights > 14)
    return refuse({ why: 'nightsOutOfRange', asked: everyNights })
  if (shakeHours !== undefined && !(shakeHours >= 1 && shakeHours <= 720))
    return refuse({ why: 'shakeOutOfRange', asked: shakeHours })
  if (!(residueShare >= 0 && residueShare <= 0.2)) return refuse({ why: 'residueOutOfRange', asked: residueShare })
  return ok([{ kind: 'foodDescribed', at: now, ...asked }])
}

const usGallons200: WaterAmount = { value: 200, unit: 'usGal' }
const common = {
  band: { low: microlitres(1000), high: microlitres(2000), per: usGallons200 } satisfies DoseBand,
  everyNights: 2,
  countsFrom: 'arrival',
  residueShare: 0.03,
} as const

/** Nobody has typed a label's own figures. */
export const isCommonBand = ({ low, high, per }: DoseBand): boolean =>
  low === common.band.low &&
  high === common.band.high &&
  per.value === usGallons200.value &&
  per.unit === usGallons200.unit

/** What is offered for a food she describes by kind alone: common practice, no source. The label's own figures win. */
export const usualFood: Record<FoodKind, Omit<FoodAsked, 'food' | 'name'>> = {
  freshNonViable: {
    ...common,
    sort: 'freshNonViable',
    fridgeLife: { count: 2, unit: 'months' },
    freezerLife: { count: 24, unit: 'months' },
    shakeHours: 24,
  },
  live: { ...common, sort: 'live', fridgeLife: { count: 1, unit: 'months' }, shakeHours: 24 },
  shelfStable: {
    ...common,
    sort: 'shelfStable',
    countsFrom: 'opening',
    fridgeLife: { count: 6, unit: 'months' },
  },
}

export const describePlace = (
  asked: { readonly place: PlaceId; readonly name: string; readonly door: Door },
  now: Moment,
): readonly [PlaceDescribed] => [{ kind: 'placeDescribed', at: now, ...asked }]

/** A new food from its kind and name. */
export const newFood = (food: FoodId, name: string, sort: FoodKind): FoodAsked => ({ food, name, ...usualFood[sort] })
