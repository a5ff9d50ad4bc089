/** The sheet everything is printed on: one page and the way between the rooms. */
import '../styles/frame.css'
import type { ReactNode } from 'react'

export const Frame = ({ rooms, children }: { readonly rooms: ReactNode; readonly children: ReactNode }) => (
  <div className="frame">
    <main className="frame-page">{children}</main>
    {rooms}
  </div>
)
