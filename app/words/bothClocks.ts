/** A moment by the tank's wall and by the one where she is. */
import { type Moment, wallClock, type Zone } from '../../core/index.ts'
import { clock, dayOfMonth, weekday } from './dates.ts'

/** "21:00 at the tank, 05:00 Sunday, 15 August here"; undefined where both clocks show the same. */
export const bothClocks = (at: Moment, tank: Zone, here: Zone): string | undefined => {
  const [there, mine] = [wallClock(at, tank), wallClock(at, here)]
  if (there.day === mine.day && there.minutes === mine.minutes) return undefined
  const when = there.day === mine.day ? '' : ` ${weekday(mine.day)}, ${dayOfMonth(mine.day)}`
  return `${clock(at, tank)} at the tank, ${clock(at, here)}${when} here`
}
