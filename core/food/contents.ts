/** What a maker says is in a food, checked. */
import { ok, type Result, refuse } from '../basis/result.ts'
import type { FoodContents } from './facts.ts'

/** Nothing that pours has more in a millilitre, a packed paste of cells included; the ledger itself reads no more. Our own judgement. */
const most = { dry: 2, cells: 1e13, cellPicograms: 1e6, nitrogen: 0.2, phosphorus: 0.1 } as const
export type ContentsField = keyof typeof most
export type ContentsRefusal =
  | { readonly why: 'contentsOutOfRange'; readonly which: ContentsField; readonly most: number }
  /** Cells alone say nothing of what they weigh. */
  | { readonly why: 'cellsUnweighed' }

/** Undefined where she says nothing. Shares are of the dry matter, from 0. */
export const checkContents = (asked: FoodContents): Result<FoodContents | undefined, ContentsRefusal> => {
  for (const which of Object.keys(most) as ContentsField[]) {
    const value = asked[which]
    const least = which === 'nitrogen' || which === 'phosphorus' ? value !== undefined && value >= 0 : Number(value) > 0
    if (value !== undefined && !(least && value <= most[which]))
      return refuse({ why: 'contentsOutOfRange', which, most: most[which] })
  }
  if ((asked.cells === undefined) !== (asked.cellPicograms === undefined)) return refuse({ why: 'cellsUnweighed' })
  return ok(asked.dry === undefined && asked.cells === undefined ? undefined : asked)
}
