/** Which food: one she has, or a new one by kind and name, with the figures usual for its kind. */
import {
  describeFood,
  type FoodDescribed,
  type FoodId,
  type FoodKind,
  foodAt,
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
  readonly sort: string
}

export const foodsKnown = (world: World, now: Moment): readonly FoodDescribed[] =>
  [...world.foods.keys()].flatMap((id) => foodAt(world, id, now) ?? [])

export const pickFields = (world: World, last: FoodId | undefined, now: Moment): PickFields => {
  const known = foodsKnown(world, now)
  const usual = known.find(({ food }) => food === last) ?? known[0]
  return { food: usual?.food ?? 'new', newFood: newId<FoodId>(), foodName: '', sort: 'freshNonViable' }
}

const sorts: readonly FoodKind[] = ['freshNonViable', 'live', 'shelfStable']
export const asSort = (text: string): FoodKind => sorts.find((sort) => sort === text) ?? 'freshNonViable'

export type PickRead = {
  readonly food: FoodDescribed
  readonly facts: readonly FoodDescribed[]
  /** The world that knows it: what else the form records is asked of this one. */
  readonly world: World
}

export const readPick = (fields: PickFields, world: World, now: Moment): Result<PickRead, Trouble> => {
  const known = foodsKnown(world, now).find(({ food }) => food === fields.food)
  if (known) return ok({ food: known, facts: [], world })
  const name = readName(fields.foodName, 'foodName')
  if (!name.ok) return name
  const described = placed(describeFood(newFood(fields.newFood, name.value, asSort(fields.sort)), now), 'foodName')
  if (!described.ok) return described
  const [food] = described.value
  return ok({ food, facts: [food], world: { ...world, foods: new Map(world.foods).set(food.food, [food]) } })
}
