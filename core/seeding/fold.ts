/** Makes of seeding facts what seeding/state.ts describes. */
import type { ParcelId, RunId, TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { gather } from '../ledger/gather.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type {
  EquipmentDescribed,
  LetterWritten,
  LiveBottlesCame,
  PodHuntersNoted,
  SeedingFact,
  SeedingPlanned,
  SeedingPoured,
  SeedingStopped,
  SeedingWaterTaken,
  TankTreated,
} from './facts.ts'

type Growing = {
  readonly id: RunId
  readonly planned: SeedingPlanned[]
  readonly done: Map<string, { entry: Stamp; at: Moment }>
  readonly water: SeedingWaterTaken[]
  readonly pours: SeedingPoured[]
  stopped: SeedingStopped | undefined
}
export const emptySeeding = () => ({
  equipment: new Map<TankId, EquipmentDescribed[]>(),
  treated: new Map<TankId, TankTreated[]>(),
  podHunters: new Map<TankId, PodHuntersNoted[]>(),
  parcels: new Map<ParcelId, LiveBottlesCame[]>(),
  uncapped: new Map<ParcelId, Moment>(),
  runs: new Map<RunId, Growing>(),
  letters: [] as { entry: Stamp; fact: LetterWritten }[],
})
type Seeding = ReturnType<typeof emptySeeding>

/** A tick may be known before its plan: another phone's file may hold one without the other. */
const runOf = ({ runs }: Seeding, id: RunId): Growing => {
  const known = runs.get(id)
  if (known) return known
  const run: Growing = { id, planned: [], done: new Map(), water: [], pours: [], stopped: undefined }
  runs.set(id, run)
  return run
}

export const applySeeding = (state: Seeding, entry: Stamp, fact: SeedingFact) => {
  switch (fact.kind) {
    case 'equipmentDescribed':
      return gather(state.equipment, fact.tank, fact)
    case 'tankTreated':
      return gather(state.treated, fact.tank, fact)
    case 'podHuntersNoted':
      return gather(state.podHunters, fact.tank, fact)
    case 'liveBottlesCame':
      return gather(state.parcels, fact.parcel, fact)
    case 'liveBottlesUncapped':
      if (!state.uncapped.has(fact.parcel)) state.uncapped.set(fact.parcel, fact.at)
      return
    case 'seedingPlanned':
      runOf(state, fact.run).planned.push(fact)
      return
    case 'seedingStepDone': {
      const { done } = runOf(state, fact.run)
      // Two phones may tick it: it was done when the first did.
      if (!done.has(fact.step)) done.set(fact.step, { entry, at: fact.at })
      return
    }
    case 'seedingWaterTaken':
      runOf(state, fact.run).water.push(fact)
      return
    case 'seedingPoured':
      runOf(state, fact.run).pours.push(fact)
      return
    case 'seedingStopped':
      runOf(state, fact.run).stopped ??= fact
      return
    case 'letterWritten':
      state.letters.push({ entry, fact })
      return
    default:
      fact satisfies never
  }
}
