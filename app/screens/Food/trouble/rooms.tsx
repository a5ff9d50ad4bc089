/** What goes wrong: fetched when it does. */
import { Route, Switch } from 'wouter'
import type { BottleId, LotId, PlaceId, PlanId } from '../../../../core/index.ts'
import { DoorTrouble } from './DoorTrouble.tsx'
import { Smell } from './Smell.tsx'
import { TooMuch } from './TooMuch.tsx'
import { Unlabelled } from './Unlabelled.tsx'
import { Wrong } from './Wrong.tsx'

export const TroubleRoutes = () => (
  <Switch>
    <Route<{ id: PlaceId }> path="/food/place/:id/thaw">{({ id }) => <DoorTrouble key={id} id={id} />}</Route>
    <Route<{ id: BottleId }> path="/food/bottle/:id/smell">
      {({ id }) => <Smell key={id} thing={{ bottle: id }} />}
    </Route>
    <Route<{ id: LotId }> path="/food/lot/:id/smell">{({ id }) => <Smell key={id} thing={{ lot: id }} />}</Route>
    <Route path="/food/lot/unlabelled" component={Unlabelled} />
    <Route<{ plan?: PlanId }> path="/food/too-much/:plan?">{({ plan }) => <TooMuch key={plan} plan={plan} />}</Route>
    <Route component={Wrong} />
  </Switch>
)
