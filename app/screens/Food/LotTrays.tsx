/** Her trays as they lie in the freezer now: the one in use large, a few of the rest small, each of them one touch away. */
import './food.css'
import { useState } from 'react'
import { type TrayNow, traysNow } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import { Tray } from '../../parts/Tray.tsx'
import { moreTraysWords } from '../../words/food.ts'
import { trayWords } from '../../words/tonight.ts'
import type { LotDeedProps } from './LotActs.tsx'
import { UsedTray } from './UsedTray.tsx'

/** More of the same say nothing new. */
const most = 4

export const LotTrays = ({ lot, onDone }: LotDeedProps) => {
  const [wanted, want] = useState<number>()
  const trays = traysNow(lot)
  const there = trays?.trays.filter(({ holds, tray }) => holds > 0 || tray === wanted) ?? []
  const used = there.find(({ tray }) => tray === wanted) ?? trays?.open ?? there.at(-1)
  if (!used) return null
  return (
    <>
      <UsedTray key={used.tray} lot={lot} tray={used} onDone={onDone} />
      <OtherTrays trays={there.filter((tray) => tray !== used)} onLook={want} />
    </>
  )
}

type OtherTraysProps = { readonly trays: readonly TrayNow[]; readonly onLook: (tray: number) => void }

const OtherTrays = ({ trays, onLook }: OtherTraysProps) => {
  if (trays.length === 0) return null
  // The last are next in turn.
  const shown = trays.slice(-most)
  const more = trays.slice(0, -most)
  return (
    <section className="food-act" aria-label="The other trays">
      <div className="tray-shelf">
        {shown.map((tray) => (
          <div key={tray.tray}>
            <Tray
              rows={tray.rows}
              columns={tray.columns}
              wells={tray.wells}
              cuts={tray.cuts}
              size="compact"
              says={trayWords(tray)}
            />
            <LinkButton onAct={() => onLook(tray.tray)}>Tray {tray.tray + 1}</LinkButton>
          </div>
        ))}
      </div>
      {more.length > 0 && <p className="shelf-facts">{moreTraysWords(more)}</p>}
    </section>
  )
}
