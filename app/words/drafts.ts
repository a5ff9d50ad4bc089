/** What a form says of what was left in it. */
import { type Day, type Moment, wallDay, type Zone } from '../../core/index.ts'
import { clock, dayWords } from './dates.ts'

/** "Unfinished since 6 May, 21:30." Undefined for what was typed today: she knows. */
export const unfinishedWords = (since: Moment, zone: Zone, today: Day): string | undefined => {
  const day = wallDay(since, zone)
  return day < today ? `Unfinished since ${dayWords(day, today)}, ${clock(since, zone)}.` : undefined
}
