/** Everything under #/food, in one part of the app. */

import { lazy, Suspense } from 'react'
import { Route, Switch } from 'wouter'
import type { BottleId, FoodId, LotId, PlaceId } from '../../../core/index.ts'
import { Loading } from '../../parts/Loading.tsx'
import { loadPart } from '../../state/leave.ts'
import { BottleCard } from './BottleCard.tsx'
import { BottleNew } from './BottleNew.tsx'
import { Food } from './Food.tsx'
import { Freeze } from './Freeze.tsx'
import { KindForm } from './KindForm.tsx'
import { LotCard } from './LotCard.tsx'
import { LotNew } from './LotNew.tsx'
import { PlaceCard } from './PlaceCard.tsx'

// Paper is seldom wanted, and then at a desk.
const Paper = lazy(async () => ({ default: (await loadPart(() => import('./paper/rooms.tsx'))).PaperRoutes }))

const OnPaper = () => (
  <Suspense fallback={<Loading says="One moment …" />}>
    <Paper />
  </Suspense>
)

// A key each: one card gives way to the next without keeping what was said or typed about the first.
export const FoodRoutes = () => (
  <Switch>
    <Route path="/food/bottle/new" component={BottleNew} />
    <Route<{ id: BottleId }> path="/food/bottle/:id/freeze">{({ id }) => <Freeze key={id} id={id} />}</Route>
    <Route<{ id: BottleId }> path="/food/bottle/:id">{({ id }) => <BottleCard key={id} id={id} />}</Route>
    <Route path="/food/lot/new" component={LotNew} />
    <Route<{ id: LotId }> path="/food/lot/:id">{({ id }) => <LotCard key={id} id={id} />}</Route>
    <Route<{ id: PlaceId | 'new' }> path="/food/place/:id">{({ id }) => <PlaceCard key={id} id={id} />}</Route>
    <Route<{ id: FoodId }> path="/food/kind/:id">{({ id }) => <KindForm key={id} id={id} />}</Route>
    <Route path="/food/labels/*?" component={OnPaper} />
    <Route path="/food/paper" component={OnPaper} />
    <Route component={Food} />
  </Switch>
)
