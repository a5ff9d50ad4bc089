/** How portions are kept: in her own trays, or loose. */
import { fillTrays, type Kept, ok, type Result, readNumber, type World } from '../../../core/index.ts'
import { placed, type Trouble, trouble } from './useAct.ts'

export type TrayFields = { readonly keptAs: 'trays' | 'loose'; readonly rows: string; readonly columns: string }

/** In trays like her last ones; small ones of three by five to begin with. */
export const trayFields = (world: World): TrayFields => {
  const kept = [...world.lots.values()].findLast(({ made }) => made.kept.as === 'trays')?.made.kept
  const tray = kept?.as === 'trays' ? kept.trays[0] : undefined
  return { keptAs: 'trays', rows: String(tray?.rows ?? 3), columns: String(tray?.columns ?? 5) }
}

const readSide = (typed: string, at: string): Result<number, Trouble> => {
  const side = placed(readNumber(typed), at)
  if (!side.ok) return side
  const fits = Number.isInteger(side.value) && side.value >= 1 && side.value <= 100
  return fits ? side : trouble(at, { why: 'trayOutOfRange' })
}
export const readTray = (fields: TrayFields): Result<{ readonly rows: number; readonly columns: number }, Trouble> => {
  const rows = readSide(fields.rows, 'rows')
  if (!rows.ok) return rows
  const columns = readSide(fields.columns, 'columns')
  return columns.ok ? ok({ rows: rows.value, columns: columns.value }) : columns
}

/** More than anyone fills in a night, fewer than the ledger can list. */
export const mostPortions = 10_000
export const readKeptAs = (fields: TrayFields, portions: number): Result<Kept, Trouble> => {
  if (portions > mostPortions) return trouble('made', { why: 'tooMany' })
  if (fields.keptAs === 'loose' || !Number.isInteger(portions) || portions < 1) return ok({ as: 'loose' })
  const tray = readTray(fields)
  if (!tray.ok) return tray
  return ok({ as: 'trays', trays: fillTrays(portions, tray.value.rows, tray.value.columns) })
}
