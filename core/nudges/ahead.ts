/** The coming evenings with a dose, if each is kept: what a calendar is filled with. */
import { addDays, type Day } from '../basis/days.ts'
import type { Moment, Zone } from '../basis/zones.ts'
import { moment } from '../basis/zones.ts'
import { nightsUntil } from '../dosing/due.ts'
import type { PlanMade } from '../dosing/facts.ts'
import { plansAt } from '../dosing/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lampNight } from '../tank/lamp.ts'
import { nightOf, tankKept } from '../tank/state.ts'
import { everShown, nudgeAt, type State } from './doses.ts'
import { afterQuiet, type Wishes } from './wishes.ts'

export type EveningAhead = {
  /** The night, the zone where there are several, and the tank where she wants them apart: the same in every file. */
  readonly key: string
  readonly night: Day
  /** When it is to ring: its own minute, or the end of the quiet hours. */
  readonly at: Moment
  readonly zone: Zone
  readonly tanks: readonly TankDescribed[]
  readonly plans: readonly PlanMade[]
  /** When the last of the lamps goes out. */
  readonly lightsOut: Moment
}

/** Twelve weeks: far enough to be of use, near enough that plans still hold. Our own judgement, within 60 to 90 days. */
export const daysAhead = 84

/** From tonight on, what is still to ring; nights that the quiet hours swallow are left out. */
export const eveningsAhead = (state: State, now: Moment, wishes: Wishes): readonly EveningAhead[] => {
  const byKey = new Map<string, EveningAhead>()
  for (const plan of plansAt(state, now)) {
    const tank = tankKept(state, plan.tank, now)
    if (!tank) continue
    for (const night of nightsUntil(state, plan, addDays(nightOf(now, tank), daysAhead), now)) {
      const key = wishes.split ? `${night}-${tank.tank}` : `${night}-${tank.zone.replace(/\W/g, '')}`
      const planned = nudgeAt(state, tank, night, wishes)
      if (!everShown(planned, wishes)) continue
      const before = byKey.get(key)
      const later = (a: Moment, b: Moment | undefined) => moment(Math.max(a, b ?? a))
      byKey.set(key, {
        key,
        night,
        at: later(afterQuiet(planned, wishes), before?.at),
        zone: tank.zone,
        tanks: before?.tanks.includes(tank) ? before.tanks : [...(before?.tanks ?? []), tank],
        plans: [...(before?.plans ?? []), plan],
        lightsOut: later(lampNight(state, tank, night).out, before?.lightsOut),
      })
    }
  }
  return [...byKey.values()].filter(({ at }) => at > now).sort((a, b) => a.at - b.at)
}
