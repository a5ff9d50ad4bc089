/** A tank, but no plan yet: what is missing, and the one way on. */
import { tanksAt } from '../../../core/index.ts'
import { ButtonLink } from '../../parts/Actions.tsx'
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
          <ButtonLink href={`#/water/plan/${tank.tank}`}>Make a plan</ButtonLink>
        </Empty>
      ) : (
        <Empty says="A bottle in the fridge or portions in the freezer: either will do.">
          <ButtonLink href="#/food/bottle/new">Log a bottle</ButtonLink>
          <ButtonLink kind="quiet" href="#/food/lot/new">
            I already have frozen portions
          </ButtonLink>
        </Empty>
      )}
      <Shaking />
      <PleaseCheck />
    </Page>
  )
}
