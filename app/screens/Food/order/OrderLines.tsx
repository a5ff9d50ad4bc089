/** By when to order, food by food, in the words of the page about ordering. */
import type { FoodDescribed } from '../../../../core/index.ts'
import { orderLine } from '../../../words/ordering.ts'
import type { Reading } from '../../useReading.ts'

type OrderLinesProps = { readonly foods: readonly FoodDescribed[]; readonly reading: Reading }

export const OrderLines = ({ foods, reading }: OrderLinesProps) => {
  const lines = foods.flatMap(({ food }) => orderLine(reading.world, food, reading)?.short ?? [])
  if (foods.length === 0) return null
  return (
    <section aria-label="Ordering">
      {lines.map((says) => (
        <p key={says}>{says}</p>
      ))}
      <a className="kind-link" href="#/food/order">
        Ordering, and what can be given away
      </a>
    </section>
  )
}
