/** What the core makes of what a label says is in a food. */
import { checkContents, type FoodContents, ok, type Result, readNumber } from '../../../core/index.ts'
import type { KindFields } from './kindFields.ts'
import { placed, type Trouble } from './useAct.ts'

type Typed = 'dry' | 'cells' | 'cellPicograms' | 'nitrogen' | 'phosphorus'

/** From what a label says to what is kept: a million cells, a per cent. */
const scale: Record<Typed, number> = { dry: 1, cells: 1e6, cellPicograms: 1, nitrogen: 0.01, phosphorus: 0.01 }
/** 6.3 % is 0.063, although 6.3 × 0.01 is 0.06300000000000001. */
const scaled = (at: Typed, typed: number): number => Number((typed * scale[at]).toPrecision(12))

export const readContents = (fields: KindFields): Result<FoodContents | undefined, Trouble> => {
  const { contains } = fields
  if (contains === 'notKnown') return ok(undefined)
  const asked: Partial<Record<Typed, number>> = {}
  const needed: readonly Typed[] = contains === 'dry' ? ['dry'] : ['cells', 'cellPicograms']
  for (const at of [...needed, 'nitrogen', 'phosphorus'] as const) {
    if (!needed.includes(at) && fields[at].trim() === '') continue
    const number = placed(readNumber(fields[at]), at)
    if (!number.ok) return number
    asked[at] = scaled(at, number.value)
  }
  const checked = checkContents(asked)
  if (checked.ok) return checked
  return placed(checked, checked.refusal.why === 'contentsOutOfRange' ? checked.refusal.which : 'cells')
}
