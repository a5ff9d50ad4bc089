/** What it is worth: a part of its own, fetched when it is wanted. */
import { Route, Switch } from 'wouter'
import type { BottleId } from '../../../../core/index.ts'
import { Offers } from './Offers.tsx'
import { Worth } from './Worth.tsx'

export const WorthRoutes = () => (
  <Switch>
    <Route<{ id: BottleId }> path="/food/bottle/:id/worth">{({ id }) => <Worth key={id} id={id} />}</Route>
    <Route path="/food/offers" component={Offers} />
  </Switch>
)
