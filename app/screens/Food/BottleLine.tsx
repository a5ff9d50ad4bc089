/** A bottle on a shelf: what is left in it, and whether it is too late to freeze. */
import {
  type BottleShelved,
  coverInTime,
  freezingWindow,
  liquidCover,
  mostPerWell,
  toMillilitres,
  usualWell,
  wouldMake,
} from '../../../core/index.ts'
import { coverWords, freezingHeadline } from '../../words/food.ts'
import { keepingWords } from '../../words/names.ts'
import { bottleUnits, capital, number } from '../../words/numbers.ts'
import { bottleDoubt } from '../../words/trouble.ts'
import type { Reading } from '../useReading.ts'

type BottleLineProps = { readonly line: BottleShelved; readonly first: string | undefined; readonly reading: Reading }

export const BottleLine = ({ line, first, reading }: BottleLineProps) => {
  const { bottle, food, left, usable, lastGood, keeping } = line
  const { world, now, today } = reading
  const { value, unit } = bottle.recorded.size
  const makes = wouldMake(world, bottle, mostPerWell(usualWell), now)
  const headline = freezingHeadline(freezingWindow(bottle, food, today), usable, makes, today)
  const cover = coverWords(coverInTime(liquidCover(world, food.food, usable, now), lastGood, today))
  const doubt = bottleDoubt(bottle, reading)
  return (
    <a className="shelf-line" href={`#/food/bottle/${bottle.id}`}>
      <span className="shelf-count">
        {number(toMillilitres(left))}
        <small>mL left</small>
      </span>
      <span>
        <span className="shelf-name">
          {food.name}, {number(value)} {bottleUnits[unit]} bottle
        </span>
        {first && <span className="shelf-first"> · {first}</span>}
        <br />
        {headline && (
          <>
            {headline}
            <br />
          </>
        )}
        <span className="shelf-facts">
          {doubt && `${capital(doubt)}. `}
          {capital(keepingWords(keeping, lastGood, reading))}
          {!headline && !doubt && cover && `; ${cover}`}
          {bottle.openedOn === undefined && ', still sealed'}.
        </span>
      </span>
    </a>
  )
}
