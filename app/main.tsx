/** Wires storage, store and React; nothing else. */
import './styles/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App.tsx'
import { Broken } from './screens/Broken.tsx'
import { start } from './state/store.ts'
import { watchForUpdates } from './state/updates.ts'

/** How long a blank page may wait for the book before it says that it is being opened. */
const patience = 400

const root = document.getElementById('root')
if (!root) throw new Error('The page has no root')
// Usually the book is open before a first frame could be drawn, and drawing one without it would only be in its way. If it
// cannot be opened, that has to be said on a page as well.
const waited = new Promise((resolve) => setTimeout(resolve, patience))
void Promise.race([start(), waited]).finally(() => {
  createRoot(root).render(
    <StrictMode>
      <Broken>
        <App />
      </Broken>
    </StrictMode>,
  )
  void watchForUpdates()
})
