/** On the page to show: how she feeds, in her own numbers, and what it has cost. */
import { type Day, foodAt, foodCostSince, plansAt, type TankDescribed } from '../../../core/index.ts'
import { costSince, fedWords, lampHourWords } from '../../words/lifePage.ts'
import { planWords } from '../../words/plan.ts'
import { useAccounts } from '../Food/useAccounts.ts'
import type { Reading } from '../useReading.ts'

type PageFoodProps = {
  readonly tank: TankDescribed
  readonly reading: Reading
  readonly since: Day
  readonly feedings: readonly Day[]
}

export const PageFood = ({ tank, reading, since, feedings }: PageFoodProps) => {
  const { world, now, zone } = reading
  const accounts = useAccounts()
  const plans = plansAt(world, now).filter((plan) => plan.tank === tank.tank)
  const money = costSince(foodCostSince(world, accounts.values(), tank.tank, since, { now, zone }))
  return (
    <>
      {feedings.length > 0 && (
        <>
          <h3>Fed</h3>
          <p>{fedWords(feedings, since)}</p>
          {money && <p>{money}</p>}
        </>
      )}
      {plans.length > 0 && (
        <>
          <h3>How it is done here</h3>
          {plans.map((plan) => {
            const food = foodAt(world, plan.food, now)
            return food && <p key={plan.plan}>{planWords(plan, food)}.</p>
          })}
          <p>{lampHourWords(world, tank, reading)}</p>
        </>
      )}
    </>
  )
}
