/** Snipped to size, or cut in pieces: between which columns. */
import { cutTray, type TrayNow } from '../../../core/index.ts'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { cutWords } from '../../words/moving.ts'
import type { LotDeedProps } from './LotActs.tsx'
import { Refused } from './Refused.tsx'
import { placed, useAct } from './useAct.ts'

export const CutTray = ({ lot, tray }: LotDeedProps & { readonly tray: TrayNow }) => {
  const act = useAct()
  if (tray.columns < 2) return null
  const cut = async (column: number) => {
    await act.send((world, { now }) => {
      const after = world.lots.get(lot.id)?.traysSeen.get(tray.tray)?.cuts ?? []
      const changed = after.includes(column) ? after.filter((each) => each !== column) : [...after, column]
      return placed(cutTray(world, { lot: lot.id, tray: tray.tray, after: changed }, now), '')
    })
  }
  return (
    <MoreExact label="Cut this tray">
      <div className="food-act">
        <fieldset className="chips">
          <legend className="choice-legend">Between which columns? A second touch joins them again.</legend>
          <div className="chips-row">
            {Array.from({ length: tray.columns - 1 }, (_, before) => before + 1).map((column) => (
              <button
                type="button"
                className="chip"
                key={column}
                aria-label={`${column} | ${column + 1}: cut after column ${column}`}
                aria-pressed={tray.cuts.includes(column)}
                onClick={() => void cut(column)}
              >
                {column} | {column + 1}
              </button>
            ))}
          </div>
        </fieldset>
        <output>{cutWords(tray.cuts)}</output>
        <Refused act={act} />
      </div>
    </MoreExact>
  )
}
