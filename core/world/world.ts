/** Everything the ledger implies. Screens and the worker put questions to this and to nothing else. */
import type { DeviceId } from '../basis/ids.ts'
import type { DosingState } from '../dosing/state.ts'
import type { FoodState } from '../food/state.ts'
import type { Unread } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import type { SeedingState } from '../seeding/state.ts'
import type { TankState } from '../tank/state.ts'
import type { WatchState } from '../watch/state.ts'
import type { Fact, PhoneNamed } from './facts.ts'
import type { Oddity } from './oddities.ts'

export type World = TankState &
  FoodState &
  DosingState &
  WatchState &
  SeedingState & {
    readonly history: History<Fact>
    readonly phones: ReadonlyMap<DeviceId, readonly PhoneNamed[]>
    /** What does not add up and has not been settled. */
    readonly oddities: readonly Oddity[]
    /** Entries from a newer version, kept as they are. */
    readonly unread: readonly Unread[]
  }
