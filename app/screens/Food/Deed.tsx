/** Something to do in place: folded until wanted, one button, a reason that may be skipped. */
import { useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Chips } from '../../parts/Chips.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { type Reason, reasonOptions } from '../../words/reasons.ts'
import { Refused } from './Refused.tsx'
import { type FormAsk, useAct } from './useAct.ts'

/** As a request takes it: no reason is no field. */
export type Why = { readonly why?: string }
export const whyOf = (reason: string | null): Why => (reason ? { why: reason } : {})

type DeedProps = {
  readonly label: string
  readonly act: string
  /** Said when it is done. */
  readonly says: string
  readonly reasons?: readonly Reason[]
  readonly ask: (why: Why) => FormAsk
  readonly onDone: (says: string) => void
}

export const Deed = ({ label, act: actLabel, says, reasons = [], ask, onDone }: DeedProps) => {
  const act = useAct()
  const [reason, setReason] = useState<Reason | null>(null)
  const [times, setTimes] = useState(0)
  const doIt = async () => {
    if (!(await act.send(ask(whyOf(reason))))) return
    setReason(null)
    setTimes(times + 1)
    onDone(says)
  }
  return (
    <MoreExact key={times} label={label}>
      <div className="food-act">
        {reasons.length > 0 && (
          <Chips
            label="Why? It may be skipped."
            options={reasonOptions(...reasons)}
            value={reason}
            onChange={setReason}
          />
        )}
        <Refused act={act} />
        <Actions>
          <Button onAct={doIt} waiting={act.busy}>
            {actLabel}
          </Button>
        </Actions>
      </div>
    </MoreExact>
  )
}
