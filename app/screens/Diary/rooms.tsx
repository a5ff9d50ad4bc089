/** Everything under #/diary, in one part of the app. */
import { useState } from 'react'
import { Route, Switch } from 'wouter'
import { Diary } from './Diary.tsx'
import { NotePage } from './NotePage.tsx'

export const DiaryRoutes = () => {
  /** What was just written down: said on the way back, until the room is left or another is begun. */
  const [noted, setNoted] = useState<string>()
  return (
    <Switch>
      <Route<{ day?: string }> path="/diary/note/:day?">
        {({ day }) => <NotePage key={day} onNoted={setNoted} {...(day ? { day } : {})} />}
      </Route>
      <Route>
        <Diary noted={noted} />
      </Route>
    </Switch>
  )
}
