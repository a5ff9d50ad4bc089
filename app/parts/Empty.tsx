/** Nothing here yet, and the one way on. */
import '../styles/page.css'
import type { ReactNode } from 'react'

type EmptyProps = { readonly says: string; readonly children?: ReactNode }

export const Empty = ({ says, children }: EmptyProps) => (
  <div className="empty">
    <svg className="empty-drawing" viewBox="0 0 120 34" aria-hidden="true" fill="none" stroke="currentColor">
      <path d="M2 24q9.7-7 19.3 0t19.3 0 19.3 0 19.3 0 19.3 0 19.3 0" />
      <path d="M22 31q6-4 12 0t12 0 12 0 12 0 12 0 12 0" strokeWidth=".7" />
      <circle cx="92" cy="8" r="4.5" />
    </svg>
    <p>{says}</p>
    {children}
  </div>
)
