/** Whether all has been well for so long that a word less will do. */
import { addDays } from '../basis/days.ts'
import type { Moment } from '../basis/zones.ts'
import { type DosingState, goesOnSince } from '../dosing/state.ts'
import type { TonightLine } from '../dosing/tonight.ts'
import { nightOf, type TankState } from '../tank/state.ts'

/** Nights without a gap, a skip or a doubt. Our own judgement. */
export const calmNights = 30

/** Every dose night of the last thirty was noted, and something was given in each. */
export const isCalm = (state: TankState & DosingState, lines: readonly TonightLine[], now: Moment): boolean =>
  lines.length > 0 &&
  lines.every(({ plan, tank, night, unlogged }) => {
    const from = addDays(night, -calmNights)
    if (unlogged.length > 0 || nightOf(goesOnSince(state, plan, now), tank) > from) return false
    const noted = [...(state.nights.get(plan.plan) ?? [])].filter(([on]) => on >= from && on < night)
    return noted.length > 0 && noted.every(([, marks]) => marks.every(({ what }) => what === 'given'))
  })
