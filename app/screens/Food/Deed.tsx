/** Something to do in place: folded until wanted, one button, a reason that may be skipped. */
import { useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import type { Reason } from '../../words/reasons.ts'
import { type Because, because, Why } from '../Why.tsx'
import { Refused } from './Refused.tsx'
import { type FormAsk, useAct } from './useAct.ts'

type DeedProps = {
  readonly label: string
  readonly act: string
  /** Said when it is done. */
  readonly says: string
  readonly reasons?: readonly Reason[]
  readonly ask: (why: Because) => FormAsk
  readonly onDone: (says: string) => void
}

export const Deed = ({ label, act: actLabel, says, reasons = [], ask, onDone }: DeedProps) => {
  const act = useAct()
  const [reason, setReason] = useState('')
  const [times, setTimes] = useState(0)
  const doIt = async () => {
    if (!(await act.send(ask(because(reason))))) return
    setReason('')
    setTimes(times + 1)
    onDone(says)
  }
  return (
    <MoreExact key={times} label={label}>
      <div className="food-act">
        {reasons.length > 0 && <Why reasons={reasons} value={reason} onChange={setReason} />}
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
