/** Which food: one she has, or a new one by kind and name, with the figures usual for its kind. */
import {
  describeFood,
  type FoodDescribed,
  type FoodId,
  type FoodKind,
  foodAt,
  foodsAt,
  type Moment,
  newFood,
  ok,
  type Result,
  type World,
} from '../../../core/index.ts'
import { newId } from '../../state/ids.ts'
import { readName } from './readName.ts'
import { placed, type Trouble } from './useAct.ts'

export type PickFields = {
  /** A food's id, or 'new'. */
  readonly food: string
  readonly newFood: FoodId
  readonly foodName: string
  readonly sort: FoodKind
}

/** Those still bought, and the one an entry already names. */
export const foodsOffered = (world: World, named: string | undefined, now: Moment): readonly FoodDescribed[] => {
  const bought = foodsAt(world, now)
  const own = named === undefined ? undefined : foodAt(world, named as FoodId, now)
  return own && !bought.includes(own) ? [...bought, own] : bought
}

/** @param named the food an entry already has: offered although it is no longer bought */
export const pickFields = (
  world: World,
  last: FoodId | undefined,
  now: Moment,
  named?: FoodId | undefined,
): PickFields => {
  const known = foodsOffered(world, named, now)
  const usual = known.find(({ food }) => food === last) ?? known[0]
  return { food: usual?.food ?? 'new', newFood: newId<FoodId>(), foodName: '', sort: 'freshNonViable' }
}

export type PickRead = {
  readonly food: FoodDescribed
  readonly facts: readonly FoodDescribed[]
  /** The world that knows it: what else the form records is asked of this one. */
  readonly world: World
}

export const readPick = (fields: PickFields, world: World, now: Moment): Result<PickRead, Trouble> => {
  const known = foodAt(world, fields.food as FoodId, now)
  if (known) return ok({ food: known, facts: [], world })
  const name = readName(fields.foodName, 'foodName')
  if (!name.ok) return name
  const described = placed(describeFood(newFood(fields.newFood, name.value, fields.sort), now), 'foodName')
  if (!described.ok) return described
  const [food] = described.value
  return ok({ food, facts: [food], world: { ...world, foods: new Map(world.foods).set(food.food, [food]) } })
}
