/** Some for a friend's tank: how many, and to whom if she says. */
import { useState } from 'react'
import { giveAway, portionsLeft } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { Field } from '../../parts/Field.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { givenWords, leavesWords } from '../../words/moving.ts'
import { portions } from '../../words/numbers.ts'
import type { LotDeedProps } from './LotActs.tsx'
import { SpareHere } from './order/ToSpare.tsx'
import { Refused } from './Refused.tsx'
import { placed, trouble, useAct } from './useAct.ts'

export const GiveAway = ({ lot, onDone }: LotDeedProps) => {
  const [times, setTimes] = useState(0)
  return (
    <MoreExact key={times} label="Give some away">
      <Panel
        lot={lot}
        onDone={(...done) => {
          setTimes(times + 1)
          onDone(...done)
        }}
      />
    </MoreExact>
  )
}

/** Longer is a letter, not a name. */
const longest = 200

const Panel = ({ lot, onDone }: LotDeedProps) => {
  const act = useAct()
  const {
    fields,
    change: type,
    clear,
  } = useDraft<{ count: number | null; to: string }>(`give/${lot.id}`, {
    count: 1,
    to: '',
  })
  const left = portionsLeft(lot)
  const count = fields.count === null ? null : Math.min(fields.count, left)
  const change = (changed: Partial<typeof fields>) => {
    act.reset()
    type(changed)
  }
  const doIt = async () => {
    const to = fields.to.trim()
    const given = await act.send((world, { now }) => {
      if (count === null) return trouble('count', { why: 'howMany' })
      if (to.length > longest) return trouble('to', { why: 'nameTooLong' })
      return placed(giveAway(world, { lot: lot.id, count, ...(to ? { to } : {}) }, now), 'count')
    })
    if (!given || count === null) return
    void clear()
    onDone(givenWords(count, left, to), given)
  }
  return (
    <div className="food-act">
      <SpareHere lot={lot.id} food={lot.made.food} />
      <CountField
        label="How many?"
        min={1}
        max={left}
        value={count}
        onChange={(typed) => change({ count: typed })}
        error={act.wrong('count')}
      />
      <Field
        label="To whom?"
        hint="It may be left empty."
        value={fields.to}
        onChange={(to) => change({ to })}
        error={act.wrong('to')}
      />
      {count !== null && <p>{leavesWords(left - count)}</p>}
      <Refused act={act} />
      <Actions>
        <Button onAct={() => void doIt()} waiting={act.busy}>
          {count === null ? 'Give them away' : `Give ${portions(count)} away`}
        </Button>
        <a href={`#/food/lot/${lot.id}/card`}>A small card for your friend</a>
      </Actions>
    </div>
  )
}
