/** Which tanks an entry is about: what a history of one tank is made of. */
import type { PlanId, TankId } from '../basis/ids.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { Fact } from './facts.ts'
import type { World } from './world.ts'

/**
 * Asked of entry after entry. A plan that changed its tank concerns both. What is crossed out concerns what it concerned,
 * and so does its crossing-out; stock concerns the house.
 */
export const concerning = ({ plans, runs, history }: World, tank: TankId): ((fact: Fact) => boolean) => {
  const byPlan = (id: PlanId): boolean => plans.get(id)?.some((made) => made.tank === tank) ?? false
  let facts: ReadonlyMap<Stamp, Fact> | undefined
  const of = (entry: Stamp): Fact | undefined => {
    facts ??= new Map(history.all.map(({ id, fact }) => [id, fact]))
    return facts.get(entry)
  }
  const concerns = (fact: Fact): boolean => {
    switch (fact.kind) {
      case 'tankDescribed':
      case 'tankRetired':
      case 'lampSeen':
      case 'planMade':
      case 'nightSkipped':
      case 'nightUnknown':
      case 'nightsMissed':
      case 'equipmentDescribed':
      case 'tankTreated':
      case 'podHuntersNoted':
      case 'seedingPlanned':
      case 'letterWritten':
      case 'livePoured':
      case 'smallLifeCounted':
      case 'kindSeen':
      case 'noteWritten':
        return fact.tank === tank
      case 'doseGiven':
      case 'doseGivenOffPlan':
      case 'doseSetAside':
        return fact.served.some((part) => part.tank === tank)
      case 'powerCut':
        return fact.tanks.includes(tank)
      case 'nightsCounted':
        return fact.rounds.some((round) => round.tank === tank)
      case 'planEnded':
      case 'planHeld':
      case 'nextNightChosen':
        return byPlan(fact.plan)
      case 'seedingStepDone':
      case 'seedingWaterTaken':
      case 'seedingPoured':
      case 'seedingStopped':
        return runs.get(fact.run)?.planned.some((plan) => plan.tank === tank) ?? false
      case 'photoKept':
        return 'tank' in fact.of ? fact.of.tank === tank : 'entry' in fact.of ? about(of(fact.of.entry)) : false
      case 'entryStruckOut':
        return about(of(fact.target))
      case 'clashNoted':
        return about(of(fact.entry))
      case 'foodDescribed':
      case 'foodRetired':
      case 'placeDescribed':
      case 'placeRetired':
      case 'bottleRecorded':
      case 'bottleOpened':
      case 'bottleFinished':
      case 'bottlesShaken':
      case 'bottleMoved':
      case 'lotMoved':
      case 'portionsMoved':
      case 'wellsSeen':
      case 'trayCut':
      case 'portionsFrozen':
      case 'portionsOnHand':
      case 'portionsCounted':
      case 'portionsGone':
      case 'portionsGivenAway':
      case 'portionsFound':
      case 'liquidMeasured':
      case 'liquidGone':
      case 'freezerThawed':
      case 'fridgeTroubled':
      case 'bottleThawed':
      case 'foodSmelled':
      case 'foodSetAside':
      case 'foodTakenBack':
      case 'lotsJoined':
      case 'purchaseRecorded':
      case 'foodOrdered':
      case 'orderingDescribed':
      case 'daysAway':
      case 'liveBottlesCame':
      case 'liveBottlesUncapped':
      case 'phoneNamed':
      case 'questionSettled':
        return false
    }
  }
  /** One step only: a file may hold a crossing-out of itself. */
  const about = (fact: Fact | undefined): boolean =>
    fact !== undefined && fact.kind !== 'entryStruckOut' && fact.kind !== 'clashNoted' && concerns(fact)
  return concerns
}
