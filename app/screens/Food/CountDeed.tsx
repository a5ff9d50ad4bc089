/** Something to do in place with a number of portions. */
import { useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import type { Reason } from '../../words/reasons.ts'
import { type Because, because, Why } from '../Why.tsx'
import type { Done } from './LotActs.tsx'
import { Refused } from './Refused.tsx'
import { type FormAsk, trouble, useAct } from './useAct.ts'

type CountDeedProps = {
  readonly label: string
  readonly question: string
  readonly start: number
  readonly most: number
  /** Everything at once, as a choice of its own. */
  readonly all?: string
  readonly reasons: readonly Reason[]
  readonly act: (count: number) => string
  /** What it comes to, before it is saved and when it is. */
  readonly after: (count: number) => string
  readonly ask: (count: number, why: Because) => FormAsk
  readonly onDone: Done
}

export const CountDeed = (panel: CountDeedProps) => {
  const [times, setTimes] = useState(0)
  const onDone: Done = (...done) => {
    setTimes(times + 1)
    panel.onDone(...done)
  }
  return (
    <MoreExact key={times} label={panel.label}>
      <Panel {...panel} onDone={onDone} />
    </MoreExact>
  )
}

const Panel = ({ label, question, start, most, all, reasons, after, ask, onDone, ...says }: CountDeedProps) => {
  const act = useAct()
  const [typed, setTyped] = useState<number | null>()
  const [reason, setReason] = useState('')
  // Untouched, it goes along with what another phone has taken meanwhile.
  const count = typed === undefined ? start : typed
  const change = (typedNow: number | null) => {
    act.reset()
    setTyped(typedNow)
  }
  const doIt = async () => {
    if (count === null) await act.send(() => trouble('count', { why: 'howMany' }))
    else {
      const written = await act.send(ask(count, because(reason)))
      if (written) onDone(after(count), written)
    }
  }
  return (
    <div className="food-act">
      <CountField label={question} min={1} max={most} value={count} onChange={change} error={act.wrong('count')} />
      {all && most > 1 && count !== most && (
        <Actions>
          <Button kind="quiet" onAct={() => change(most)}>
            {all}
          </Button>
        </Actions>
      )}
      {count !== null && <p>{after(count)}</p>}
      {reasons.length > 0 && <Why reasons={reasons} value={reason} onChange={setReason} />}
      <Refused act={act} />
      <Actions>
        <Button onAct={doIt} waiting={act.busy}>
          {count === null ? label : says.act(count)}
        </Button>
      </Actions>
    </div>
  )
}
