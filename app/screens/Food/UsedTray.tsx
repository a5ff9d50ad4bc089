/** The tray she is using, large: a touch on a well says that one is out, and another that it is in after all. */
import './food.css'
import { useState } from 'react'
import {
  countPortions,
  type Lot,
  nextWell,
  portionsLeft,
  type TrayNow,
  touchWell,
  traysNow,
} from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Tray } from '../../parts/Tray.tsx'
import { beyondWords, touchedWords, usedTrayWords } from '../../words/moving.ts'
import { portions } from '../../words/numbers.ts'
import { trayWords } from '../../words/tonight.ts'
import { CutTray } from './CutTray.tsx'
import type { LotDeedProps } from './LotActs.tsx'
import { Refused } from './Refused.tsx'
import { placed, useAct } from './useAct.ts'

const captionOf = (lot: Lot, { tray, holds }: TrayNow): string => {
  const trays = traysNow(lot)
  const inTurn = trays?.open ?? trays?.trays.findLast((other) => other.holds > 0)
  const turn = inTurn?.tray !== tray ? undefined : trays?.open ? 'open' : 'next'
  return usedTrayWords(tray, holds, turn, trays?.trays.length ?? 1)
}

type UsedTrayProps = LotDeedProps & { readonly tray: TrayNow }

export const UsedTray = ({ lot, tray, onDone }: UsedTrayProps) => {
  const act = useAct()
  // The world is a render away when a request is done: the well is remembered, and told of as the tray then stands.
  const [touched, setTouched] = useState<number>()
  const next = nextWell(tray)
  const touch = async (well: number) => {
    setTouched(undefined)
    const seen = await act.send((world, { now }) =>
      placed(touchWell(world, { lot: lot.id, tray: tray.tray, well }, now), ''),
    )
    if (seen) setTouched(well)
  }
  return (
    <section className="food-act" aria-label="The tray in use">
      <Tray
        rows={tray.rows}
        columns={tray.columns}
        wells={tray.wells}
        cuts={tray.cuts}
        next={next}
        says={trayWords(tray)}
        caption={captionOf(lot, tray)}
        onWell={(well) => void touch(well)}
      />
      <output className="said">{touched === undefined ? '' : touchedWords(touched, tray, next)}</output>
      <Refused act={act} />
      <BeyondBook lot={lot} onDone={onDone} />
      <CutTray key={tray.tray} lot={lot} tray={tray} onDone={onDone} />
    </section>
  )
}

const BeyondBook = ({ lot, onDone }: LotDeedProps) => {
  const act = useAct()
  const beyond = traysNow(lot)?.beyondBook ?? 0
  if (beyond === 0) return null
  const book = portionsLeft(lot)
  const counted = book - beyond
  const set = async () => {
    const saved = await act.send((world, { now }) => placed(countPortions(world, { lot: lot.id, counted }, now), ''))
    if (saved) onDone(`The count is ${portions(counted)} now.`)
  }
  return (
    <Notice>
      <p>{beyondWords(counted, book)}</p>
      <Refused act={act} />
      <Actions>
        <Button kind="quiet" onAct={() => void set()} waiting={act.busy}>
          Set the count to {counted}
        </Button>
      </Actions>
    </Notice>
  )
}
