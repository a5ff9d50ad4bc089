/**
 * The wells of a tray as keys, laid over its drawing. The whole tray is one stop for the Tab key and the arrows go from well
 * to well: ninety-six stops would stand in everybody's way.
 */
import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react'
import type { Shape } from './trayDrawing.ts'

type TrayWellsProps = {
  readonly shape: Shape
  readonly wells: readonly boolean[]
  readonly next: number | undefined
  readonly says: string
  readonly onWell: (well: number) => void
  readonly children: ReactNode
}

export const TrayWells = ({ shape: { rows, columns, cuts }, wells, next, says, onWell, children }: TrayWellsProps) => {
  const table = useRef<HTMLFieldSetElement>(null)
  const [reached, setReached] = useState<number>()
  const stop = Math.min(reached ?? next ?? 0, rows * columns - 1)
  const walk = (event: KeyboardEvent, well: number) => {
    const to = arrowTo(event.key, well, rows, columns)
    if (to === undefined) return
    event.preventDefault()
    table.current?.querySelectorAll('button')[to]?.focus()
  }
  return (
    <div className="tray-bench">
      <fieldset className="tray-keys" aria-label={says} ref={table}>
        {children}
        {Array.from({ length: rows }, (_, row) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the tray
          <div className="tray-row" key={row}>
            {Array.from({ length: columns }, (_, column) => {
              const well = row * columns + column
              return (
                <button
                  type="button"
                  className="tray-key"
                  key={well}
                  data-cut={cuts.includes(column + 1) ? '' : undefined}
                  tabIndex={well === stop ? 0 : -1}
                  aria-label={`Row ${row + 1}, well ${column + 1}: ${wells[well] ? 'holds a portion' : 'empty'}`}
                  onFocus={() => setReached(well)}
                  onKeyDown={(event) => walk(event, well)}
                  onClick={() => onWell(well)}
                />
              )
            })}
          </div>
        ))}
      </fieldset>
    </div>
  )
}

const arrowTo = (key: string, well: number, rows: number, columns: number): number | undefined => {
  const column = well % columns
  if (key === 'ArrowLeft') return column > 0 ? well - 1 : well
  if (key === 'ArrowRight') return column < columns - 1 ? well + 1 : well
  if (key === 'ArrowUp') return well >= columns ? well - columns : well
  if (key === 'ArrowDown') return well < (rows - 1) * columns ? well + columns : well
  if (key === 'Home') return well - column
  if (key === 'End') return well - column + columns - 1
  return undefined
}
