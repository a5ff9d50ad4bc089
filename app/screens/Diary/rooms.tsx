/** Everything under #/diary, in one part of the app. */
import { Route, Switch } from 'wouter'
import { Diary } from './Diary.tsx'
import { NotePage } from './NotePage.tsx'

export const DiaryRoutes = () => (
  <Switch>
    <Route<{ day?: string }> path="/diary/note/:day?">
      {({ day }) => <NotePage key={day} {...(day ? { day } : {})} />}
    </Route>
    <Route component={Diary} />
  </Switch>
)
