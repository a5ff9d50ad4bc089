/** The union of everything that can be recorded. Kind names are for ever: a new shape gets a new name. */
import type { Moment } from '../basis/zones.ts'
import type { DosingFact } from '../dosing/facts.ts'
import type { FoodFact } from '../food/facts.ts'
import type { EntryStruckOut } from '../ledger/entry.ts'
import type { TankFact } from '../tank/facts.ts'

/** She looked at an open question and says how it is. */
export type QuestionSettled = {
  readonly kind: 'questionSettled'
  readonly at: Moment
  /** The oddity's key. */
  readonly question: string
  readonly answer: 'asItStands'
}

export type Fact = TankFact | FoodFact | DosingFact | EntryStruckOut | QuestionSettled
export type FactKind = Fact['kind']
