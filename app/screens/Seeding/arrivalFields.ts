/** Live bottles as they are written down at the door. */
import {
  type Animals,
  type BottleUnit,
  type LiveBottlesCame,
  type Moment,
  type ParcelId,
  recordArrival,
  type TankDescribed,
  wallDay,
} from '../../../core/index.ts'
import { newId } from '../../state/ids.ts'
import { clock } from '../../words/dates.ts'
import { amountIn, type Gathered, numberIn, whenIn } from './reading.ts'
import { placed, type SeedingAsk, wrong } from './useSeeding.ts'

export type ArrivalFields = {
  readonly day: string
  readonly clock: string
  readonly animals: readonly Animals[]
  readonly copepods: number | null
  readonly rotifers: number | null
  readonly others: number | null
  readonly holds: string
  readonly unit: BottleUnit
  readonly looked: LiveBottlesCame['looked'] | 'notSaid'
  readonly claimHours: string
  readonly words: string
}

export const arrivalFields = (now: Moment, { zone }: TankDescribed): ArrivalFields => ({
  day: wallDay(now, zone),
  clock: clock(now, zone),
  animals: ['copepods'],
  copepods: 1,
  rotifers: 1,
  others: 1,
  holds: '',
  unit: 'mL',
  looked: 'notSaid',
  claimHours: '',
  words: '',
})

export const arrivalIn =
  (fields: ArrivalFields, tank: TankDescribed): SeedingAsk =>
  (_world, { now }) => {
    const found: Gathered = []
    const came = whenIn(found, fields, tank)
    if (fields.animals.length === 0) found.push({ at: 'animals', refusal: { why: 'animalsMissing' } })
    for (const animals of fields.animals)
      if (!fields[animals]) found.push({ at: animals, refusal: { why: 'noBottles' } })
    const holds = amountIn(found, 'holds', fields.holds, fields.unit)
    const hours = numberIn(found, 'claimHours', fields.claimHours)
    if (found.length > 0 || came === undefined || holds === undefined) return wrong(found)
    const words = fields.words.trim()
    return placed(
      recordArrival(
        {
          // Not kept with the draft: one that was left behind must not write over the bottles it became.
          parcel: newId<ParcelId>(),
          came,
          bottles: fields.animals.map((animals) => ({ animals, count: fields[animals] ?? 0, holds })),
          ...(hours === undefined ? {} : { claimHours: hours }),
          looked: fields.looked === 'notSaid' ? 'notSure' : fields.looked,
          ...(words ? { words } : {}),
        },
        now,
      ),
      ({ why }) => (why === 'claimHours' ? 'claimHours' : why === 'notYet' ? 'clock' : 'animals'),
    )
  }
