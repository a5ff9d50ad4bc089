/** A date that moved, and on request why: the book is folded again and again for that, so only when it is opened. */
import { useMemo, useState } from 'react'
import { type Day, type FoodId, type LastsShown, whyMoved } from '../../../../core/index.ts'
import { Line, Lines } from '../../../parts/Lines.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { movedWords, partWords } from '../../../words/lasts.ts'
import type { Reading } from '../../useReading.ts'

type WhyMovedProps = {
  readonly food: FoodId
  readonly before: LastsShown
  readonly bareNight: Day
  readonly reading: Reading
}

export const WhyMoved = ({ food, before, bareNight, reading }: WhyMovedProps) => {
  const [open, setOpen] = useState(false)
  return (
    <div className="lasts-moved">
      <p>{movedWords(before, bareNight, reading.today)}</p>
      <MoreExact label="Why did this move?" onOpen={() => setOpen(true)}>
        {open && <Reasons food={food} before={before} reading={reading} />}
      </MoreExact>
    </div>
  )
}

const Reasons = ({ food, before, reading }: Omit<WhyMovedProps, 'bareNight'>) => {
  const { world, now } = reading
  const moved = useMemo(() => whyMoved(world, food, before, now), [world, food, before, now])
  if (!moved) return <p>It is where it was.</p>
  return (
    <Lines>
      {moved.parts.map((part) => {
        const says = partWords(part, world, now, reading)
        return <Line key={says}>{says}</Line>
      })}
    </Lines>
  )
}
