/** Something comes to an end, in place: folded until wanted, a reason that may be skipped, one button. */
import './ending.css'
import { useState } from 'react'
import { Actions, Button } from '../parts/Actions.tsx'
import { Chips } from '../parts/Chips.tsx'
import { MoreExact } from '../parts/MoreExact.tsx'
import { Notice } from '../parts/Notice.tsx'
import type { Ask } from '../state/store.ts'
import { useRequest } from '../state/useRequest.ts'
import { type Reason, reasonOptions } from '../words/reasons.ts'
import { type AnyRefusal, refusalText } from '../words/refusals.ts'
import { useReading } from './useReading.ts'

type EndingProps = {
  readonly label: string
  /** What it comes to, said before it is done. */
  readonly says: string
  readonly act: string
  readonly reasons: readonly Reason[]
  readonly ask: (why: { readonly why?: string }) => Ask<AnyRefusal>
  readonly onDone: () => void
}

export const Ending = ({ label, says, act, reasons, ask, onDone }: EndingProps) => {
  const reading = useReading()
  const { busy, refusal, send } = useRequest<AnyRefusal>()
  const [reason, setReason] = useState<Reason | null>(null)
  const end = async () => {
    if (await send(ask(reason ? { why: reason } : {}))) onDone()
  }
  return (
    <MoreExact label={label}>
      <div className="ending">
        <p>{says}</p>
        <Chips
          label="Why? It may be skipped."
          options={reasonOptions(...reasons)}
          value={reason}
          onChange={setReason}
        />
        {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
        <Actions>
          <Button onAct={() => void end()} waiting={busy}>
            {act}
          </Button>
        </Actions>
      </div>
    </MoreExact>
  )
}
