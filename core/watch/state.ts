/** The small life of each tank as the ledger tells it. */
import type { TankId } from '../basis/ids.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { KindSeen, LivePoured, PhotoKept, SmallLifeCounted } from './facts.ts'

type Noted<Fact> = { readonly entry: Stamp; readonly fact: Fact }

/** In the order it happened. */
export type Watched = {
  readonly poured: readonly Noted<LivePoured>[]
  readonly counted: readonly Noted<SmallLifeCounted>[]
  readonly seen: readonly Noted<KindSeen>[]
}
export type WatchState = {
  readonly watched: ReadonlyMap<TankId, Watched>
  readonly photos: readonly Noted<PhotoKept>[]
}

const nothing: Watched = { poured: [], counted: [], seen: [] }
export const watchedOf = ({ watched }: WatchState, tank: TankId): Watched => watched.get(tank) ?? nothing
