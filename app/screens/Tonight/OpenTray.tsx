/** The tray she reaches for, with the well whose turn it is ringed. */
import { nextWell, type Serving, traysNow, type World } from '../../../core/index.ts'
import { Tray } from '../../parts/Tray.tsx'
import { openTrayWords, trayWords } from '../../words/tonight.ts'

export const OpenTray = ({ serving, world }: { readonly serving: Serving; readonly world: World }) => {
  const lot = serving.taken.from === 'portions' ? world.lots.get(serving.taken.lot) : undefined
  const trays = lot && traysNow(lot)
  const tray = trays?.open ?? trays?.trays.findLast(({ holds }) => holds > 0)
  if (!tray) return null
  return (
    <Tray
      rows={tray.rows}
      columns={tray.columns}
      wells={tray.wells}
      cuts={tray.cuts}
      next={nextWell(tray)}
      size="compact"
      says={trayWords(tray)}
      caption={openTrayWords(tray, trays?.open !== undefined, trays?.trays.length ?? 1)}
    />
  )
}
