/** The exact form's fields, as typed, and what they come to. */
import {
  asideSources,
  clockMinutes,
  comesFrom,
  type Day,
  emptySources,
  type FoodId,
  foodsAt,
  isClockTime,
  isDay,
  type Microlitres,
  type Moment,
  momentAt,
  nightOf,
  ok,
  type PlanMade,
  partOf,
  type Result,
  readMillilitres,
  refuse,
  type Share,
  type Source,
  shareByVolume,
  sourcesOf,
  type Taken,
  type TankDescribed,
  type TankId,
  tankAt,
  type World,
} from '../../../core/index.ts'
import type { WrongInForm } from '../../words/dose.ts'
import { typedMillilitres } from '../../words/numbers.ts'

/** How much of what was taken reached water; the rest was thrown away. */
export type Part = 'all' | 'threeQuarters' | 'half' | 'quarter'
const shareOf: Record<Part, number> = { all: 1, threeQuarters: 0.75, half: 0.5, quarter: 0.25 }

export type DoseFields = {
  readonly tanks: readonly TankId[]
  /** A lot's or bottle's id; 'none': from something not on record; empty: not said yet. */
  readonly source: string
  readonly count: number | undefined
  /** From the bottle, mL. */
  readonly poured: string
  readonly part: Part
  /** What she typed over the share that is offered, mL by tank. */
  readonly amounts: Record<string, string>
  readonly when: 'now' | 'then'
  readonly day: string
  readonly clock: string
  readonly why: string
}
export type DoseField = 'tanks' | 'source' | 'count' | 'poured' | 'day' | 'clock' | `amount/${string}`
export type DoseWrong = {
  readonly field: DoseField
  readonly refusal: WrongInForm
}

export const noSource = 'none'

/** What it may have come from, foods and all: the plan's own food first. */
export const sourcesFor = (plan: PlanMade, world: World, now: Moment): readonly { food: FoodId; source: Source }[] => {
  const others = foodsAt(world, now).flatMap(({ food }) => (food === plan.food ? [] : [food]))
  return [plan.food, ...others].flatMap((food) => [
    ...sourcesOf(world, food, now).map((source) => ({ food, source })),
    ...asideSources(world, food, now).map((source) => ({ food, source })),
    ...emptySources(world, food)
      .slice(0, mostEmpty)
      .map((source) => ({ food, source })),
  ])
}

/** More of them would bury the others. */
const mostEmpty = 2

export const sourceIn = (fields: DoseFields, all: readonly { food: FoodId; source: Source }[]) =>
  all.find(({ source }) => comesFrom(source) === fields.source)

/** What was taken, and how much of it reached water. */
export const takenOf = (
  fields: DoseFields,
  source: Source | undefined,
  plan: PlanMade,
): Result<{ readonly taken: readonly Taken[]; readonly reached: Microlitres }, DoseWrong> => {
  if (source === undefined) return ok({ taken: [], reached: plan.amount })
  if (source.from === 'portions') {
    const { count } = fields
    if (count === undefined) return refuse({ field: 'count', refusal: { why: 'howMany' } })
    const reached = partOf(count, source.each, shareOf[fields.part])
    return ok({ taken: [{ from: 'portions', lot: source.lot, count }], reached })
  }
  const poured = readMillilitres(fields.poured)
  if (!poured.ok) return refuse({ field: 'poured', refusal: poured.refusal })
  return ok({
    taken: [{ from: 'bottle', bottle: source.bottle, amount: poured.value }],
    reached: poured.value,
  })
}

/** One tank has all of it; several share it by their water. */
export const sharesOf = (reached: Microlitres, tanks: readonly TankDescribed[]): readonly Share[] => {
  const [only] = tanks
  if (!only) return []
  return tanks.length === 1 ? [{ tank: only.tank, amount: reached }] : (shareByVolume(reached, tanks) ?? [])
}
export const offered = (tank: TankId, shares: readonly Share[]): string => {
  const share = shares.find((other) => other.tank === tank)
  return share ? typedMillilitres(share.amount) : ''
}

export const amountsOf = (fields: DoseFields, shares: readonly Share[]): Result<readonly Share[], DoseWrong> => {
  const all: Share[] = []
  for (const tank of fields.tanks) {
    const amount = readMillilitres(fields.amounts[tank] ?? offered(tank, shares))
    if (!amount.ok) return refuse({ field: `amount/${tank}`, refusal: amount.refusal })
    all.push({ tank, amount: amount.value })
  }
  return all.length > 0 ? ok(all) : refuse({ field: 'tanks', refusal: { why: 'whichTank' } })
}

/** When, by the clock at the first of the tanks. */
export const momentOf = (
  { when, day, clock, tanks }: DoseFields,
  world: World,
  now: Moment,
): Result<{ readonly at: Moment; readonly night: Day }, DoseWrong> => {
  const [first] = tanks
  const tank = first && tankAt(world, first, now)
  if (!tank) return refuse({ field: 'tanks', refusal: { why: 'whichTank' } })
  if (when === 'now') return ok({ at: now, night: nightOf(now, tank) })
  if (!isDay(day)) return refuse({ field: 'day', refusal: { why: 'whenMissing' } })
  if (!isClockTime(clock)) return refuse({ field: 'clock', refusal: { why: 'whenMissing' } })
  const at = momentAt(day, clockMinutes(clock), tank.zone)
  return ok({ at, night: nightOf(at, tank) })
}
