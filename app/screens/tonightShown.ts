/** What is due, as the screen shows it: the look of the app asks it and Tonight does, of one world at one moment. */
import { type Moment, type TonightLine, tonight, type World } from '../../core/index.ts'

let last: { readonly world: World; readonly now: Moment; readonly lines: readonly TonightLine[] } | undefined

export const tonightShown = (world: World, now: Moment): readonly TonightLine[] => {
  if (last?.world !== world || last.now !== now) last = { world, now, lines: tonight(world, now) }
  return last.lines
}
