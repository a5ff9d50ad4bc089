/** A count by hand: full trays and the wells left in the open one, or one number for a loose bag. */
import { useState } from 'react'
import { countPortions, countTrays, type Lot, portionsLeft, traysNow } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { gapWords } from '../../words/food.ts'
import { because, Why } from '../Why.tsx'
import type { LotDeedProps } from './LotActs.tsx'
import { Refused } from './Refused.tsx'
import { mostPortions } from './trays.ts'
import { placed, trouble, useAct } from './useAct.ts'

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

/** More than any freezer holds beside people’s food. */
const mostTrays = 999

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
  const [reason, setReason] = useState('')
  const counted = full === null || open === null ? undefined : book ? countTrays(full, book.wells, open) : open
  const change = (set: (count: number | null) => void) => (count: number | null) => {
    act.reset()
    set(count)
  }
  const save = async () => {
    if (counted === undefined) return act.send(() => trouble(full === null ? 'full' : 'count', { why: 'howMany' }))
    const saved = await act.send((world, { now }) =>
      placed(countPortions(world, { lot: lot.id, counted, ...because(reason) }, now), 'count'),
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
          max={Math.max(mostTrays, book.full)}
          value={full}
          onChange={change(setFull)}
          error={act.wrong('full')}
        />
      )}
      <CountField
        label={book ? 'Left in the open tray' : 'How many are there?'}
        max={book ? Math.max(book.wells, book.open) : Math.max(mostPortions, left)}
        value={open}
        onChange={change(setOpen)}
        error={act.wrong('count')}
      />
      {counted !== undefined && <p>{gapWords(counted, left)}</p>}
      {counted !== undefined && counted !== left && (
        <Why reasons={['miscounted', 'broken', 'notNoted', 'givenAway']} value={reason} onChange={setReason} />
      )}
      <Refused act={act} />
      <Actions>
        <Button onAct={() => void save()} waiting={act.busy}>
          Save the count
        </Button>
      </Actions>
    </div>
  )
}
