/** Portions on a shelf: the count first, and large. */
import { couldBeShared, coverInTime, type LotShelved, portionsCover } from '../../../core/index.ts'
import { coverWords, frozenWords } from '../../words/food.ts'
import { keepingWords } from '../../words/names.ts'
import { capital, millilitres, number } from '../../words/numbers.ts'
import type { Reading } from '../useReading.ts'

type LotLineProps = { readonly line: LotShelved; readonly first: string | undefined; readonly reading: Reading }

export const LotLine = ({ line, first, reading }: LotLineProps) => {
  const { lot, food, left, lastGood, keeping } = line
  const { world, now, today } = reading
  const { each } = lot.made
  const inTime = coverInTime(portionsCover(world, food.food, { each, count: left }, now), lastGood, today)
  const cover = coverWords(inTime, couldBeShared(world, food.food, each, now))
  return (
    <a className="shelf-line" href={`#/food/lot/${lot.id}`}>
      <span className="shelf-count">
        {number(left)}
        <small>of {millilitres(each)}</small>
      </span>
      <span>
        <span className="shelf-name">{lot.made.mark}</span>
        {first && <span className="shelf-first"> · {first}</span>}
        <br />
        <span className="shelf-facts">
          {[food.name, cover].filter(Boolean).join(', ')}. {capital(keepingWords(keeping, lastGood, reading))};{' '}
          {frozenWords(lot, today)}.
        </span>
      </span>
    </a>
  )
}
