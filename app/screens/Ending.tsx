/** Something comes to an end, in place: folded until wanted, a reason that may be skipped, one button. */
import './ending.css'
import { useState } from 'react'
import { Actions, Button } from '../parts/Actions.tsx'
import { MoreExact } from '../parts/MoreExact.tsx'
import { Notice } from '../parts/Notice.tsx'
import type { Ask } from '../state/store.ts'
import { useRequest } from '../state/useRequest.ts'
import type { Reason } from '../words/reasons.ts'
import { type AnyRefusal, refusalText } from '../words/refusals.ts'
import { useReading } from './useReading.ts'
import { type Because, because, Why } from './Why.tsx'

type EndingProps = {
  readonly label: string
  /** What comes to an end, where several may. */
  readonly of?: string
  /** What it comes to, said before it is done. */
  readonly says: string
  readonly act: string
  readonly reasons: readonly Reason[]
  readonly ask: (why: Because) => Ask<AnyRefusal>
  readonly onDone: () => void
}

export const Ending = ({ label, of, says, act, reasons, ask, onDone }: EndingProps) => {
  const reading = useReading()
  const { busy, refusal, send } = useRequest<AnyRefusal>()
  const [reason, setReason] = useState('')
  const end = async () => {
    if (await send(ask(because(reason)))) onDone()
  }
  return (
    <MoreExact label={label} of={of}>
      <div className="ending">
        <p>{says}</p>
        <Why reasons={reasons} value={reason} onChange={setReason} />
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
