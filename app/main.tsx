/** Wires storage, store and React; nothing else. The book comes first: see open.ts. */
import { opened } from './open.ts'
import './styles/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App.tsx'
import { Broken } from './screens/Broken.tsx'
import { whenIdle } from './state/idle.ts'
import { loadPart } from './state/leave.ts'
import { clearLeftBehind } from './state/lookRound.ts'
import { drawn } from './state/store.ts'
import { watchForUpdates } from './state/updates.ts'

const root = document.getElementById('root')
if (!root) throw new Error('The page has no root')
void opened.then(() => {
  createRoot(root).render(
    <StrictMode>
      <Broken>
        <App />
      </Broken>
    </StrictMode>,
  )
  void drawn.then(watchForUpdates)
  clearLeftBehind()
  // Where this part cannot be had, Tonight works without it.
  whenIdle(
    () =>
      void loadPart(() => import('./state/nudging.ts'))
        .then((nudging) => nudging.watchNudges())
        .catch(() => {}),
  )
})
