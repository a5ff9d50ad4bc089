/** Everything under #/seeding, in one part of the app. */
import { Route, Switch, useParams } from 'wouter'
import type { TankId } from '../../../core/index.ts'
import { tankKept } from '../../../core/index.ts'
import { Page } from '../../parts/Page.tsx'
import { useReading } from '../useReading.ts'
import { Arrival } from './Arrival.tsx'
import { Before } from './Before.tsx'
import { Equipment } from './Equipment.tsx'
import { type OfTank, ofTank } from './ofTank.ts'
import { ChangePlan, PlanNight } from './PlanNight.tsx'
import { Poured } from './Poured.tsx'
import { Run } from './Run.tsx'

export const SeedingRoutes = () => (
  <Switch>
    <Route path="/seeding/run/:run" component={Run} />
    <Route path="/seeding/:tank/equipment">
      <WithTank screen={Equipment} />
    </Route>
    <Route path="/seeding/:tank/arrival">
      <WithTank screen={Arrival} />
    </Route>
    {/* Ends as the night's own address does: in the dark it is as dark. */}
    <Route path="/seeding/:tank/plan/run/:run">
      <WithTank screen={ChangePlan} />
    </Route>
    <Route path="/seeding/:tank/plan">
      <WithTank screen={PlanNight} />
    </Route>
    <Route path="/seeding/:tank/poured">
      <WithTank screen={Poured} />
    </Route>
    <Route path="/seeding/:tank">
      <WithTank screen={Before} />
    </Route>
    <Route component={Gone} />
  </Switch>
)

const WithTank = ({ screen: Screen }: { readonly screen: (of: OfTank) => React.ReactNode }) => {
  const { tank: id } = useParams<{ tank: TankId }>()
  const reading = useReading()
  const tank = tankKept(reading.world, id, reading.now)
  return tank ? <Screen key={id} tank={tank} reading={ofTank(reading, tank)} /> : <Gone />
}

const Gone = () => (
  <Page title="Live bottles" answer="This tank is not kept here.">
    <p>
      <a href="#/water">All tanks</a>
    </p>
  </Page>
)
