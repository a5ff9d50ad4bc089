/** Everything under #/food, in one part of the app. */

import { Route, Switch } from 'wouter'
import type { BottleId, FoodId, LotId, PlaceId } from '../../../core/index.ts'
import { BottleCard } from './BottleCard.tsx'
import { BottleNew } from './BottleNew.tsx'
import { Food } from './Food.tsx'
import { Freeze } from './Freeze.tsx'
import { KindForm } from './KindForm.tsx'
import { LotCard } from './LotCard.tsx'
import { LotNew } from './LotNew.tsx'
import { FriendCard } from './order/FriendCard.tsx'
import { OrderPage } from './order/OrderPage.tsx'
import { PlaceCard } from './PlaceCard.tsx'

// A key each: one card gives way to the next without keeping what was said or typed about the first.
export const FoodRoutes = () => (
  <Switch>
    <Route path="/food/bottle/new" component={BottleNew} />
    <Route<{ id: BottleId }> path="/food/bottle/:id/freeze">{({ id }) => <Freeze key={id} id={id} />}</Route>
    <Route<{ id: BottleId }> path="/food/bottle/:id">{({ id }) => <BottleCard key={id} id={id} />}</Route>
    <Route path="/food/order" component={OrderPage} />
    <Route path="/food/lot/new" component={LotNew} />
    <Route<{ id: LotId }> path="/food/lot/:id/card">{({ id }) => <FriendCard key={id} id={id} />}</Route>
    <Route<{ id: LotId }> path="/food/lot/:id">{({ id }) => <LotCard key={id} id={id} />}</Route>
    <Route<{ id: PlaceId | 'new' }> path="/food/place/:id">{({ id }) => <PlaceCard key={id} id={id} />}</Route>
    <Route<{ id: FoodId }> path="/food/kind/:id">{({ id }) => <KindForm key={id} id={id} />}</Route>
    <Route component={Food} />
  </Switch>
)
