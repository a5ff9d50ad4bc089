/** Asked once before an entry is crossed out: there is no way back but to note it again. */
import { useEffect, useRef, useState } from 'react'
import { type Entry, type Fact, type StrikeRefusal, strikeOut } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { useRequest } from '../../state/useRequest.ts'
import { undoTakesAlong } from '../../words/diary.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'
import { because, Why } from '../Why.tsx'

type CrossOutProps = { readonly entry: Entry<Fact>; readonly reading: Reading; readonly onClose: () => void }

export const CrossOut = ({ entry, reading, onClose }: CrossOutProps) => {
  const panel = useRef<HTMLDivElement>(null)
  const { busy, refusal, send } = useRequest<StrikeRefusal>()
  const [why, setWhy] = useState('')
  // The button that opened this is gone; its focus comes here rather than to nowhere.
  useEffect(() => panel.current?.focus(), [])
  const crossOut = async () => {
    const done = await send((world, { now }) => strikeOut(world, { target: entry.id, ...because(why) }, now))
    if (done) onClose()
  }
  const along = undoTakesAlong(entry.fact)
  return (
    <div className="diary-undo" ref={panel} tabIndex={-1}>
      <p>It stays readable, crossed out, and everything is reckoned again without it.{along && ` ${along}`}</p>
      <Why reasons={['mistake', 'didNotHappen', 'miscounted']} value={why} onChange={setWhy} />
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
      <Actions>
        <Button onAct={crossOut} waiting={busy}>
          Cross it out
        </Button>
        <Button kind="quiet" onAct={onClose}>
          Keep it
        </Button>
      </Actions>
    </div>
  )
}
