/** A list ruled with hairlines: the diary's entries, the bags behind a door. */
import '../styles/telling.css'
import type { ReactNode } from 'react'

export const Lines = ({ children }: { readonly children: ReactNode }) => <ul className="lines">{children}</ul>

type LineProps = {
  /** A word or two above, small: a time, a place. */
  readonly lead?: string | undefined
  /** At the right hand: an amount, or something to do about this line. */
  readonly end?: ReactNode
  readonly children: ReactNode
  /** Over the whole width, under both. */
  readonly below?: ReactNode
}

export const Line = ({ lead, end, children, below }: LineProps) => (
  <li className="line">
    {lead && <span className="line-lead">{lead}</span>}
    <div>{children}</div>
    {end && <div>{end}</div>}
    {below && <div className="line-below">{below}</div>}
  </li>
)
