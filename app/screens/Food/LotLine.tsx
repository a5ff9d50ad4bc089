/** Portions on a shelf: the count first, and large. */
import { couldBeShared, coverInTime, type LotShelved, portionsCover } from '../../../core/index.ts'
import { coverWords, frozenWords } from '../../words/food.ts'
import { keepingWords } from '../../words/names.ts'
import { capital, millilitres, number } from '../../words/numbers.ts'
import { lotDoubt } from '../../words/trouble.ts'
import type { Reading } from '../useReading.ts'
import type { Spare } from './spare.ts'

type LotLineProps = {
  readonly line: LotShelved
  readonly first: string | undefined
  readonly spare: Spare
  readonly reading: Reading
}

export const LotLine = ({ line, first, spare, reading }: LotLineProps) => {
  const { lot, food, left, lastGood, keeping } = line
  const { world, now, today } = reading
  const { each } = lot.made
  const inTime = coverInTime(portionsCover(world, food.food, { each, count: left }, now), lastGood, today)
  const cover = coverWords(inTime, couldBeShared(world, food.food, each, now))
  const doubt = lotDoubt(lot, left, spare.get(lot.id), lastGood, reading)
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
          {[food.name, doubt ? undefined : cover].filter(Boolean).join(', ')}.{' '}
          {doubt
            ? `${capital(doubt)}.`
            : `${capital(keepingWords(keeping, lastGood, reading))}; ${frozenWords(lot, today)}.`}
        </span>
      </span>
    </a>
  )
}
