/** What can be given away of a food, from which bag, and never missed. */
import { type FoodId, type LotId, spareOf } from '../../../../core/index.ts'
import { Line, Lines } from '../../../parts/Lines.tsx'
import { spareHereWords, spareLotWords, spareWords } from '../../../words/orderPage.ts'
import { useReading } from '../../useReading.ts'

export const ToSpare = ({ food }: { readonly food: FoodId }) => {
  const { world, now, today } = useReading()
  const has = [...world.lots.values()].some(({ made, left }) => made.food === food && left > 0)
  if (!has) return null
  const spare = spareOf(world, food, today, now)
  return (
    <>
      <p>{spareWords(spare, today)}</p>
      {spare.lots.length > 0 && (
        <Lines>
          {spare.lots.map((line) => (
            <Line key={line.lot}>
              <a className="kind-link" href={`#/food/lot/${line.lot}`}>
                {spareLotWords(line, world)}
              </a>
            </Line>
          ))}
        </Lines>
      )}
    </>
  )
}

/** Beside the question how many: what this bag can spare. */
export const SpareHere = ({ lot, food }: { readonly lot: LotId; readonly food: FoodId }) => {
  const { world, now, today } = useReading()
  const here = spareOf(world, food, today, now).lots.find((line) => line.lot === lot)
  return <p>{spareHereWords(here)}</p>
}
