/** Where a plan for a food is made: for the first tank that has none for it. */
import { type FoodId, planFor, tanksAt } from '../../../../core/index.ts'
import type { Reading } from '../../useReading.ts'

export const planPath = ({ world, now }: Reading, food: FoodId): string => {
  const tank = tanksAt(world, now).find((each) => !planFor(world, each.tank, food, now))
  return tank ? `#/water/plan/${tank.tank}/${food}` : '#/water'
}
