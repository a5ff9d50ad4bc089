/** Wires storage, store and React; nothing else. */
import './styles/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App.tsx'
import { Broken } from './screens/Broken.tsx'
import { start } from './state/store.ts'
import { watchForUpdates } from './state/updates.ts'

const root = document.getElementById('root')
if (!root) throw new Error('The page has no root')
void start()
createRoot(root).render(
  <StrictMode>
    <Broken>
      <App />
    </Broken>
  </StrictMode>,
)
void watchForUpdates()
