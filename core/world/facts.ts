/** The union of everything that can be recorded. Kind names are for ever: a new shape gets a new name. */
import type { DeviceId, TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { DosingFact } from '../dosing/facts.ts'
import type { FoodFact } from '../food/facts.ts'
import type { EntryStruckOut } from '../ledger/entry.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { SeedingFact } from '../seeding/facts.ts'
import type { TankFact } from '../tank/facts.ts'
import type { WatchFact } from '../watch/facts.ts'

/** She looked at an open question and says how it is. */
export type QuestionSettled = {
  readonly kind: 'questionSettled'
  readonly at: Moment
  /** The oddity's key. */
  readonly question: string
  readonly answer: 'asItStands'
}

/** Her own words about a day. */
export type NoteWritten = {
  readonly kind: 'noteWritten'
  readonly at: Moment
  readonly text: string
  readonly tank?: TankId
}

/** A whole snapshot: what a phone is called, for the others. */
export type PhoneNamed = {
  readonly kind: 'phoneNamed'
  readonly at: Moment
  readonly device: DeviceId
  readonly name: string
}

/** Another phone's file has this entry with another body. Ours stands; theirs is kept here as it was written. */
export type ClashNoted = {
  readonly kind: 'clashNoted'
  readonly at: Moment
  readonly entry: Stamp
  /** The other entry as a line of text. */
  readonly theirs: string
}

export type Fact =
  | TankFact
  | FoodFact
  | DosingFact
  | WatchFact
  | SeedingFact
  | NoteWritten
  | PhoneNamed
  | ClashNoted
  | EntryStruckOut
  | QuestionSettled
export type FactKind = Fact['kind']
