/** The one act of a screen, large enough for a wet thumb in the dark. */
import '../styles/act.css'
import type { ReactNode } from 'react'
import { Tick } from './Tick.tsx'

type BigActProps = {
  readonly label: string
  readonly sub?: string | undefined
  readonly state: 'ready' | 'busy' | 'done'
  readonly onAct: () => void
}

// Never `disabled`: that drops the focus of whoever pressed it, and a screen reader falls silent.
export const BigAct = ({ label, sub, state, onAct }: BigActProps) => (
  <button
    type="button"
    className="act"
    data-state={state}
    aria-disabled={state !== 'ready'}
    aria-busy={state === 'busy'}
    onClick={() => {
      if (state === 'ready') onAct()
    }}
  >
    <span className="act-label">
      {state === 'done' && <Tick className="act-mark" />}
      {label}
    </span>
    {sub && <span className="act-sub">{sub}</span>}
  </button>
)

/** Where the act stands: the lower third, above the rooms, with its undo in the same place. */
export const Dock = ({ children }: { readonly children: ReactNode }) => <div className="dock">{children}</div>
