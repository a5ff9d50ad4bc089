/** Runs, parcels and equipment as the ledger tells them. */
import type { ParcelId, RunId, TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { inForce } from '../ledger/snapshot.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type {
  EquipmentDescribed,
  LetterWritten,
  LiveBottlesCame,
  PodHuntersNoted,
  SeedingPlanned,
  SeedingPoured,
  SeedingStopped,
  SeedingWaterTaken,
  TankTreated,
} from './facts.ts'

export type Run = {
  readonly id: RunId
  readonly planned: readonly SeedingPlanned[]
  /** When each step was ticked first, and the entry that says so. */
  readonly done: ReadonlyMap<string, { readonly entry: Stamp; readonly at: Moment }>
  readonly water: readonly SeedingWaterTaken[]
  readonly pours: readonly SeedingPoured[]
  readonly stopped: SeedingStopped | undefined
}
export type SeedingState = {
  readonly equipment: ReadonlyMap<TankId, readonly EquipmentDescribed[]>
  readonly treated: ReadonlyMap<TankId, readonly TankTreated[]>
  readonly podHunters: ReadonlyMap<TankId, readonly PodHuntersNoted[]>
  readonly parcels: ReadonlyMap<ParcelId, readonly LiveBottlesCame[]>
  readonly uncapped: ReadonlyMap<ParcelId, Moment>
  readonly runs: ReadonlyMap<RunId, Run>
  readonly letters: readonly { readonly entry: Stamp; readonly fact: LetterWritten }[]
}

export const equipmentAt = ({ equipment }: SeedingState, tank: TankId, now: Moment): EquipmentDescribed | undefined =>
  inForce(equipment.get(tank) ?? [], now)
export const treatedAt = ({ treated }: SeedingState, tank: TankId, now: Moment): TankTreated | undefined =>
  inForce(treated.get(tank) ?? [], now)
export const podHuntersAt = ({ podHunters }: SeedingState, tank: TankId, now: Moment): PodHuntersNoted | undefined =>
  inForce(podHunters.get(tank) ?? [], now)
export const parcelAt = ({ parcels }: SeedingState, parcel: ParcelId, now: Moment): LiveBottlesCame | undefined =>
  inForce(parcels.get(parcel) ?? [], now)
/** The plan of a run that holds at a moment; undefined where only ticks of it are known. */
export const planOfRun = ({ planned }: Run, now: Moment): SeedingPlanned | undefined => inForce(planned, now)
