/** What a bottle that might be bought would come to, in doses that these tanks really get. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import type { Day } from '../basis/days.ts'
import type { BottleId, LotId } from '../basis/ids.ts'
import { stepsToReach, stepsWithin } from '../basis/numbers.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodDescribed } from '../food/facts.ts'
import { lastGoodFrozen, lastGoodInFridge } from '../food/state.ts'
import { nightsAhead, type Planned } from './ahead.ts'
import { portionsPerDose } from './cover.ts'
import { doseToFreeze } from './portion.ts'
import { comesFrom, type Source, sourcesOf } from './serve.ts'
import { plansAt } from './state.ts'

export type OfferAsked = {
  readonly food: FoodDescribed
  /** How many bottles come in the pack. */
  readonly bottles: number
  /** What one of them holds. */
  readonly size: Microlitres
  /** The day they would come; what may be frozen is frozen that day. */
  readonly arrives: Day
  /** Microlitres in one portion. */
  readonly each: Microlitres
  readonly wellsPerTray: number
}
export type OfferAhead = {
  readonly contents: Microlitres
  readonly residue: Microlitres
  /** Portions it makes in all; none of a food that is promised no life in the freezer. */
  readonly portions: number
  readonly trays: number
  /** The last day it is good: in the freezer, or in the fridge. */
  readonly lastGood: Day | undefined
  /** Doses that reach a tank. Without a plan, those it could be. */
  readonly doses: number
  /** Less than a portion of each bottle, and what passes its last good day: neither is used. */
  readonly wasted: Microlitres
  readonly planned: boolean
  /** The first and the last night on which it would be given; undefined where it never is. */
  readonly begins: Day | undefined
  readonly lastNight: Day | undefined
}

/** Neither is hers: an id has no spaces. */
const portionsThen = 'if bought' as LotId
const bottleThen = (which: number) => `if bought ${which}` as BottleId

/** What is there already is used in its turn, so it mostly comes first. */
export const offerAhead = (state: Planned, asked: OfferAsked, now: Moment): OfferAhead => {
  const { food, bottles, size, arrives, each, wellsPerTray } = asked
  const stays = Math.round(size * food.residueShare)
  const usable = size - stays
  const frozen = food.freezerLife !== undefined
  const portions = frozen ? bottles * stepsWithin(usable, each) : 0
  const coming = frozen ? [portionsOf(asked, portions)] : bottlesOf(asked, usable)
  const told = {
    contents: microlitres(bottles * size),
    residue: microlitres(bottles * stays),
    portions,
    trays: portions > 0 ? stepsToReach(portions, wellsPerTray) : 0,
    lastGood: coming[0]?.lastGood,
  }
  const all = bottles * usable
  if (!plansAt(state, now).some((plan) => plan.food === food.food)) {
    const { dose } = doseToFreeze(state, food.food, now)
    const doses = frozen ? stepsToReach(portions, portionsPerDose(dose, each)) : bottles * stepsWithin(usable, dose)
    const used = frozen ? portions * each : doses * dose
    return {
      ...told,
      doses,
      wasted: microlitres(all - used),
      planned: false,
      begins: undefined,
      lastNight: undefined,
    }
  }
  const given = givenOf(state, food, coming, arrives, now)
  return { ...told, ...given, wasted: microlitres(all - given.used), planned: true }
}

const portionsOf = ({ food, arrives, each }: OfferAsked, left: number): Source => ({
  from: 'portions',
  lot: portionsThen,
  each,
  left,
  lastGood: lastGoodFrozen({ frozenOn: arrives, late: false }, food),
  since: arrives,
})

/** Sealed until the first dose, each in its turn. */
const bottlesOf = ({ food, bottles, arrives }: OfferAsked, left: number): readonly Source[] =>
  Array.from({ length: bottles }, (_, which) => ({
    from: 'bottle',
    bottle: bottleThen(which),
    sealed: true,
    left,
    lastGood: lastGoodInFridge({ receivedOn: arrives }, food),
    lastGoodIfOpened: (night) => lastGoodInFridge({ receivedOn: arrives, openedOn: night }, food),
    since: arrives,
  }))

type Given = {
  readonly doses: number
  /** Microlitres that left it for a tank. */
  readonly used: number
  readonly begins: Day | undefined
  readonly lastNight: Day | undefined
}
const givenOf = (
  state: Planned,
  { food }: FoodDescribed,
  coming: readonly Source[],
  arrives: Day,
  now: Moment,
): Given => {
  const ours = new Set(coming.map(comesFrom))
  const notBefore = new Map([...ours].map((id) => [id, arrives] as const))
  const stock = { sources: [...sourcesOf(state, food, now), ...coming], notBefore }
  let doses = 0
  let used = 0
  let begins: Day | undefined
  let lastNight: Day | undefined
  for (const { night, serving } of nightsAhead(state, food, stock, now)) {
    if (!serving || !ours.has(comesFrom(serving.source))) continue
    doses += 1
    used += usedOf(serving.source, serving.left)
    begins ??= night
    lastNight = night
  }
  return { doses, used, begins, lastNight }
}

/** What left a source, the rest of a portion given in part included: it has thawed. */
const usedOf = (source: Source, left: number): number =>
  (source.left - left) * (source.from === 'portions' ? source.each : 1)
