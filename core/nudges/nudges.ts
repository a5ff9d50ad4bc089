/** What deserves a nudge at a moment, and when the next one is. What was shown before is told, not remembered. */
import { addDays, type Day, earlier, later } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import { type Moment, moment } from '../basis/zones.ts'
import { type DosingState, plansAt } from '../dosing/state.ts'
import { type TonightLine, tonight } from '../dosing/tonight.ts'
import type { FoodState } from '../food/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lampOut } from '../tank/lamp.ts'
import { nightOf, type TankState, tanksAt } from '../tank/state.ts'

type State = TankState & FoodState & DosingState

/** A tank and a night: whoever shows a nudge under this name, no other follows. */
export type NudgeKey = `${TankId}/${Day}`

export type Nudge = {
  readonly key: NudgeKey
  readonly tank: TankDescribed
  readonly night: Day
  readonly plannedAt: Moment
  /** What is due for the tank, each with something to take. */
  readonly lines: readonly TonightLine[]
}

/** Minutes after lights-out, when the small life has come out. Common practice, no source. */
export const nudgeDelay = 20
/** Hours after its minute in which a nudge still helps; later it would only wake somebody. Our own judgement. */
export const nudgeLate = 3

const minute = 60_000
export const nudgeAt = (state: TankState, tank: TankDescribed, night: Day): Moment =>
  moment(lampOut(state, tank, night) + nudgeDelay * minute)

/** One for each tank and night, and none once it is shown. Where nothing is left to take, the night is left in peace. */
export const nudges = (state: State, now: Moment, shown: ReadonlySet<string>): readonly Nudge[] =>
  tanksAt(state, now).flatMap((tank) => nudgeOf(state, tank, now, shown) ?? [])

/** The next one to come, if nothing is written down meanwhile. */
export const nextNudge = (state: State, now: Moment, shown: ReadonlySet<string>): Nudge | undefined =>
  tanksAt(state, now)
    .flatMap((tank) => nextOf(state, tank, now, shown) ?? [])
    .reduce<Nudge | undefined>(
      (first, nudge) => (first && first.plannedAt <= nudge.plannedAt ? first : nudge),
      undefined,
    )

const linesOf = (state: State, { tank }: TankDescribed, now: Moment): readonly TonightLine[] =>
  tonight(state, now).filter((line) => line.tank.tank === tank)

const nudgeOf = (state: State, tank: TankDescribed, now: Moment, shown: ReadonlySet<string>): Nudge | undefined => {
  const night = nightOf(now, tank)
  const key = `${tank.tank}/${night}` as const
  const plannedAt = nudgeAt(state, tank, night)
  if (shown.has(key) || now < plannedAt || now >= plannedAt + nudgeLate * 60 * minute) return undefined
  const lines = linesOf(state, tank, now).filter((line) => line.state.is === 'due' && line.servings.length > 0)
  return lines.length > 0 ? { key, tank, night, plannedAt, lines } : undefined
}

/** From one night that may be due to the next: a hold of a year is one step, and the walk ends. */
const mostSteps = 40

const nextOf = (state: State, tank: TankDescribed, now: Moment, shown: ReadonlySet<string>): Nudge | undefined => {
  if (!plansAt(state, now).some((plan) => plan.tank === tank.tank)) return undefined
  const tonightAt = nightOf(now, tank)
  let night = nudgeAt(state, tank, tonightAt) > now ? tonightAt : addDays(tonightAt, 1)
  for (let step = 0; step < mostSteps; step++) {
    const at = nudgeAt(state, tank, night)
    const nudge = nudgeOf(state, tank, at, shown)
    if (nudge) return nudge
    const coming = linesOf(state, tank, at).map((line) => ('next' in line.state ? line.state.next : addDays(night, 1)))
    if (coming.length === 0) return undefined
    night = later(coming.reduce(earlier), addDays(night, 1))
  }
  return undefined
}
