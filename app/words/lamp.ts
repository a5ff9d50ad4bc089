/** What a lamp's clock does, how far it is off, and what to do about it or not. */
import type { LampAsk, LampClock } from '../../core/index.ts'
import { clock, dayOfMonth, weekday } from './dates.ts'
import { number } from './numbers.ts'

/** In the middle of a sentence. */
export const lampClocks: Readonly<Record<LampClock, string>> = {
  followsClocks: 'its lamp follows the clocks',
  dial: 'its lamp on a dial',
  ownClock: 'its lamp on a clock of its own',
  losesTime: 'its lamp on a clock that forgets the time without power',
}

export const lampChoices = [
  { value: 'followsClocks', label: 'It follows the clocks', hint: 'run by a phone or over the network' },
  { value: 'dial', label: 'A dial', hint: 'knows no summer time, and stands still without power' },
  { value: 'ownClock', label: 'A clock of its own', hint: 'knows no summer time, and goes on without power' },
  { value: 'losesTime', label: 'A clock that forgets', hint: 'knows no summer time, and loses it all without power' },
] as const satisfies readonly { readonly value: LampClock; readonly label: string; readonly hint: string }[]

/** "1 h 50", "50 min", "2 h". */
export const duration = (minutes: number): string => {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60]
  if (hours === 0) return `${number(rest)}\u00a0min`
  return rest === 0 ? `${number(hours)}\u00a0h` : `${number(hours)}\u00a0h\u00a0${rest}`
}
const way = (minutes: number): string => `${minutes > 0 ? 'forward' : 'back'} ${duration(Math.abs(minutes))}`

/** What the keeper may turn, in each kind. */
const turned: Readonly<Record<LampClock, string>> = {
  followsClocks: 'Set it',
  dial: 'Turn the dial',
  ownClock: 'Set its clock',
  losesTime: 'Set its clock',
}
const leave = 'or leave it: the small life does not mind, and the nudges go by the lamp.'

/** How the lamp will be off tonight; undefined where it is not. */
const tonightText = ({ tank, lamp, tonight }: LampAsk): string | undefined => {
  if (tonight.unsure)
    return 'The power was away, and this lamp’s clock forgets the time. Look when it goes out, and say so here.'
  if (tonight.late === 0) return undefined
  const off = `${duration(Math.abs(tonight.late))} ${tonight.late > 0 ? 'late' : 'early'}`
  return `Your lamp will go out at ${clock(tonight.out, tank.zone)} by the wall, ${off}. ${turned[lamp]} ${way(tonight.late)}, ${leave}`
}

/** What the change of the clocks does to it; undefined where none is near. */
export const changeText = ({ tank, lamp, change }: LampAsk): string | undefined => {
  if (!change) return undefined
  const { day, forward, leftAlone } = change
  const clocks = `On ${weekday(day)}, ${dayOfMonth(day)}, the clocks go ${way(forward)}. This lamp does not know.`
  if (leftAlone.unsure) return clocks
  if (leftAlone.late === 0) return `${clocks} Left alone, it is right from then on.`
  return `${clocks} Left alone, it goes out at ${clock(leftAlone.out, tank.zone)} by the wall from then on. ${turned[lamp]} ${way(leftAlone.late)} that day, ${leave}`
}

export const lampTexts = (ask: LampAsk): readonly string[] =>
  [tonightText(ask), changeText(ask)].filter((text) => text !== undefined)

export const lampSeenWords = (goesOut: string): string => `Noted: the lamp goes out at ${goesOut} by the wall.`
export const cutWords = (minutes: number): string => `Noted: ${duration(minutes)} without power.`
export const rightAgain = (lightsOut: string): string => `It is right again: out at ${lightsOut}`

/** One line on the evening itself. */
export const lampShort = (ask: LampAsk, named: boolean): string => {
  const { tank, tonight, change } = ask
  const whose = named ? `${tank.name}: ` : ''
  if (tonight.unsure) return `${whose}The lamp’s clock lost the time with the power.`
  if (change)
    return `${whose}On ${weekday(change.day)} the clocks go ${way(change.forward)}, and the lamp does not know.`
  return `${whose}The lamp is ${duration(Math.abs(tonight.late))} ${tonight.late > 0 ? 'late' : 'early'} by its clock.`
}
