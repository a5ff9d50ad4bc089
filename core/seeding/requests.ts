/** Planning a pour, which may be refused, and keeping its tally, which never is. */
import type { Microlitres } from '../basis/amounts.ts'
import type { Day } from '../basis/days.ts'
import type { RunId, TankId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import { lampOut } from '../tank/lamp.ts'
import { nightOf, type TankState, tankKept } from '../tank/state.ts'
import type { LivePoured, WaterPlace } from '../watch/facts.ts'
import { isSalinity } from './balance.ts'
import { planMayChange, withSwitchedOff } from './change.ts'
import type {
  EquipmentDescribed,
  SeedingPlanned,
  SeedingPoured,
  SeedingStepDone,
  SeedingStopped,
  SeedingWaterTaken,
  TankTreated,
} from './facts.ts'
import { runNow } from './run.ts'
import { equipmentAt, planOfRun, type SeedingState, treatedAt } from './state.ts'
import { type RunAsked, type SeedingStep, stepsOf } from './steps.ts'

export type SeedingAsked = Omit<SeedingPlanned, 'kind' | 'at' | 'night' | 'steps'>
export type SeedingRefusal =
  | { readonly why: 'noSuchTank' | 'noEquipment' | 'nothingToPour' | 'morningFirst' | 'alreadyGone' }
  /** A pump is off, something is poured, or it is stopped: the plan stands. */
  | { readonly why: 'underWay' }
  /** What is in the water kills what is poured. */
  | { readonly why: 'treatedWater'; readonly with: Exclude<TankTreated['with'], 'nothing'> }
  /** The display is still lit when the pumps stop; it is dark from `dark`. */
  | { readonly why: 'displayLit'; readonly dark: Moment }
  /** A germ-killing lamp or ozone that runs on kills what is poured. */
  | { readonly why: 'killsWhatIsPoured'; readonly device: 'uv' | 'ozone' }
  | { readonly why: 'bottlesNotPositive'; readonly into: WaterPlace }
  /** Outside 2 to 45 parts per thousand: below 2 it is a specific gravity. */
  | { readonly why: 'notSalinity'; readonly typed: number; readonly of: 'tankSalt' | 'bottleSalt' }

type State = TankState & SeedingState

/**
 * Refused where it would kill the animals or leave the tank at risk. What has been done is never refused: see the log.
 * With the id of a run that is planned already its plan is written again, until a pump is off: the ticks stay, and what is
 * ticked off stays among the steps until it is on again.
 */
export const planSeeding = (
  state: State,
  asked: SeedingAsked,
  now: Moment,
): Result<readonly [SeedingPlanned], SeedingRefusal> => {
  const tank = tankKept(state, asked.tank, now)
  if (!tank) return refuse({ why: 'noSuchTank' })
  const begun = state.runs.get(asked.run)
  const stands = begun && runNow(begun, now)
  if (stands && !planMayChange(stands)) return refuse({ why: 'underWay' })
  const equipment = equipmentAt(state, asked.tank, now)
  if (!equipment) return refuse({ why: 'noEquipment' })
  if (asked.pours.length === 0) return refuse({ why: 'nothingToPour' })
  for (const { into, bottles } of asked.pours)
    if (!(bottles > 0 && bottles <= 1_000)) return refuse({ why: 'bottlesNotPositive', into })
  for (const of of ['tankSalt', 'bottleSalt'] as const) {
    const typed = asked[of]
    if (typed !== undefined && !isSalinity(typed)) return refuse({ why: 'notSalinity', typed, of })
  }
  const treated = treatedAt(state, asked.tank, now)
  if (treated && treated.with !== 'nothing') return refuse({ why: 'treatedWater', with: treated.with })
  // Corrected on the way its hour may have come; a new plan lies ahead.
  if ((begun?.done.size ?? 0) === 0 && asked.off < now - clockGrace) return refuse({ why: 'alreadyGone' })
  if (asked.morning <= asked.off) return refuse({ why: 'morningFirst' })
  const night = nightOf(asked.off, tank)
  const dark = lampOut(state, tank, night)
  if (asked.pours.some(({ into }) => into === 'display') && asked.off < dark) return refuse({ why: 'displayLit', dark })
  const kills = equipment.devices.find(({ device, stops }) => !stops && (device === 'uv' || device === 'ozone'))?.device
  if (kills === 'uv' || kills === 'ozone') return refuse({ why: 'killsWhatIsPoured', device: kills })
  const steps = stepsForRun(state, equipment, asked).map(({ step, at }) => ({ step, at }))
  return ok([{ kind: 'seedingPlanned', at: now, ...asked, night, steps }])
}

/** The steps of a plan as it would be saved, those of what is switched off already among them. */
export const stepsForRun = (
  { runs, equipment }: SeedingState,
  described: EquipmentDescribed,
  asked: RunAsked & Pick<SeedingPlanned, 'run' | 'tank'>,
): readonly SeedingStep[] => {
  const run = runs.get(asked.run)
  const devices = run ? withSwitchedOff(described, run, equipment.get(asked.tank) ?? []) : described.devices
  return stepsOf({ devices, places: described.places }, asked)
}

export type RunRefusal =
  | { readonly why: 'noSuchRun' }
  | { readonly why: 'noSuchStep' }
  | { readonly why: 'doneAlready' }
  | { readonly why: 'amountNotPositive' }
  | { readonly why: 'stoppedAlready' }

/** "Done", with a thumb in the dark. Touched twice it is done once. */
export const tickStep = (
  state: SeedingState,
  { run: id, step }: { readonly run: RunId; readonly step: string },
  now: Moment,
): Result<readonly [SeedingStepDone], RunRefusal> => {
  const run = state.runs.get(id)
  const plan = run && planOfRun(run, now)
  if (!run || !plan) return refuse({ why: 'noSuchRun' })
  if (!plan.steps.some((each) => each.step === step)) return refuse({ why: 'noSuchStep' })
  if (run.done.has(step)) return refuse({ why: 'doneAlready' })
  return ok([{ kind: 'seedingStepDone', at: now, run: id, step }])
}

export const takeWater = (
  state: SeedingState,
  asked: { readonly run: RunId; readonly amount: Microlitres; readonly way: SeedingWaterTaken['way'] },
  now: Moment,
): Result<readonly [SeedingWaterTaken], RunRefusal> => {
  if (!state.runs.has(asked.run)) return refuse({ why: 'noSuchRun' })
  if (asked.amount <= 0) return refuse({ why: 'amountNotPositive' })
  return ok([{ kind: 'seedingWaterTaken', at: now, ...asked }])
}

export const notePour = (
  state: SeedingState,
  asked: Omit<SeedingPoured, 'kind' | 'at'>,
  now: Moment,
): Result<readonly [SeedingPoured], RunRefusal> => {
  if (!state.runs.has(asked.run)) return refuse({ why: 'noSuchRun' })
  if (!(asked.bottles > 0) || asked.amount <= 0) return refuse({ why: 'amountNotPositive' })
  return ok([{ kind: 'seedingPoured', at: now, ...asked }])
}

/** "Fish breathing hard": the run ends, what was poured and taken out stays on the tally. */
export const stopRun = (
  state: SeedingState,
  asked: { readonly run: RunId; readonly because: SeedingStopped['because']; readonly why?: string },
  now: Moment,
): Result<readonly [SeedingStopped], RunRefusal> => {
  const run = state.runs.get(asked.run)
  if (!run) return refuse({ why: 'noSuchRun' })
  if (run.stopped) return refuse({ why: 'stoppedAlready' })
  return ok([{ kind: 'seedingStopped', at: now, ...asked }])
}

export type PouredRefusal = { readonly why: 'noSuchTank' | 'nothingToPour' } | { readonly why: 'notYet' }

/** A pour as it happened, whatever the water and the lamps: the log never says no. */
export const recordPour = (
  state: TankState,
  asked: {
    readonly tank: TankId
    readonly poured: Moment
    readonly animals: LivePoured['animals']
    readonly pours: LivePoured['pours']
    readonly why?: string
  },
  now: Moment,
): Result<readonly [LivePoured & { readonly night: Day }], PouredRefusal> => {
  const tank = tankKept(state, asked.tank, now)
  if (!tank) return refuse({ why: 'noSuchTank' })
  if (asked.pours.length === 0 || asked.pours.some(({ bottles }) => !(bottles > 0)))
    return refuse({ why: 'nothingToPour' })
  if (asked.poured > now + clockGrace) return refuse({ why: 'notYet' })
  const { poured, ...rest } = asked
  return ok([{ kind: 'livePoured', at: poured, night: nightOf(poured, tank), ...rest }])
}
