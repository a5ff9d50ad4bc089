/** The loudest thing there is to say: pumps that are off too long. And, in the morning, what is still off. */
import type { RunId } from '../basis/ids.ts'
import { type Moment, moment, type Zone } from '../basis/zones.ts'
import { openRuns, type RunNow, stepBack, stillOff } from '../seeding/run.ts'
import type { SeedingState } from '../seeding/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { type TankState, tankKept } from '../tank/state.ts'

type Claims = readonly [string, ...string[]]
export type PumpsNudge = {
  readonly is: 'pumps'
  readonly key: string
  readonly claims: Claims
  readonly plannedAt: Moment
  readonly zone: Zone
  readonly tank: TankDescribed
  readonly run: RunId
  /** Whole minutes past the hour. */
  readonly late: number
}
export type MorningNudge = {
  readonly is: 'morning'
  readonly key: string
  readonly claims: Claims
  readonly plannedAt: Moment
  readonly zone: Zone
  readonly tank: TankDescribed
  readonly run: RunId
  /** Steps not ticked yet. */
  readonly open: readonly string[]
}

type State = TankState & SeedingState
const minute = 60_000
/** Minutes after the pumps should be back at which it is said again; then every half hour. Our own judgement. */
const again = [0, 3, 6, 10, 15, 20, 30, 45, 60] as const
const thenEvery = 30

/** How many times it should have been said by now; none before the hour is over. */
const timesBy = (late: number): number => {
  const early = again.filter((minutes) => minutes <= late).length
  return early < again.length ? early : early + Math.floor((late - 60) / thenEvery)
}
const minutesAt = (time: number): number => again[time] ?? 60 + (time - again.length + 1) * thenEvery

const ofRuns = <Value>(
  state: State,
  now: Moment,
  say: (run: RunNow, tank: TankDescribed) => readonly Value[],
): readonly Value[] =>
  openRuns(state, now).flatMap((run) => {
    const tank = tankKept(state, run.plan.tank, now)
    return tank ? say(run, tank) : []
  })

/** No hour is quiet for it, and it comes again until the pumps are ticked. */
export const pumpNudges = (state: State, now: Moment, shown: ReadonlySet<string>): readonly PumpsNudge[] =>
  ofRuns(state, now, ({ run: { id }, pumps }, tank): readonly PumpsNudge[] => {
    if (!pumps || now < pumps.backBy) return []
    const keys = Array.from({ length: timesBy(pumps.late) }, (_, time) => `pumps/${id}/${pumps.off}/${time}`)
    const latest = keys.at(-1)
    if (latest === undefined || shown.has(latest)) return []
    const plannedAt = moment(pumps.backBy + minutesAt(keys.length - 1) * minute)
    return [
      {
        is: 'pumps',
        key: latest,
        // What was slept through is not said after this one.
        claims: [latest, ...keys.filter((key) => key !== latest && !shown.has(key))],
        plannedAt,
        zone: tank.zone,
        tank,
        run: id,
        late: pumps.late,
      },
    ]
  })

/** Once, at the morning hour: from then on it stands on the screen until it is ticked. */
export const morningNudges = (state: State, now: Moment, shown: ReadonlySet<string>): readonly MorningNudge[] =>
  ofRuns(state, now, (told, tank): readonly MorningNudge[] => {
    const { plan, steps, is } = told
    const { id } = told.run
    const key = `morning/${id}/${plan.morning}`
    const open =
      is === 'stopped'
        ? stillOff(told).map((device) => stepBack(device, told))
        : steps.flatMap(({ step, done }) => (done === undefined ? [step] : []))
    return is === 'planned' || now < plan.morning || shown.has(key)
      ? []
      : [{ is: 'morning', key, claims: [key], plannedAt: plan.morning, zone: tank.zone, tank, run: id, open }]
  })

/** The next moment at which one of these is to be said, if nothing is ticked meanwhile. */
export const nextRunNudge = (state: State, now: Moment): Moment | undefined => {
  const next = openRuns(state, now).flatMap(({ plan, pumps }) => {
    const back = pumps && moment(pumps.backBy + (now < pumps.backBy ? 0 : minutesAt(timesBy(pumps.late))) * minute)
    return [...(back === undefined ? [] : [back]), ...(plan.morning > now ? [plan.morning] : [])]
  })
  return next.length > 0 ? moment(Math.min(...next)) : undefined
}
