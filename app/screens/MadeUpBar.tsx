/** Says on every page that the data is made up, and is the way out. It stays in sight where the screen is tall enough. */
import './madeUpBar.css'
import { useState } from 'react'
import { LinkButton } from '../parts/Actions.tsx'
import { leaveMadeUp } from '../state/lookRound.ts'
import { leaveMadeUpText, madeUpBarText } from '../words/madeUp.ts'

export const MadeUpBar = () => {
  const [leaving, setLeaving] = useState(false)
  const leave = () => {
    if (leaving) return
    setLeaving(true)
    void leaveMadeUp()
  }
  return (
    <aside className="madeup-bar" aria-label="Made-up data">
      <p>{madeUpBarText}</p>
      <LinkButton onAct={leave}>{leaveMadeUpText}</LinkButton>
    </aside>
  )
}
