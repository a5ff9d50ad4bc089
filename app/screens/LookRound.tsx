/** The way into the made-up household: a quiet link with what it means beneath it. */
import '../styles/fields.css'
import { useState } from 'react'
import { LinkButton } from '../parts/Actions.tsx'
import { Notice } from '../parts/Notice.tsx'
import { lookRound } from '../state/lookRound.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { lookRoundHint, lookRoundText } from '../words/madeUp.ts'
import { refusalText } from '../words/refusals.ts'
import type { Reading } from './useReading.ts'

export const LookRound = ({ reading }: { readonly reading: Reading }) => {
  const [going, setGoing] = useState(false)
  const [refusal, setRefusal] = useState<StorageRefusal>()
  const go = async () => {
    if (going) return
    setGoing(true)
    const went = await lookRound().catch((error: unknown) => {
      // A fault of ours; she must not wait for a page that never comes.
      reportError(error)
      return { ok: false, refusal: { why: 'storageFailed', message: String(error) } } as const
    })
    if (went.ok) return
    setGoing(false)
    setRefusal(went.refusal)
  }
  return (
    <div>
      <LinkButton onAct={() => void go()}>{lookRoundText}</LinkButton>
      <p className="field-hint">{lookRoundHint}</p>
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
    </div>
  )
}
