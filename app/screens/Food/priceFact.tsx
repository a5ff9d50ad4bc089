/** What a bottle cost, as a line of its table: its price or its share of a parcel, what a dose comes to, and where to say so. */
import { type Account, bottleCost, doseCost, doseToFreeze, purchaseOf } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import type { Fact } from '../../parts/Facts.tsx'
import { costWords } from '../../words/food.ts'
import { price } from '../../words/money.ts'
import type { Reading } from '../useReading.ts'

export const priceFact = (account: Account, { world, now, today }: Reading, onPrice: () => void): Fact => {
  const { bottle } = account
  const paid = bottleCost(world, bottle, now)
  const parcel = purchaseOf(world, bottle.id, now)
  const dose = doseCost(world, account, doseToFreeze(world, bottle.recorded.food, now).dose, { now, today })
  return {
    term: parcel ? 'Its share of the parcel' : 'Price',
    fact: paid === 'notKnown' ? 'not known' : price(paid),
    note: (
      <span className="price-note">
        {typeof dose === 'object' && <span>{costWords(dose)}</span>}
        {!parcel && paid === 'notKnown' && <LinkButton onAct={onPrice}>Add its price</LinkButton>}
        <a className="kind-link" href={`#/food/purchase/${parcel ? parcel.purchase : `new/${bottle.id}`}`}>
          {parcel ? 'The parcel it came in' : 'It came in a parcel with other things'}
        </a>
      </span>
    ),
  }
}
