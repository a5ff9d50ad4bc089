/** The forecast of every food beside folding the ledger it is made from, in turns: both slow down alike on a busy machine. */
import { type Entry, type Fact, type FoodId, fold, lasts, type Moment } from '../../core/index.ts'
import { median } from './median.ts'

export type WalkBeside = {
  readonly fold: number
  readonly walk: number
  readonly ratio: number
  readonly doses: number
}

/** First turns that are not counted: both must first be compiled. */
const unheeded = 15

export const walkBesideFold = (
  entries: readonly Entry<Fact>[],
  foods: readonly FoodId[],
  now: Moment,
  times: number,
): WalkBeside => {
  const spent = { fold: [] as number[], walk: [] as number[] }
  let doses = 0
  for (let turn = -unheeded; turn < times; turn += 1) {
    const began = performance.now()
    const world = fold(entries)
    const folded = performance.now()
    doses = foods.reduce((sum, food) => sum + (lasts(world, food, now)?.doses ?? 0), 0)
    const walked = performance.now()
    if (turn < 0) continue
    spent.fold.push(folded - began)
    spent.walk.push(walked - folded)
  }
  const [folding, walking] = [median(spent.fold), median(spent.walk)]
  return { fold: folding, walk: walking, ratio: walking / folding, doses }
}
