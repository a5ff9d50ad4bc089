/** What is told of a tank and of live bottles that came: whole snapshots, written again when they change. */
import type { ParcelId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import { type TankState, tankKept } from '../tank/state.ts'
import type {
  DeviceSort,
  EquipmentDescribed,
  LiveBottlesCame,
  LiveBottlesUncapped,
  PodHuntersNoted,
  TankTreated,
} from './facts.ts'
import { parcelAt, type SeedingState } from './state.ts'

/** What most tanks with a sump have. Common practice, no source. */
export const usualDevices: readonly DeviceSort[] = ['topOff', 'sock', 'skimmer', 'return', 'wave', 'sumpHeater']
/** Wave pumps may stay on: she decides. Everything else stops. */
export const usuallyStops = (device: DeviceSort): boolean => device !== 'wave'

export type EquipmentRefusal =
  | { readonly why: 'noSuchTank' | 'noPlaces' }
  /** Steps are told apart by the keys of their devices. */
  | { readonly why: 'sameKey'; readonly key: string }

/** All that runs on a tank, whole. Refuses a tank not kept, nowhere to pour, and two devices of one key. */
export const describeEquipment = (
  state: TankState,
  asked: Omit<EquipmentDescribed, 'kind' | 'at'>,
  now: Moment,
): Result<readonly [EquipmentDescribed], EquipmentRefusal> => {
  if (!tankKept(state, asked.tank, now)) return refuse({ why: 'noSuchTank' })
  if (asked.places.length === 0) return refuse({ why: 'noPlaces' })
  const twice = asked.devices.find(({ key }, place) => asked.devices.findIndex((each) => each.key === key) < place)
  if (twice) return refuse({ why: 'sameKey', key: twice.key })
  const devices = asked.devices.map(({ name = '', ...device }) =>
    name.trim() ? { ...device, name: name.trim() } : device,
  )
  return ok([{ kind: 'equipmentDescribed', at: now, ...asked, devices }])
}

export const noteTreated = (
  state: TankState,
  asked: Omit<TankTreated, 'kind' | 'at'>,
  now: Moment,
): Result<readonly [TankTreated], { readonly why: 'noSuchTank' }> =>
  tankKept(state, asked.tank, now) ? ok([{ kind: 'tankTreated', at: now, ...asked }]) : refuse({ why: 'noSuchTank' })

export const notePodHunters = (
  state: TankState,
  asked: Omit<PodHuntersNoted, 'kind' | 'at'>,
  now: Moment,
): Result<readonly [PodHuntersNoted], { readonly why: 'noSuchTank' }> =>
  tankKept(state, asked.tank, now)
    ? ok([{ kind: 'podHuntersNoted', at: now, ...asked }])
    : refuse({ why: 'noSuchTank' })

export type ArrivalRefusal =
  | { readonly why: 'noBottles' }
  | { readonly why: 'notYet'; readonly at: Moment }
  /** Hours to claim in: more than 0, and at most four weeks. */
  | { readonly why: 'claimHours'; readonly most: number }
const mostClaimHours = 672

/** Whatever is done with them later: they are here. */
export const recordArrival = (
  asked: Omit<LiveBottlesCame, 'kind' | 'at'>,
  now: Moment,
): Result<readonly [LiveBottlesCame], ArrivalRefusal> => {
  const { bottles, came, claimHours } = asked
  if (bottles.length === 0 || bottles.some(({ count }) => !(count > 0))) return refuse({ why: 'noBottles' })
  if (came > now + clockGrace) return refuse({ why: 'notYet', at: came })
  if (claimHours !== undefined && !(claimHours > 0 && claimHours <= mostClaimHours))
    return refuse({ why: 'claimHours', most: mostClaimHours })
  return ok([{ kind: 'liveBottlesCame', at: now, ...asked }])
}

/** Cold animals lie still: once they are warm they are looked at again. */
export const lookAgain = (
  state: SeedingState,
  { parcel, looked }: { readonly parcel: ParcelId; readonly looked: LiveBottlesCame['looked'] },
  now: Moment,
): Result<readonly [LiveBottlesCame], { readonly why: 'noSuchParcel' }> => {
  const known = parcelAt(state, parcel, now)
  return known ? ok([{ ...known, at: now, looked }]) : refuse({ why: 'noSuchParcel' })
}

export type UncapRefusal = { readonly why: 'noSuchParcel' | 'uncappedAlready' }
export const uncapBottles = (
  state: SeedingState,
  parcel: ParcelId,
  now: Moment,
): Result<readonly [LiveBottlesUncapped], UncapRefusal> => {
  if (!state.parcels.has(parcel)) return refuse({ why: 'noSuchParcel' })
  if (state.uncapped.has(parcel)) return refuse({ why: 'uncappedAlready' })
  return ok([{ kind: 'liveBottlesUncapped', at: now, parcel }])
}

/** Days after which a parcel is past speaking of. Our own judgement. */
const parcelDays = 7

/** Live bottles of late that no run has taken, the newest first. */
export const parcelsWaiting = (state: SeedingState, now: Moment): readonly LiveBottlesCame[] => {
  // Called off before anything was poured, they wait for another night.
  const taken = new Set(
    [...state.runs.values()].flatMap(({ planned, stopped, pours }) =>
      stopped && pours.length === 0 ? [] : planned.map(({ parcel }) => parcel),
    ),
  )
  return [...state.parcels.keys()]
    .flatMap((parcel) => (taken.has(parcel) ? [] : (parcelAt(state, parcel, now) ?? [])))
    .filter(({ came }) => now - came < parcelDays * 86_400_000)
    .sort((a, b) => b.came - a.came)
}
