/** The evening watch: the phone lies open by the tank until it is time. */
import { type Moment, type NextNight, nightOf, type TankDescribed } from '../../core/index.ts'
import { clock, nightFrom } from './dates.ts'
import { list } from './list.ts'

export const watchWords = {
  what: 'The phone lies open with a dark screen that stays on, and calls when it is time. It wants a charger, and it rings only as long as it lies there.',
  awake: 'The screen stays on.',
  asleep: 'The screen may go off: this browser does not keep it on, or not just now. Touch here to try again.',
  notHere: 'This browser cannot keep the screen on: set it not to go off in the phone’s own settings.',
  nothing: 'Nothing is due that would need watching for.',
}

/** "Watching until 21:20: Long Gallery, tonight." */
export const watchingWords = (next: NextNight | undefined, now: Moment): string => {
  const [tank] = next?.tanks ?? []
  if (!next || !tank) return watchWords.nothing
  return `Watching until ${clock(next.plannedAt, tank.zone)}: ${list(next.tanks.map(({ name }) => name))}, ${nightFrom(next.night, nightOf(now, tank))}.`
}
export const timeForWords = (tanks: readonly TankDescribed[]): string =>
  `Time for ${list(tanks.map(({ name }) => name))}.`
