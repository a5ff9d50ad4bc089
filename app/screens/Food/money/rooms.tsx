/** Money and the end of a batch: a part of its own, fetched when it is wanted. */
import './money.css'
import { useState } from 'react'
import { Route, Switch } from 'wouter'
import type { BottleId, Entry, Fact, PurchaseId } from '../../../../core/index.ts'
import { Closing } from './Closing.tsx'
import { Finished } from './Finished.tsx'
import { PurchaseCard } from './PurchaseCard.tsx'
import { PurchaseNew } from './PurchaseNew.tsx'
import { Year } from './Year.tsx'

export const MoneyRoutes = () => {
  /** What was just written down: a parcel's own page says so, and takes it back. */
  const [written, setWritten] = useState<readonly Entry<Fact>[]>([])
  return (
    <Switch>
      <Route<{ bottle?: BottleId }> path="/food/purchase/new/:bottle?">
        {({ bottle }) => <PurchaseNew key={bottle} bottle={bottle} onSaved={setWritten} />}
      </Route>
      <Route<{ id: PurchaseId }> path="/food/purchase/:id">
        {({ id }) => <PurchaseCard key={id} id={id} written={written} onWritten={setWritten} />}
      </Route>
      <Route<{ id: BottleId }> path="/food/bottle/:id/closing">{({ id }) => <Closing key={id} id={id} />}</Route>
      <Route path="/food/finished" component={Finished} />
      <Route path="/food/year" component={Year} />
    </Switch>
  )
}
