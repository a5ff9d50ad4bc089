/** More food is to be ordered, or an order is late: said once its day has come, with the way to the page about it. */
import { useMemo } from 'react'
import { foodsAt } from '../../../core/index.ts'
import { Section } from '../../parts/Section.tsx'
import { orderLine } from '../../words/ordering.ts'
import type { Reading } from '../useReading.ts'

export const OrderSoon = ({ reading: { world, now, today } }: { readonly reading: Reading }) => {
  // While the undo runs Tonight is drawn four times a second; the stock need not be walked again for that.
  const due = useMemo(
    () =>
      foodsAt(world, now).flatMap(({ food }) => {
        const line = orderLine(world, food, { now, today })
        return line?.due ? [line.says] : []
      }),
    [world, now, today],
  )
  if (due.length === 0) return null
  return (
    <Section title="To order">
      {due.map((says) => (
        <p key={says}>{says}</p>
      ))}
      <p>
        <a href="#/food/order">All about ordering</a>
      </p>
    </Section>
  )
}
