/** Each food there is: what it has done so far, what a dose costs, and the way to its figures. */
import {
  type Account,
  type BottleId,
  doseCost,
  doseToFreeze,
  type FoodDescribed,
  type FoodId,
  fedSince,
} from '../../../core/index.ts'
import { costWords, soFarWords } from '../../words/food.ts'
import { type Reading, useReading } from '../useReading.ts'
import { useAccounts } from './useAccounts.ts'

type Accounts = ReadonlyMap<BottleId, Account>

/** Of the last bottle: it is what a dose costs now. */
const costOf = ({ world, now, today }: Reading, accounts: Accounts, food: FoodDescribed): string => {
  const last = [...accounts.values()].findLast(({ bottle }) => bottle.recorded.food === food.food)
  const { dose } = doseToFreeze(world, food.food, now)
  return costWords(last ? doseCost(world, last, dose, { now, today }) : 'notKnown')
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
  const accounts = useAccounts()
  return (
    <section aria-label="The foods you have">
      {foods.map((food) => (
        <p key={food.food}>
          <a className="kind-link" href={`#/food/kind/${food.food}`}>
            {food.name}
          </a>
          <br />
          {soFar(reading, food.food)}; {costOf(reading, accounts, food)}.
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
