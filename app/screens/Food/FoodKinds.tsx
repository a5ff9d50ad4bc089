/** Each food there is: what it has done so far, what a dose costs, and the way to its figures. */
import { costPerDose, doseToFreeze, type FoodDescribed, type FoodId, fedSince, lostOf } from '../../../core/index.ts'
import { costWords, soFarWords } from '../../words/food.ts'
import { type Reading, useReading } from '../useReading.ts'

const costOf = ({ world, now }: Reading, food: FoodDescribed): string => {
  const last = [...world.bottles.values()].findLast(({ recorded }) => recorded.food === food.food)
  return costWords(
    last ? costPerDose(last, food, doseToFreeze(world, food.food, now).dose, lostOf(world, last)) : 'notKnown',
  )
}

const soFar = ({ world, today }: Reading, food: FoodId): string => {
  const fed = world.fed.get(food)
  return fed ? soFarWords(fed.doses, fed.amount, fedSince(world, food), today) : 'Nothing given yet'
}

type FoodKindsProps = {
  readonly foods: readonly FoodDescribed[]
  /** No longer bought. */
  readonly past: readonly FoodDescribed[]
}

export const FoodKinds = ({ foods, past }: FoodKindsProps) => {
  const reading = useReading()
  return (
    <section aria-label="The foods you have">
      {foods.map((food) => (
        <p key={food.food}>
          <a className="kind-link" href={`#/food/kind/${food.food}`}>
            {food.name}
          </a>
          <br />
          {soFar(reading, food.food)}; {costOf(reading, food)}.
        </p>
      ))}
      {past.map((food) => (
        <p key={food.food}>
          <a className="kind-link" href={`#/food/kind/${food.food}`}>
            {food.name}
          </a>
          <br />
          No longer bought. {soFar(reading, food.food)}.
        </p>
      ))}
    </section>
  )
}
