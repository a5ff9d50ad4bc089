/** Everything under #/phone, in one part of the app. */
import { Route, Switch } from 'wouter'
import { Reminders } from '../Reminders/Reminders.tsx'
import { ThisPhone } from './ThisPhone.tsx'

export const PhoneRoutes = () => (
  <Switch>
    <Route path="/phone/reminders" component={Reminders} />
    <Route component={ThisPhone} />
  </Switch>
)
