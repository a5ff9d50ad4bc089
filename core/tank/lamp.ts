/**
 * When a lamp really goes out. Clocks in lamps know nothing of summer time, and a dial stands still without power: common
 * practice, no source.
 */
import type { Day } from '../basis/days.ts'
import { addDays, dayNumber } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import { type ClockTime, clockMinutes, type Moment, moment, momentAt, offsetMinutes, wallDay } from '../basis/zones.ts'
import type { LampClock, TankDescribed } from './facts.ts'
import { lightsOutOf, nightOf, type TankState } from './state.ts'

const minute = 60_000
const dayLength = 1440 * minute
const halfDay = dayLength / 2

export type LampNight = {
  /** When it is meant to go out. */
  readonly meant: Moment
  /** When it does, as far as is known. */
  readonly out: Moment
  /** Whole minutes that it is late; less than none: early. Within twelve hours either way. */
  readonly late: number
  /** It lost its time in a power cut and nobody has looked since: `out` is when it would go out had it not. */
  readonly unsure: boolean
}

/** What the lamp's clock was last known to show. */
type Known = { readonly at: Moment; readonly goesOut: ClockTime }

/** @param tank as it is described, or was then */
export const lampNight = (state: TankState, tank: TankDescribed, night: Day): LampNight => {
  const meant = lightsOutOf(night, tank)
  const known = knownOf(state, tank, meant)
  const cuts = cutsSince(state, tank.tank, known.at, meant)
  const still = tank.lamp === 'dial' ? cuts.reduce((sum, { minutes }) => sum + minutes, 0) : 0
  const out = nearest(outOf(tank, known, meant) + still * minute, meant)
  return {
    meant,
    out,
    late: Math.round((out - meant) / minute),
    unsure: tank.lamp === 'losesTime' && cuts.length > 0,
  }
}

/** When the lamp goes out in a night. */
export const lampOut = (state: TankState, tank: TankDescribed, night: Day): Moment => lampNight(state, tank, night).out

/** By the wall of a place whose clocks never change, unless this lamp's clock changes along. */
const outOf = ({ zone, lamp = 'followsClocks' }: TankDescribed, { at, goesOut }: Known, meant: Moment): number => {
  const day = wallDay(meant, zone)
  if (lamp === 'followsClocks') return momentAt(day, clockMinutes(goesOut), zone)
  return dayNumber(day) * dayLength + (clockMinutes(goesOut) - offsetMinutes(zone, at)) * minute
}
/** A clock face comes round every day: what is a day off is not off. */
const nearest = (out: number, meant: Moment): Moment => {
  const off = (((out - meant + halfDay) % dayLength) + dayLength) % dayLength
  return moment(meant + off - halfDay)
}

/** Since she last saw it, or since it was first described with this clock and this time. */
const knownOf = ({ tanks, lampsSeen }: TankState, tank: TankDescribed, meant: Moment): Known => {
  const since = setSince(tanks.get(tank.tank) ?? [], tank)
  const seen = lampsSeen.get(tank.tank)?.findLast(({ at }) => at >= since && at <= meant + halfDay)
  return seen ?? { at: since, goesOut: tank.lightsOut }
}
const setSince = (all: readonly TankDescribed[], tank: TankDescribed): Moment => {
  let since = tank.at
  for (let i = all.indexOf(tank) - 1; i >= 0; i--) {
    const before = all[i]
    if (before?.lightsOut !== tank.lightsOut || before.lamp !== tank.lamp || before.zone !== tank.zone) break
    since = before.at
  }
  return since
}
const cutsSince = ({ powerCuts }: TankState, tank: TankId, since: Moment, until: Moment) =>
  powerCuts.filter(({ at, tanks }) => at > since && at <= until && tanks.includes(tank))

export type ClockChange = {
  /** The first day of the new time. */
  readonly day: Day
  /** Minutes the clocks go forward; less than none: back. */
  readonly forward: number
}

/** How far ahead a change of the clocks is told of. Our own judgement. */
const changeAhead = 3

/** The next change of the clocks in the tank's zone, once it is at most three days off. */
export const clockChange = (tank: TankDescribed, now: Moment): ClockChange | undefined => {
  const today = wallDay(now, tank.zone)
  for (let ahead = 1; ahead <= changeAhead; ahead++) {
    const day = addDays(today, ahead)
    const forward = noonOffset(tank, day) - noonOffset(tank, addDays(day, -1))
    if (forward !== 0) return { day, forward }
  }
  return undefined
}
const noonOffset = ({ zone }: TankDescribed, day: Day): number => offsetMinutes(zone, momentAt(day, 720, zone))

export type LampAsk = {
  readonly tank: TankDescribed
  readonly lamp: LampClock
  readonly tonight: LampNight
  /** Told only where the lamp does not follow it, with what its first night will be like if it is left alone. */
  readonly change: (ClockChange & { readonly leftAlone: LampNight }) | undefined
}

/** Minutes a lamp may be off without a word: nobody sets a dial closer. Our own judgement. */
const nearEnough = 5

/** What there is to say of a tank's lamp; undefined where it does what it is meant to. */
export const lampAsk = (state: TankState, tank: TankDescribed, now: Moment): LampAsk | undefined => {
  const { lamp = 'followsClocks' } = tank
  const tonight = lampNight(state, tank, nightOf(now, tank))
  const coming = lamp === 'followsClocks' ? undefined : clockChange(tank, now)
  const change = coming && { ...coming, leftAlone: lampNight(state, tank, coming.day) }
  return change || tonight.unsure || Math.abs(tonight.late) >= nearEnough ? { tank, lamp, tonight, change } : undefined
}
