/** Asked once before an entry is crossed out: there is no way back but to note it again. */
import { useEffect, useRef, useState } from 'react'
import { type Entry, type Fact, type StrikeRefusal, strikeOut } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Chips } from '../../parts/Chips.tsx'
import { Field } from '../../parts/Field.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { useRequest } from '../../state/useRequest.ts'
import { undoTakesAlong } from '../../words/diary.ts'
import { reasonOptions } from '../../words/reasons.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'

const reasons = reasonOptions('mistake', 'didNotHappen', 'miscounted')

type CrossOutProps = { readonly entry: Entry<Fact>; readonly reading: Reading; readonly onClose: () => void }

export const CrossOut = ({ entry, reading, onClose }: CrossOutProps) => {
  const panel = useRef<HTMLDivElement>(null)
  const { busy, refusal, send } = useRequest<StrikeRefusal>()
  const [chosen, setChosen] = useState<(typeof reasons)[number]['value'] | null>(null)
  const [words, setWords] = useState('')
  // The button that opened this is gone; its focus comes here rather than to nowhere.
  useEffect(() => panel.current?.focus(), [])
  const crossOut = async () => {
    const why = words.trim() || chosen
    const done = await send((world, { now }) => strikeOut(world, { target: entry.id, ...(why ? { why } : {}) }, now))
    if (done) onClose()
  }
  const along = undoTakesAlong(entry.fact)
  return (
    <div className="diary-undo" ref={panel} tabIndex={-1}>
      <p>It stays readable, crossed out, and everything is reckoned again without it.{along && ` ${along}`}</p>
      <Chips label="Why, if you care to say" options={reasons} value={chosen} onChange={setChosen} />
      <Field label="Or in your own words" value={words} onChange={setWords} />
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
