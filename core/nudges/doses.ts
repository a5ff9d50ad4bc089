/** Dose nights, tank by tank: which is due for a nudge at a moment, and which is next. */
import { addDays, type Day, earlier, later } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import { type Moment, moment } from '../basis/zones.ts'
import { type DosingState, plansAt } from '../dosing/state.ts'
import { type TonightLine, tonight } from '../dosing/tonight.ts'
import type { FoodState } from '../food/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lampOut } from '../tank/lamp.ts'
import { nightOf, type TankState } from '../tank/state.ts'
import { afterQuiet, type Wishes, wished } from './wishes.ts'

export type State = TankState & FoodState & DosingState

/** A tank and a night: whoever shows a nudge under this name, no other follows. */
export type DoseKey = `${TankId}/${Day}`
export const doseKey = (tank: TankId, night: Day): DoseKey => `${tank}/${night}`

/** Minutes after lights-out, when the small life has come out. Common practice, no source. */
export const nudgeDelay = 20
/** Hours after its minute in which a nudge still helps; later it would only wake somebody. Our own judgement. */
export const nudgeLate = 3

const minute = 60_000
const late = nudgeLate * 60 * minute

/** The minute a tank's nudge is planned for. */
export const nudgeAt = (state: TankState, tank: TankDescribed, night: Day, wishes: Wishes): Moment =>
  wished(moment(lampOut(state, tank, night) + nudgeDelay * minute), wishes)

/** It may be shown now: its minute has come, no hour is quiet, and it is not too late to help. */
export const mayShow = (planned: Moment, now: Moment, wishes: Wishes): boolean =>
  now >= afterQuiet(planned, wishes) && now < planned + late
/** There is a minute at which it may be shown. */
export const everShown = (planned: Moment, wishes: Wishes): boolean => afterQuiet(planned, wishes) < planned + late

export type TankNight = {
  readonly tank: TankDescribed
  readonly night: Day
  readonly plannedAt: Moment
  /** What is due for the tank, each with something to take. */
  readonly lines: readonly TonightLine[]
}

/** The night a moment belongs to, for one tank; without lines where nothing is due, or nothing is left to take. */
export const tankNight = (state: State, tank: TankDescribed, now: Moment, wishes: Wishes): TankNight => {
  const night = nightOf(now, tank)
  const lines = linesOf(state, tank, now).filter((line) => line.state.is === 'due' && line.servings.length > 0)
  return { tank, night, plannedAt: nudgeAt(state, tank, night, wishes), lines }
}

const linesOf = (state: State, { tank }: TankDescribed, now: Moment): readonly TonightLine[] =>
  tonight(state, now).filter((line) => line.tank.tank === tank)

/** From one night that may be due to the next: a hold of a year is one step, and the walk ends. */
const mostSteps = 40

/** The next night of a tank that will deserve one, if nothing is written down meanwhile. */
export const nextTankNight = (
  state: State,
  tank: TankDescribed,
  now: Moment,
  { shown, wishes }: { readonly shown: (tank: TankId, night: Day) => boolean; readonly wishes: Wishes },
): TankNight | undefined => {
  if (!plansAt(state, now).some((plan) => plan.tank === tank.tank)) return undefined
  const tonightAt = nightOf(now, tank)
  const planned = (night: Day) => nudgeAt(state, tank, night, wishes)
  let night = afterQuiet(planned(tonightAt), wishes) > now ? tonightAt : addDays(tonightAt, 1)
  for (let step = 0; step < mostSteps; step++) {
    // Asked at lights-out: the minute before bed may still be the evening of a night not begun.
    const at = lampOut(state, tank, night)
    const found = tankNight(state, tank, at, wishes)
    if (found.lines.length > 0 && everShown(found.plannedAt, wishes) && !shown(tank.tank, night)) return found
    const coming = linesOf(state, tank, at).map((line) => ('next' in line.state ? line.state.next : addDays(night, 1)))
    if (coming.length === 0) return undefined
    night = later(coming.reduce(earlier), addDays(night, 1))
  }
  return undefined
}
