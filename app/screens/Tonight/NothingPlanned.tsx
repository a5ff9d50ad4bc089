/** A tank, but no plan yet: what is missing, and the one way on. */
import { tanksAt } from '../../../core/index.ts'
import { Empty } from '../../parts/Empty.tsx'
import { Page } from '../../parts/Page.tsx'
import { PleaseCheck } from '../PleaseCheck.tsx'
import { useReading } from '../useReading.ts'
import { Shaking } from './Shaking.tsx'

export const NothingPlanned = () => {
  const { world, now } = useReading()
  const [tank] = tanksAt(world, now)
  const fed = world.foods.size > 0
  return (
    <Page
      title="Tonight"
      answer={fed ? 'There is no plan yet, so nothing is due.' : 'There is no food on record yet, so nothing is due.'}
    >
      {fed && tank ? (
        <Empty says="A plan is a food, an amount and every how many nights.">
          <a className="button" data-kind="primary" href={`#/water/plan/${tank.tank}`}>
            Make a plan
          </a>
        </Empty>
      ) : (
        <Empty says="A bottle in the fridge or portions in the freezer: either will do.">
          <a className="button" data-kind="primary" href="#/food/bottle/new">
            Log a bottle
          </a>
          <a className="button" data-kind="quiet" href="#/food/lot/new">
            I already have frozen portions
          </a>
        </Empty>
      )}
      <Shaking />
      <PleaseCheck />
    </Page>
  )
}
