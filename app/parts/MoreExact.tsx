/** What may be left alone: closed until someone wants it, and never in the way. */
import '../styles/choices.css'
import type { ReactNode } from 'react'

type MoreExactProps = { readonly label: string; readonly open?: boolean; readonly children: ReactNode }

export const MoreExact = ({ label, open, children }: MoreExactProps) => (
  <details className="more" open={open}>
    <summary>
      <svg className="more-mark" viewBox="0 0 10 10" aria-hidden="true">
        <path d="M3 1l4 4-4 4" />
      </svg>
      <span>{label}</span>
    </summary>
    <div className="more-body">{children}</div>
  </details>
)
