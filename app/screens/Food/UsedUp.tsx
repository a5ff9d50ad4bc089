/** What is finished: folded away, never gone. */
import { type Bottle, type Lot, usedUp } from '../../../core/index.ts'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { frozenWords } from '../../words/food.ts'
import { bottleName, foodName } from '../../words/names.ts'
import { capital, portions } from '../../words/numbers.ts'
import type { Reading } from '../useReading.ts'

const few = 50

export const UsedUp = ({ reading }: { readonly reading: Reading }) => {
  const { bottles, lots } = usedUp(reading.world)
  if (bottles.length + lots.length === 0) return null
  return (
    <MoreExact label="Finished bottles and empty trays">
      <Lines>
        {bottles.slice(0, few).map((bottle) => (
          <PastBottle key={bottle.id} bottle={bottle} reading={reading} />
        ))}
        {lots.slice(0, few).map((lot) => (
          <PastLot key={lot.id} lot={lot} reading={reading} />
        ))}
      </Lines>
      {Math.max(bottles.length, lots.length) > few && <p>Older ones are in the diary.</p>}
    </MoreExact>
  )
}

const PastBottle = ({ bottle, reading: { world, now } }: { readonly bottle: Bottle; readonly reading: Reading }) => (
  <Line>
    <a className="kind-link" href={`#/food/bottle/${bottle.id}`}>
      {capital(bottleName(world, bottle.id, now))}
    </a>
  </Line>
)

const PastLot = ({ lot, reading: { world, now, today } }: { readonly lot: Lot; readonly reading: Reading }) => (
  <Line>
    <a className="kind-link" href={`#/food/lot/${lot.id}`}>
      {lot.made.mark}
    </a>
    , {portions(lot.made.portions)} of {foodName(world, lot.made.food, now)}, {frozenWords(lot, today)}
  </Line>
)
