/** A count by hand: full trays and the wells left in the open one, or one number for a loose bag. */
import { useState } from 'react'
import { countPortions, countTrays, type Lot, portionsLeft, traysNow } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Chips } from '../../parts/Chips.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { gapWords } from '../../words/food.ts'
import { type Reason, reasonOptions } from '../../words/reasons.ts'
import { whyOf } from './Deed.tsx'
import type { LotDeedProps } from './LotActs.tsx'
import { Refused } from './Refused.tsx'
import { placed, useAct } from './useAct.ts'

export const CountAgain = ({ lot, onDone }: LotDeedProps) => {
  const [times, setTimes] = useState(0)
  return (
    <MoreExact key={times} label="Count again">
      <CountPanel
        lot={lot}
        onDone={(says) => {
          setTimes(times + 1)
          onDone(says)
        }}
      />
    </MoreExact>
  )
}

/** How the book thinks the trays stand: what she counts from. */
const byTheBook = (lot: Lot) => {
  const trays = traysNow(lot)
  const [first] = trays?.trays ?? []
  if (!trays || !first) return undefined
  return { full: trays.full, open: trays.open?.holds ?? 0, wells: first.rows * first.columns }
}

const CountPanel = ({ lot, onDone }: LotDeedProps) => {
  const act = useAct()
  const book = byTheBook(lot)
  const left = portionsLeft(lot)
  const [typedFull, setFull] = useState<number | null>()
  const [typedOpen, setOpen] = useState<number | null>()
  // Untouched, they go along with what another phone has taken meanwhile.
  const full = typedFull === undefined ? (book?.full ?? 0) : typedFull
  const open = typedOpen === undefined ? (book?.open ?? left) : typedOpen
  const [reason, setReason] = useState<Reason | null>(null)
  const counted = book ? countTrays(full ?? 0, book.wells, open ?? 0) : (open ?? 0)
  const save = async () => {
    const saved = await act.send((world, { now }) =>
      placed(countPortions(world, { lot: lot.id, counted, ...whyOf(reason) }, now), 'count'),
    )
    if (saved) onDone(gapWords(counted, left))
  }
  return (
    <div className="food-act">
      {book && (
        <CountField
          label={`Full trays of ${book.wells}`}
          fewer="One tray fewer"
          more="One tray more"
          value={full}
          onChange={setFull}
        />
      )}
      <CountField
        label={book ? 'Left in the open tray' : 'How many are there?'}
        fewer="One fewer"
        more="One more"
        value={open}
        onChange={setOpen}
        error={act.wrong('count')}
      />
      <p>{gapWords(counted, left)}</p>
      {counted !== left && (
        <Chips
          label="Why? It may be skipped."
          options={reasonOptions('miscounted', 'broken', 'notNoted', 'givenAway')}
          value={reason}
          onChange={setReason}
        />
      )}
      <Refused act={act} />
      <Actions>
        <Button onAct={save} waiting={act.busy}>
          Save the count
        </Button>
      </Actions>
    </div>
  )
}
