/** Everything under #/water, in one part of the app. */
import { Route, Switch } from 'wouter'
import { PlanForm } from './PlanForm.tsx'
import { TankForm } from './TankForm.tsx'
import { Water } from './Water.tsx'

export const WaterRoutes = () => (
  <Switch>
    <Route path="/water/tank/:id" component={TankForm} />
    <Route path="/water/plan/:tank/:food?" component={PlanForm} />
    <Route component={Water} />
  </Switch>
)
