/** What would use in time what will not be: told only where something is left over. */
import { useMemo } from 'react'
import { type FoodId, inTimeBy } from '../../../../core/index.ts'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { inTimeCaution, inTimeWords } from '../../../words/lasts.ts'
import type { Reading } from '../../useReading.ts'

export const UseUp = ({ food, reading }: { readonly food: FoodId; readonly reading: Reading }) => {
  const { world, now } = reading
  const ways = useMemo(() => inTimeBy(world, food, now), [world, food, now])
  if (ways.length === 0) return null
  return (
    <MoreExact label="What would use it in time?">
      {ways.map((way) => (
        <p key={way.by}>{inTimeWords(way, world, now)}</p>
      ))}
      <p>{inTimeCaution}</p>
    </MoreExact>
  )
}
