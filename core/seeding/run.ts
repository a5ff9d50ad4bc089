/** Where a run stands at a moment: by clock times, so that a locked phone, a killed app or a new day change nothing. */
import type { TankId } from '../basis/ids.ts'
import { type Moment, moment } from '../basis/zones.ts'
import type { SeedingPlanned } from './facts.ts'
import { planOfRun, type Run, type SeedingState } from './state.ts'
import { mostPumpMinutes, readStep } from './steps.ts'

const minute = 60_000
const hour = 60 * minute

export type RunStep = {
  readonly step: string
  /** When it is to be done: for what follows the pumps, reckoned from the tick that says they are off. */
  readonly at: Moment
  readonly done: Moment | undefined
  /** Whole minutes it is late, not yet done; 0 while there is time. */
  readonly late: number
}
export type RunNow = {
  readonly run: Run
  readonly plan: SeedingPlanned
  readonly steps: readonly RunStep[]
  /** The first that is not done. */
  readonly next: RunStep | undefined
  readonly is: 'planned' | 'begun' | 'pumpsOff' | 'overnight' | 'morning' | 'done' | 'stopped'
  /** While pumps are off: since when, and when they must be back. */
  readonly pumps: { readonly off: Moment; readonly backBy: Moment; readonly late: number } | undefined
}

/** A pump's step, switching it off. */
export const isFlowOff = (step: string): boolean => /^(return|wave)/.test(step) && readStep(step)?.does === 'off'
const isFlowOn = (step: string): boolean => /^(return|wave)/.test(step) && readStep(step)?.does === 'on'
const isHeaterOn = (step: string): boolean => /^sumpHeater/.test(step) && readStep(step)?.does === 'on'
const lateBy = (at: Moment, now: Moment): number => Math.max(0, Math.floor((now - at) / minute))

/** The moment pumps went off: the first tick of one that is not on again. */
const pumpsOff = ({ done }: Run, plan: SeedingPlanned): Moment | undefined => {
  const offs = plan.steps
    .filter(({ step }) => isFlowOff(step) && done.has(step))
    .map(({ step }) => done.get(step)?.at ?? 0)
  return offs.length > 0 ? moment(Math.min(...offs)) : undefined
}

/**
 * The pumps' hour runs from the tick that says they are off and never starts afresh; sooner is always allowed.
 * Undefined where only ticks are known and no plan.
 */
export const runNow = (run: Run, now: Moment): RunNow | undefined => {
  const plan = planOfRun(run, now)
  if (!plan) return undefined
  const off = pumpsOff(run, plan)
  const backBy = off === undefined ? undefined : moment(off + mostPumpMinutes * minute)
  const steps = plan.steps.map(({ step, at: planned }): RunStep => {
    // A heater in the sump waits for the level, and so for the pumps.
    const at = backBy !== undefined && (isFlowOn(step) || isHeaterOn(step)) ? backBy : planned
    const done = run.done.get(step)?.at
    return { step, at, done, late: done === undefined ? lateBy(at, now) : 0 }
  })
  const open = steps.filter(({ done }) => done === undefined)
  const flowOpen = off !== undefined && open.some(({ step }) => isFlowOn(step))
  const pumps =
    flowOpen && off !== undefined && backBy !== undefined ? { off, backBy, late: lateBy(backBy, now) } : undefined
  const started = run.done.size > 0
  const onlyMorning = open.every(({ at }) => at >= plan.morning)
  const is: RunNow['is'] = run.stopped
    ? 'stopped'
    : open.length === 0
      ? 'done'
      : pumps
        ? 'pumpsOff'
        : !started
          ? 'planned'
          : onlyMorning
            ? now >= plan.morning
              ? 'morning'
              : 'overnight'
            : 'begun'
  return { run, plan, steps, next: open[0], is, pumps }
}

/** What stands in front: pumps that are due come before anything else, whatever was left out on the way. */
export const inFront = ({ steps, next, pumps }: RunNow, now: Moment): RunStep | undefined =>
  (pumps && now >= pumps.backBy ? steps.find(({ step, done }) => done === undefined && isFlowOn(step)) : undefined) ??
  next

/** When pumps are to be on again; undefined where none stops. */
export const pumpsBackAt = ({ steps }: RunNow): Moment | undefined => steps.find(({ step }) => isFlowOn(step))?.at

/** The step that brings a device back. */
export const stepBack = (key: string, { plan }: RunNow): string =>
  plan.steps.some(({ step }) => step === `${key}-in`) ? `${key}-in` : `${key}-on`

/** What was switched off or taken out and is not back yet, by the key of its device: what moves the water comes first. */
export const stillOff = ({ plan, run: { done } }: RunNow): readonly string[] => {
  const off = plan.steps.flatMap(({ step }) => {
    const read = readStep(step)
    if (read?.key === undefined || (read.does !== 'off' && read.does !== 'out') || !done.has(step)) return []
    return done.has(`${read.key}-${read.does === 'off' ? 'on' : 'in'}`) ? [] : [read.key]
  })
  const flows = (key: string) => Number(isFlowOff(`${key}-off`))
  return off.sort((a, b) => flows(b) - flows(a))
}

/** When it was planned that pumps are on again; undefined where none stops. */
export const pumpsPlannedBack = ({ plan }: RunNow): Moment | undefined =>
  plan.steps.find(({ step }) => isFlowOn(step))?.at

/** Nothing is left to do. One that was stopped is over once all that was ticked off is ticked as on: that it should be is not that it is. */
const isOver = (run: RunNow): boolean => run.is === 'done' || (run.is === 'stopped' && stillOff(run).length === 0)
const runsByHour = ({ runs }: SeedingState, now: Moment): readonly RunNow[] =>
  [...runs.values()].flatMap((run) => runNow(run, now) ?? []).sort((a, b) => a.plan.off - b.plan.off)

/** Runs with something left to do, the earliest first. */
export const openRuns = (state: SeedingState, now: Moment): readonly RunNow[] =>
  runsByHour(state, now).filter((run) => !isOver(run))

/** The last night of a tank that is over. */
export const lastNight = (state: SeedingState, tank: TankId, now: Moment): RunNow | undefined =>
  runsByHour(state, now).findLast((run) => run.plan.tank === tank && isOver(run))

/** Hours a device has been off: from its tick to its tick, or to now; undefined while it runs. */
export const hoursOff = ({ done }: Run, key: string, now: Moment): number | undefined => {
  const off = done.get(`${key}-off`)?.at ?? done.get(`${key}-out`)?.at
  if (off === undefined) return undefined
  const on = done.get(`${key}-on`)?.at ?? done.get(`${key}-in`)?.at
  return ((on ?? now) - off) / hour
}
