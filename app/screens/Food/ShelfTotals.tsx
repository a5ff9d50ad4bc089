/** What stands behind one door in all, where several things do. */
import { foodAt, onHand, type Shelf } from '../../../core/index.ts'
import { behindWords } from '../../words/moving.ts'
import type { Reading } from '../useReading.ts'
import type { Spare } from './spare.ts'

type ShelfTotalsProps = { readonly shelf: Shelf; readonly spare: Spare; readonly reading: Reading }

export const ShelfTotals = ({ shelf, spare, reading }: ShelfTotalsProps) => {
  const { world, now, today } = reading
  const things = [...shelf.lots, ...shelf.bottles]
  if (things.length < 2) return null
  const foods = [...new Set(things.map(({ food }) => food.food))]
  const says = foods.flatMap((id) => {
    const food = foodAt(world, id, now)
    return food ? (behindWords(food.name, onHand([shelf], id, today, spare)) ?? []) : []
  })
  return says.length > 0 && <p className="shelf-total">{says.join(' ')}</p>
}
