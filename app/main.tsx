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
// Usually the book is open before a first frame could be drawn, and drawing one without it would only be in its way.
const drawn = new Promise((resolve) => setTimeout(resolve, patience))
void Promise.race([start(), drawn]).then(() => {
  createRoot(root).render(
    <StrictMode>
      <Broken>
        <App />
      </Broken>
    </StrictMode>,
  )
  void watchForUpdates()
})
