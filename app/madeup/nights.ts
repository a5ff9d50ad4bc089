/** The nights of the story: every other one dosed as Tonight proposed it, one of them skipped. */
import { giveDose, type PlanId, refuse, skipNight, strikeOut, tonight } from '../../core/index.ts'
import type { Reason } from '../words/reasons.ts'
import type { Step } from './telling.ts'

type Asking = Step[2]
const because = (why: Reason) => ({ why })

/** So many days ago the first; `from` is even, so that the round comes to tonight. */
export const everyOther = (plan: PlanId, from: number): readonly Step[] =>
  Array.from({ length: from / 2 }, (_, i): Step => {
    // All after lights-out, no two at the same minute.
    const clock = `21:${String(6 + ((i * 7) % 41)).padStart(2, '0')}`
    return [from - 2 * i, clock, i === 10 ? skipped(plan) : asProposed(plan)]
  })

export const asProposed =
  (plan: PlanId): Asking =>
  (world, at) => {
    const [serving] = tonight(world, at)[0]?.servings ?? []
    return serving
      ? giveDose(world, { plan, taken: [serving.taken], amount: serving.amount, at }, at)
      : refuse({ why: 'nothingThere' })
  }

const skipped =
  (plan: PlanId): Asking =>
  (world, at) =>
    skipNight(world, { plan, ...because('hazy') }, at)

/** It was noted on a night when nothing was given. */
export const crossOutLast: Asking = (world, at) => {
  const last = world.history.all.findLast(({ fact }) => fact.kind === 'doseGiven')
  return last ? strikeOut(world, { target: last.id, ...because('didNotHappen') }, at) : refuse({ why: 'nothingThere' })
}
