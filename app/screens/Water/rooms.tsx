/** Everything under #/water, in one part of the app. */
import { lazy } from 'react'
import { Route, Switch } from 'wouter'
import type { TankId } from '../../../core/index.ts'
import { loadPart } from '../../state/leave.ts'
import { PlanForm } from './PlanForm.tsx'
import { TankForm } from './TankForm.tsx'
import { Water } from './Water.tsx'

const Life = lazy(async () => ({ default: (await loadPart(() => import('../Life/rooms.tsx'))).LifeRoutes }))

export const WaterRoutes = () => (
  <Switch>
    <Route path="/water/tank/:id" component={TankForm} />
    <Route path="/water/plan/:tank/:food?" component={PlanForm} />
    <Route<{ tank: TankId }> path="/water/:tank/life/*?">{({ tank }) => <Life key={tank} tank={tank} />}</Route>
    <Route component={Water} />
  </Switch>
)
