/** Water in, water out: as much tank water leaves as came with the bottles. */
import { litres, type Microlitres, microlitres } from '../basis/amounts.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { TankWater } from '../tank/facts.ts'
import { trueWater } from '../tank/state.ts'
import type { WaterPlace } from '../watch/facts.ts'
import type { SeedingPlanned, SeedingPoured } from './facts.ts'
import type { Run } from './state.ts'

export type Balance = {
  /** Live bottles as poured, and new salt water they were rinsed with. */
  readonly in: Microlitres
  /** Gone for good; what was borrowed and never went back is among it. */
  readonly out: Microlitres
  /** Still to take out; below zero: more left than came. */
  readonly left: number
}

export const balanceOf = ({ pours, water }: Run): Balance => {
  const came = pours.reduce((sum, { amount, rinse }) => sum + amount + rinse, 0)
  const of = (way: (typeof water)[number]['way']) =>
    water.reduce((sum, each) => (each.way === way ? sum + each.amount : sum), 0)
  const out = of('out') + Math.max(0, of('borrowed') - of('putBack'))
  return { in: microlitres(came), out: microlitres(out), left: came - out }
}

const inAll = ({ pours }: Pick<SeedingPlanned, 'pours'>, each: number): Microlitres =>
  microlitres(Math.round(pours.reduce((sum, { bottles }) => sum + bottles, 0) * each))

/** What the bottles of a plan hold in all. */
export const bottledIn = (plan: Pick<SeedingPlanned, 'pours' | 'holds'>): Microlitres => inAll(plan, plan.holds)

/** What a plan will bring in: bottles by what one holds, and a rinse each if it is new salt water. */
export const plannedIn = (plan: Pick<SeedingPlanned, 'pours' | 'holds' | 'rinse'>): Microlitres =>
  inAll(plan, plan.holds + (plan.rinse?.of === 'newSaltWater' ? plan.rinse.each : 0))

/**
 * What is still to be taken out at a step: before the pour what the bottles will bring, or half of that; afterwards what really
 * came less what went. Never below zero.
 */
export const toTakeAt = (
  step: string,
  plan: Pick<SeedingPlanned, 'pours' | 'holds' | 'rinse' | 'waterOut'>,
  run: Run,
): Microlitres => {
  const { out, left } = balanceOf(run)
  if (step !== 'waterOut') return microlitres(Math.max(0, left))
  const before = plan.waterOut === 'half' ? Math.round(plannedIn(plan) / 2) : plannedIn(plan)
  return microlitres(Math.max(0, before - out))
}

/** What of the plan for a place has not been poured yet: bottles, and what is in them. */
export const toPourAt = (
  place: WaterPlace,
  { pours, holds, rinse }: Pick<SeedingPlanned, 'pours' | 'holds' | 'rinse'>,
  run: Run,
): Omit<SeedingPoured, 'kind' | 'at' | 'run'> | undefined => {
  const sum = (all: readonly { readonly into: WaterPlace; readonly bottles: number }[]) =>
    all.reduce((total, { into, bottles }) => (into === place ? total + bottles : total), 0)
  const left = sum(pours) - sum(run.pours)
  return left > 0 ? { into: place, ...filled(left, { holds, rinse }) } : undefined
}

/** So many bottles as the plan has them: what is in them, and new salt water they are rinsed with. */
export const filled = (
  bottles: number,
  { holds, rinse }: { readonly holds: Microlitres; readonly rinse?: SeedingPlanned['rinse'] | undefined },
): { readonly bottles: number; readonly amount: Microlitres; readonly rinse: Microlitres } => ({
  bottles,
  amount: microlitres(Math.round(bottles * holds)),
  rinse: microlitres(rinse?.of === 'newSaltWater' ? Math.round(bottles * rinse.each) : 0),
})

/** Parts per thousand of water that animals live in; less is a specific gravity. Our own judgement. */
export const isSalinity = (typed: number): boolean => typed >= 2 && typed <= 45

export type ShiftRefusal = { readonly why: 'noWater' } | { readonly why: 'notSalinity'; readonly typed: number }
export type Shift = {
  /** Parts per thousand afterwards. */
  readonly after: number
  readonly change: number
  /** Over half a part in a thousand. Our own judgement. */
  readonly notable: boolean
}

/**
 * Salinity after so much water of another salinity took the place of as much tank water: S′ = (S(V − v) + Sᵦv) / V,
 * a balance of salt by volume (against mass less than 0.03 % off).
 * @param litres true water of the tank, above 0
 * @param salinity parts per thousand, 2 to 45: less is a specific gravity
 */
export const saltShift = (
  litres: number,
  salinity: number,
  poured: Microlitres,
  bottleSalinity: number,
): Result<Shift, ShiftRefusal> => {
  if (!(litres > 0)) return refuse({ why: 'noWater' })
  for (const typed of [salinity, bottleSalinity]) if (!isSalinity(typed)) return refuse({ why: 'notSalinity', typed })
  const v = Math.min(litres, poured / 1_000_000)
  const after = (salinity * (litres - v) + bottleSalinity * v) / litres
  const change = after - salinity
  return ok({ after, change, notable: Math.abs(change) > 0.5 })
}

/**
 * What so much water out of live bottles does to the salt of a tank, as much tank water leaving: by the tank's true water, or
 * the volume it goes by. New salt water to rinse with is taken to be as salty as the tank. Undefined while either salinity or
 * the water is not known.
 */
export const saltOfPour = (
  { tankSalt, bottleSalt }: Pick<SeedingPlanned, 'tankSalt' | 'bottleSalt'>,
  water: TankWater,
  poured: Microlitres,
): (Shift & { readonly before: number }) | undefined => {
  const held = trueWater(water) ?? water.stated
  if (tankSalt === undefined || bottleSalt === undefined || !held) return undefined
  const shift = saltShift(litres(held), tankSalt, poured, bottleSalt)
  return shift.ok ? { ...shift.value, before: tankSalt } : undefined
}
