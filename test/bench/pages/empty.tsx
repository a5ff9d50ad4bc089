/** The least a React page can be: one button. What the app takes longer than this is the app's own doing. */
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'

const root = document.getElementById('root')
if (!root) throw new Error('The page has no root')
createRoot(root).render(
  <StrictMode>
    <button type="button">Dosed</button>
  </StrictMode>,
)
