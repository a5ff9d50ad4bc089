/** The exact form: what it begins with, and what it says as a whole. */
import {
  comesFrom,
  type Day,
  type FoodId,
  giveShared,
  inPart,
  type Moment,
  nightOf,
  ok,
  type PlanMade,
  partFor,
  type Result,
  refuse,
  type Share,
  servings,
  sourcesOf,
  type Taken,
  type TankDescribed,
  tankAt,
  type World,
  wallDay,
} from '../../../core/index.ts'
import { typedMillilitres } from '../../words/numbers.ts'
import type { Confirmed } from '../Tonight/useDosing.ts'
import { because } from '../Why.tsx'
import {
  amountsOf,
  type DoseFields,
  type DoseWrong,
  momentOf,
  noSource,
  sharesOf,
  sourceIn,
  sourcesFor,
  takenOf,
} from './doseFields.ts'

/** As it would be tonight. */
export const usualDose = (plan: PlanMade, tank: TankDescribed, world: World, now: Moment): DoseFields => {
  const sources = sourcesOf(world, plan.food, now)
  const night = nightOf(now, tank)
  // What is past its day or set aside is hers to choose.
  const [best] = servings(sources, plan.amount, night)
  const chosen = best ? comesFrom(best.source) : sourcesFor(plan, world, now).length > 0 ? '' : noSource
  return {
    tanks: [tank.tank],
    source: chosen,
    count: best?.taken.from === 'portions' ? best.taken.count : 1,
    poured: typedMillilitres(plan.amount),
    part: 'all',
    amounts: best && inPart(best) ? { [tank.tank]: typedMillilitres(best.amount) } : {},
    when: 'now',
    day: wallDay(now, tank.zone),
    clock: '',
    why: '',
  }
}

export const tanksIn = ({ tanks }: DoseFields, world: World, now: Moment): readonly TankDescribed[] =>
  tanks.flatMap((tank) => tankAt(world, tank, now) ?? [])

/** The shares that are offered; none while it is not known how much there is. */
export const offeredIn = (fields: DoseFields, plan: PlanMade, world: World, now: Moment): readonly Share[] => {
  const taken = takenOf(fields, sourceIn(fields, sourcesFor(plan, world, now))?.source, plan)
  return taken.ok ? sharesOf(taken.value.reached, tanksIn(fields, world, now)) : []
}

export type DoseRead = {
  readonly food: FoodId
  readonly taken: readonly Taken[]
  readonly shares: readonly Share[]
  readonly at: Moment
  readonly night: Day
  readonly why?: string
}

export const readDose = (
  fields: DoseFields,
  plan: PlanMade,
  world: World,
  now: Moment,
): Result<DoseRead, DoseWrong> => {
  if (fields.source === '') return refuse({ field: 'source', refusal: { why: 'whichSource' } })
  const from = sourceIn(fields, sourcesFor(plan, world, now))
  const taken = takenOf(fields, from?.source, plan)
  if (!taken.ok) return taken
  const shares = amountsOf(fields, sharesOf(taken.value.reached, tanksIn(fields, world, now)))
  if (!shares.ok) return shares
  const when = momentOf(fields, world, now)
  if (!when.ok) return when
  return ok({
    food: from?.food ?? plan.food,
    taken: taken.value.taken,
    shares: shares.value,
    ...when.value,
    ...because(fields.why),
  })
}

/** One act, each tank by the plan it has for this food, if it has one. */
export const giveRead = (world: World, { food, taken, shares, at, why }: DoseRead, told: Confirmed, now: Moment) =>
  giveShared(
    world,
    {
      food,
      taken,
      at,
      aside: false,
      parts: shares.map(({ tank, amount }) => partFor(world, tank, food, amount, now)),
      ...(why ? { why } : {}),
      ...told,
    },
    now,
  )
