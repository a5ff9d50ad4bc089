/** What the core makes of a freezing plan as typed. */
import {
  type Bottle,
  type Day,
  doseToFreeze,
  type FoodDescribed,
  type FreezeAsked,
  type FreezePlan,
  freezingWindow,
  liquidLeft,
  type Microlitres,
  type Moment,
  microlitres,
  mostPerWell,
  ok,
  planFreezing,
  plannedUntil,
  proposePortion,
  type Result,
  readMillilitres,
  readNumber,
  residueOf,
  type World,
} from '../../../core/index.ts'
import { typedMillilitres } from '../../words/numbers.ts'
import type { FreezeFields } from './freezeFields.ts'
import { readTray } from './trays.ts'
import { placed, type Trouble } from './useAct.ts'

const readWell = ({ well, ownWell }: FreezeFields): Result<Microlitres, Trouble> =>
  well === 'own' ? placed(readMillilitres(ownWell), 'ownWell') : ok(microlitres(Number(well)))

/** What stays in the fridge, as typed. */
const readKept = ({ keep, keepOwn }: FreezeFields, planned: number): Result<Microlitres, Trouble> => {
  if (keep === 'nothing') return ok(microlitres(0))
  if (keep === 'plan') return ok(microlitres(planned))
  return placed(readMillilitres(keepOwn), 'keepOwn')
}

/** What the plan calls for while the bottle is still good. */
export const freshNeeded = ({ world, bottle, food, today, now }: FreezeOf) => {
  const window = freezingWindow(bottle, food, today)
  return window.is === 'open' ? plannedUntil(world, food.food, window.until, now) : { doses: 0, amount: 0 }
}

/** The portion proposed for a well, as it would be typed. */
export const proposed = (fields: FreezeFields, world: World, food: FoodDescribed, now: Moment): string => {
  const well = readWell(fields)
  const { dose, mark } = doseToFreeze(world, food.food, now)
  const made = well.ok ? proposePortion(dose, mark, mostPerWell(well.value)) : undefined
  return made ? typedMillilitres(made.portion) : ''
}

export type PlanRead = {
  readonly plan: FreezePlan
  readonly portion: Microlitres
  readonly owned: number | undefined
}
export const readPlan = (fields: FreezeFields, of: FreezeOf): Result<PlanRead, Trouble> => {
  const { world, bottle, food, now } = of
  const well = readWell(fields)
  if (!well.ok) return well
  const portion = placed(readMillilitres(fields.portion ?? proposed(fields, world, food, now)), 'portion')
  if (!portion.ok) return portion
  const tray = readTray(fields)
  if (!tray.ok) return tray
  const keepFresh = readKept(fields, freshNeeded(of).amount)
  if (!keepFresh.ok) return keepFresh
  const owned = fields.traysOwned.trim() === '' ? ok(undefined) : placed(readNumber(fields.traysOwned), 'traysOwned')
  if (!owned.ok) return owned
  const asked: FreezeAsked = {
    inBottle: liquidLeft(bottle),
    residue: residueOf(bottle, food),
    keepFresh: keepFresh.value,
    portion: portion.value,
    well: well.value,
    wellsPerTray: tray.value.rows * tray.value.columns,
    ...(owned.value === undefined ? {} : { traysOwned: owned.value }),
  }
  const plan = placed(planFreezing(asked), {
    wellTooSmall: 'portion',
    notWhole: 'traysOwned',
    nothingToFreeze: 'keep',
  })
  return plan.ok ? ok({ plan: plan.value, portion: portion.value, owned: owned.value }) : plan
}

export type FreezeOf = {
  readonly world: World
  readonly bottle: Bottle
  readonly food: FoodDescribed
  readonly today: Day
  readonly now: Moment
}
