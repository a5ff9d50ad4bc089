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
import { FriendCard } from './order/FriendCard.tsx'
import { OrderPage } from './order/OrderPage.tsx'
import { PlaceCard } from './PlaceCard.tsx'

const Worth = lazy(async () => ({ default: (await loadPart(() => import('./worth/rooms.tsx'))).WorthRoutes }))
const Money = lazy(async () => ({ default: (await loadPart(() => import('./money/rooms.tsx'))).MoneyRoutes }))
const HowLong = lazy(async () => ({ default: (await loadPart(() => import('./lasts/HowLong.tsx'))).HowLong }))
// What goes wrong goes wrong seldom.
const Trouble = lazy(async () => ({
  default: (await loadPart(() => import('./trouble/rooms.tsx'))).TroubleRoutes,
}))
const inTrouble = [
  '/food/wrong',
  '/food/too-much/:plan?',
  '/food/place/:id/thaw',
  '/food/bottle/:id/smell',
  '/food/lot/:id/smell',
  '/food/lot/unlabelled',
]
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
    {inTrouble.map((path) => (
      <Route key={path} path={path}>
        <Suspense fallback={<Loading says="One moment …" />}>
          <Trouble />
        </Suspense>
      </Route>
    ))}
    <Route path="/food/bottle/new" component={BottleNew} />
    <Route<{ id: BottleId }> path="/food/bottle/:id/freeze">{({ id }) => <Freeze key={id} id={id} />}</Route>
    <Route path="/food/bottle/:id/worth" component={Worth} />
    <Route path="/food/offers" component={Worth} />
    <Route path="/food/bottle/:id/closing" component={Money} />
    <Route<{ id: BottleId }> path="/food/bottle/:id">{({ id }) => <BottleCard key={id} id={id} />}</Route>
    <Route path="/food/order" component={OrderPage} />
    <Route path="/food/lot/new" component={LotNew} />
    <Route<{ id: LotId }> path="/food/lot/:id/card">{({ id }) => <FriendCard key={id} id={id} />}</Route>
    <Route<{ id: LotId }> path="/food/lot/:id">{({ id }) => <LotCard key={id} id={id} />}</Route>
    <Route<{ id: PlaceId | 'new' }> path="/food/place/:id">{({ id }) => <PlaceCard key={id} id={id} />}</Route>
    <Route<{ id: FoodId }> path="/food/kind/:id">{({ id }) => <KindForm key={id} id={id} />}</Route>
    <Route path="/food/purchase/*" component={Money} />
    <Route path="/food/finished" component={Money} />
    <Route path="/food/year" component={Money} />
    <Route<{ id?: FoodId; month?: string }> path="/food/lasts/:id?/:month?">
      {({ id, month }) => <HowLong id={id} month={month} />}
    </Route>
    <Route path="/food/labels/*?" component={OnPaper} />
    <Route path="/food/paper" component={OnPaper} />
    <Route component={Food} />
  </Switch>
)
