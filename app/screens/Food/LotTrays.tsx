/** Her trays as they lie in the freezer now: the open one large, a few of the rest small. */
import './food.css'
import { type Lot, nextWell, traysNow } from '../../../core/index.ts'
import { Tray } from '../../parts/Tray.tsx'
import { moreTraysWords } from '../../words/food.ts'
import { portions } from '../../words/numbers.ts'
import { trayWords } from '../../words/tonight.ts'

/** More of the same say nothing new. */
const most = 4

export const OpenTray = ({ lot }: { readonly lot: Lot }) => {
  const open = traysNow(lot)?.open
  return (
    open && (
      <Tray
        rows={open.rows}
        columns={open.columns}
        wells={open.wells}
        cuts={open.cuts}
        next={nextWell(open)}
        says={trayWords(open)}
        caption={`The open tray: ${portions(open.holds)} left.`}
      />
    )
  )
}

export const FullTrays = ({ lot }: { readonly lot: Lot }) => {
  const now = traysNow(lot)
  const rest = now?.trays.filter((tray) => tray !== now.open && tray.holds > 0) ?? []
  if (rest.length === 0) return null
  const more = rest.slice(most)
  return (
    <section className="food-act" aria-label={now?.open ? 'The other trays' : 'The trays'}>
      <div className="tray-shelf">
        {rest.slice(0, most).map((tray, place) => (
          <Tray
            // biome-ignore lint/suspicious/noArrayIndexKey: a tray is its place in the pile
            key={place}
            rows={tray.rows}
            columns={tray.columns}
            wells={tray.wells}
            cuts={tray.cuts}
            size="compact"
            says={trayWords(tray)}
          />
        ))}
      </div>
      {more.length > 0 && <p className="shelf-facts">{moreTraysWords(more)}</p>}
    </section>
  )
}
