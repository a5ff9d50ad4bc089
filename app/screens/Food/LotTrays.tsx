/** Her trays as they lie in the freezer now; the open one large, the rest small. */
import './food.css'
import { type Lot, traysNow } from '../../../core/index.ts'
import { Tray } from '../../parts/Tray.tsx'
import { portions, trays as traysWords } from '../../words/numbers.ts'
import { trayWords } from '../../words/tonight.ts'

/** A screenful; more of the same say nothing new. */
const most = 12

export const LotTrays = ({ lot }: { readonly lot: Lot }) => {
  const now = traysNow(lot)
  if (!now) return null
  const { open } = now
  const rest = now.trays.filter((tray) => tray !== open && tray.holds > 0)
  const more = rest.length - most
  return (
    <div className="food-act">
      {open && (
        <Tray
          rows={open.rows}
          columns={open.columns}
          filled={open.holds}
          next
          says={trayWords(open)}
          caption={`The open tray: ${portions(open.holds)} left.`}
        />
      )}
      {rest.length > 0 && (
        <div className="tray-shelf">
          {rest.slice(0, most).map((tray, place) => (
            <Tray
              // biome-ignore lint/suspicious/noArrayIndexKey: a tray is its place in the pile
              key={place}
              rows={tray.rows}
              columns={tray.columns}
              filled={tray.holds}
              size="compact"
              says={trayWords(tray)}
            />
          ))}
        </div>
      )}
      {more > 0 && <p className="shelf-facts">And {traysWords(more)} more.</p>}
    </div>
  )
}
