/** One food on the page about ordering: why that day, how the parcel would come, and what is noted of an order. */
import {
  addDays,
  arrivalOf,
  type Day,
  type FoodDescribed,
  later,
  type Ordered,
  orderBy,
  orderingAt,
  unattended,
} from '../../../../core/index.ts'
import { Notice } from '../../../parts/Notice.tsx'
import { arrivalWords, orderWhyWords, unattendedWords } from '../../../words/orderPage.ts'
import { type Reading, useReading } from '../../useReading.ts'
import { HasItCome } from './HasItCome.tsx'
import { HaveOrdered } from './HaveOrdered.tsx'
import type { OrderDone } from './Said.tsx'
import { ToSpare } from './ToSpare.tsx'

type OrderFoodProps = {
  readonly food: FoodDescribed
  readonly ordered: Ordered | undefined
  readonly onDone: OrderDone
}

export const OrderFood = ({ food, ordered, onDone }: OrderFoodProps) => {
  const reading = useReading()
  const { world, now, today } = reading
  const by = orderBy(world, food.food, now)
  return (
    <>
      {!by && !ordered && <p>No plan feeds it to a tank, so there is no day to order by.</p>}
      {by && !ordered && <p>{orderWhyWords(by, today)}</p>}
      {ordered ? (
        <>
          <Unattended food={food} comes={ordered.comes} reading={reading} />
          <HasItCome food={food} ordered={ordered} onDone={onDone} />
        </>
      ) : (
        <>
          {by && <Arriving food={food} orderedOn={later(by.day, today)} bareNight={by.bareNight} reading={reading} />}
          <HaveOrdered food={food} onDone={onDone} />
        </>
      )}
      <ToSpare food={food.food} />
    </>
  )
}

type ArrivingProps = {
  readonly food: FoodDescribed
  readonly orderedOn: Day
  readonly bareNight: Day
  readonly reading: Reading
}

const Arriving = ({ food, orderedOn, bareNight, reading }: ArrivingProps) => {
  const { world, now, today } = reading
  const { leadDays } = orderingAt(world, now)
  const arrival = arrivalOf({
    orderedOn,
    leadDays,
    away: world.daysAway,
    today,
    latest: addDays(bareNight, -leadDays),
  })
  const says = arrivalWords(arrival, today)
  return (
    <>
      {arrival.untimely.length > 0 ? <Notice kind="caution">{says}</Notice> : <p>{says}</p>}
      <Unattended food={food} comes={arrival.comes} reading={reading} />
    </>
  )
}

type UnattendedProps = Pick<ArrivingProps, 'food' | 'reading'> & { readonly comes: Day }

const Unattended = ({ food, comes, reading: { world, today } }: UnattendedProps) => {
  const trip = unattended(comes, food, world.daysAway)
  return trip ? <Notice kind="caution">{unattendedWords(trip, today, food.freezerLife !== undefined)}</Notice> : null
}
