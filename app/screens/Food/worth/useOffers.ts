/** What the core makes of all that she has been offered. */
import {
  type Cheapest,
  type Cost,
  cheapest,
  costEach,
  costTimes,
  type Day,
  day,
  dosesPerYear,
  doseToFreeze,
  type FoodDescribed,
  isDay,
  type Microlitres,
  microlitres,
  mostPerWell,
  type OfferAhead,
  offerAhead,
  proposePortion,
  readMillilitres,
  usualWell,
} from '../../../../core/index.ts'
import type { FieldRefusal } from '../../../words/foodRefusals.ts'
import { typedMillilitres } from '../../../words/numbers.ts'
import { type Reading, useReading } from '../../useReading.ts'
import { readTray } from '../trays.ts'
import { type OfferRead, type OffersFields, type OfferTroubles, readOffer } from './offerFields.ts'

export type Compared = {
  readonly place: number
  readonly offer: OfferRead
  readonly ahead: OfferAhead
  readonly each: Cost | undefined
  readonly year: Cost | undefined
}
export type Offers = {
  readonly wrong: readonly OfferTroubles[]
  readonly wrongHow: Partial<Record<'portion' | 'rows' | 'columns' | 'arrives', FieldRefusal>>
  /** In the order they were typed. */
  readonly compared: readonly Compared[]
  readonly ranked: Cheapest
  readonly portion: string
  readonly each: Microlitres
  readonly dose: Microlitres
  readonly wells: number
}

export const useOffers = (fields: OffersFields, food: FoodDescribed): Offers => {
  const reading = useReading()
  const { world, now } = reading
  const how = readHow(fields, food, reading)
  const read = fields.offers.map(readOffer)
  const perYear = dosesPerYear(world, food.food, now)
  const compared = read.flatMap(({ offer }, place): readonly Compared[] => {
    if (!offer) return []
    const { bottles, amount: size } = offer
    const { each: portion, wells: wellsPerTray, arrives } = how
    const ahead = offerAhead(world, { food, bottles, size, arrives, each: portion, wellsPerTray }, now)
    const each = costEach(offer.paid, ahead.doses)
    const year = each && ahead.planned ? costTimes(each, perYear) : undefined
    return [{ place, offer, ahead, each, year }]
  })
  return {
    ...how,
    wrong: read.map(({ wrong }) => wrong),
    compared,
    ranked: cheapest(compared.map(({ each }) => each)),
  }
}

const usualTray = 15

const readHow = (fields: OffersFields, food: FoodDescribed, { world, now, today }: Reading) => {
  const { dose, mark } = doseToFreeze(world, food.food, now)
  const proposed = proposePortion(dose, mark, mostPerWell(usualWell))?.portion ?? microlitres(1000)
  const portion = fields.portion ?? typedMillilitres(proposed)
  const each = readMillilitres(portion)
  const tray = readTray(fields)
  // Bought today at the earliest: a day that has gone by meanwhile is today.
  const arrives: Day = isDay(fields.arrives) && fields.arrives > today ? day(fields.arrives) : today
  const wrongHow: Offers['wrongHow'] = {
    ...(each.ok ? {} : { portion: each.refusal }),
    ...(tray.ok ? {} : { [tray.refusal.at]: tray.refusal.refusal }),
    ...(isDay(fields.arrives) ? {} : { arrives: { why: 'dayMissing' } as const }),
  }
  return {
    wrongHow,
    portion,
    dose,
    each: each.ok ? each.value : proposed,
    wells: tray.ok ? tray.value.rows * tray.value.columns : usualTray,
    arrives,
  }
}
