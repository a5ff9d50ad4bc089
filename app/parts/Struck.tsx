/** Crossed out and still readable, as a correction in ink is. Screen readers pass over the line, so it is said. */
import '../styles/telling.css'
import type { ReactNode } from 'react'

export const Struck = ({ says, children }: { readonly says: string; readonly children: ReactNode }) => (
  <s className="struck">
    <span className="for-ears">{says} </span>
    {children}
  </s>
)
