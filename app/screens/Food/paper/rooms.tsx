/** What is put on paper, in one part of the app. */
import { Route, Switch } from 'wouter'
import type { LotId } from '../../../../core/index.ts'
import { LabelSheet } from './LabelSheet.tsx'
import { MonthSheet } from './MonthSheet.tsx'

export const PaperRoutes = () => (
  <Switch>
    <Route<{ id: LotId }> path="/food/labels/:id">{({ id }) => <LabelSheet key={id} only={id} />}</Route>
    <Route path="/food/labels">
      <LabelSheet />
    </Route>
    <Route component={MonthSheet} />
  </Switch>
)
