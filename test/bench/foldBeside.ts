/** Folding a ledger beside reading its text, in turns: both slow down alike on a machine that is busy. */
import { type Entry, type Fact, fold } from '../../core/index.ts'
import { median } from './median.ts'

export type FoldBeside = { readonly parse: number; readonly fold: number; readonly ratio: number }

/** First turns that are not counted: reading is native, and the fold must first be compiled. */
const unheeded = 2

export const foldBesideParse = (text: string, times: number): FoldBeside => {
  const spent = { parse: [] as number[], fold: [] as number[] }
  for (let turn = -unheeded; turn < times; turn += 1) {
    const began = performance.now()
    const entries: readonly Entry<Fact>[] = JSON.parse(text)
    const read = performance.now()
    const world = fold(entries)
    const folded = performance.now()
    if (world.history.all.length !== entries.length) throw new Error('The fold lost entries')
    if (turn < 0) continue
    spent.parse.push(read - began)
    spent.fold.push(folded - read)
  }
  const [parse, folding] = [median(spent.parse), median(spent.fold)]
  return { parse, fold: folding, ratio: folding / parse }
}
