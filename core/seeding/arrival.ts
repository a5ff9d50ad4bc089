/** Live bottles at the door: how long damage may be claimed, and which night to pour them. */
import { addDays, type Day } from '../basis/days.ts'
import { type Moment, moment } from '../basis/zones.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lampOut } from '../tank/lamp.ts'
import { nightOf, type TankState } from '../tank/state.ts'
import type { LiveBottlesCame } from './facts.ts'

const hour = 3_600_000

/** Until when damage may be claimed; undefined where the seller gave no time. */
export const claimUntil = ({ came, claimHours }: LiveBottlesCame): Moment | undefined =>
  claimHours === undefined ? undefined : moment(Math.round(came + claimHours * hour))

export type PourNight = {
  readonly night: Day
  /** When this tank's lamp goes out, as far as is known. */
  readonly dark: Moment
  /** Whole hours from the door to the dark. */
  readonly hours: number
  /** The first night is best, the second still fine; from then on it is a decision. Common practice, no source. */
  readonly is: 'best' | 'fine' | 'decide'
}

/** The nights that lie before her: this one unless its dark is long past, and the two after it. */
export const pourNights = (state: TankState, tank: TankDescribed, came: Moment, now: Moment): readonly PourNight[] => {
  const first = nightOf(came, tank)
  const tonight = nightOf(now, tank)
  return [0, 1, 2].map((on) => {
    const night = addDays(tonight, on)
    const dark = lampOut(state, tank, night)
    const is = night <= first ? 'best' : night === addDays(first, 1) ? 'fine' : 'decide'
    return { night, dark, hours: Math.max(0, Math.floor((dark - came) / hour)), is }
  })
}
