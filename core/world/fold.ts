/**
 * Ledger to world, whole, every time. It reads no clock, refuses nothing and throws nothing: what it is given has already
 * happened. Refolding all of it on each append leaves nothing incremental to go wrong, and costs less than reading the text.
 */
import { byText } from '../basis/compare.ts'
import type { DeviceId } from '../basis/ids.ts'
import { applyDosing, emptyDosing, endPlans } from '../dosing/fold.ts'
import { changeFood } from '../food/changes.ts'
import type { PortionsMoved } from '../food/facts.ts'
import { feed, feedByCount } from '../food/feed.ts'
import { introduceFood } from '../food/fold.ts'
import { emptyFood } from '../food/folding.ts'
import type { Entry, Unread } from '../ledger/entry.ts'
import { gather } from '../ledger/gather.ts'
import { history } from '../ledger/history.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { applySeeding, emptySeeding } from '../seeding/fold.ts'
import { applyTank, emptyTanks } from '../tank/fold.ts'
import { applyWatch, emptyWatch } from '../watch/fold.ts'
import type { ClashNoted, Fact, PhoneNamed } from './facts.ts'
import { aheadOfItsWriting, findOddities } from './oddities.ts'
import type { World } from './world.ts'

export const fold = (ledger: readonly (Entry<Fact> | Unread)[]): World => {
  const readable: Entry<Fact>[] = []
  const unread: Unread[] = []
  for (const entry of ledger) {
    if ('fact' in entry) readable.push(entry)
    else unread.push(entry)
  }
  unread.sort((a, b) => byText(a.id, b.id))
  const past = history(readable)
  const standing = past.struck.size === 0 ? past.all : past.all.filter(({ id }) => !past.struck.has(id))

  const tanks = emptyTanks()
  const food = emptyFood()
  const dosing = emptyDosing()
  const watch = emptyWatch()
  const seeding = emptySeeding()
  const phones = new Map<DeviceId, PhoneNamed[]>()
  const settled = new Set<string>()
  const ahead: Stamp[] = []
  const setAside: Stamp[] = []
  const clashes: Entry<ClashNoted>[] = []
  const parts: Entry<PortionsMoved>[] = []
  for (const entry of standing) {
    introduce(entry)
    if (aheadOfItsWriting(entry)) ahead.push(entry.id)
  }
  introduceParts()
  for (const entry of standing) change(entry)
  const { strangers, ...stock } = food
  return {
    ...tanks,
    ...stock,
    ...dosing,
    ...watch,
    ...seeding,
    phones,
    history: past,
    oddities: findOddities(
      { ...tanks, ...stock, ...dosing },
      { ahead, setAside, strangers, clashes, unread, past },
      settled,
    ),
    unread,
  }

  /**
   * After all lots: a part moved away is described by the lot it was a part of, which a quick clock may date later. That may
   * be a part itself: then it comes first.
   */
  function introduceParts() {
    const makes = new Map(parts.toReversed().map((part) => [part.fact.lot, part]))
    const tried = new Set<Stamp>()
    for (const part of parts) {
      const line: Entry<PortionsMoved>[] = []
      let next: Entry<PortionsMoved> | undefined = part
      while (next && !tried.has(next.id)) {
        tried.add(next.id)
        line.push(next)
        next = food.lots.has(next.fact.from) ? undefined : makes.get(next.fact.from)
      }
      for (const { id, fact } of line.reverse()) introduceFood(food, id, fact)
    }
  }
  function introduce(entry: Entry<Fact>) {
    switch (entry.fact.kind) {
      case 'foodDescribed':
      case 'placeDescribed':
      case 'bottleRecorded':
      case 'portionsFrozen':
      case 'portionsOnHand':
      case 'foodRetired':
      case 'placeRetired':
      case 'purchaseRecorded':
      case 'foodOrdered':
      case 'orderingDescribed':
      case 'daysAway':
        return introduceFood(food, entry.id, entry.fact)
      case 'portionsMoved':
        parts.push({ id: entry.id, fact: entry.fact })
        return
    }
  }
  function change(entry: Entry<Fact>) {
    const { id, fact } = entry
    switch (fact.kind) {
      case 'tankDescribed':
      case 'lampSeen':
      case 'powerCut':
        return applyTank(tanks, fact)
      case 'tankRetired':
        endPlans(dosing, fact)
        return applyTank(tanks, fact)
      case 'foodRetired':
        return endPlans(dosing, fact)
      case 'doseGiven':
      case 'doseGivenOffPlan':
        feed(food, id, fact)
        return applyDosing(dosing, id, fact)
      case 'doseSetAside':
        setAside.push(id)
        return applyDosing(dosing, id, fact)
      case 'nightsCounted':
        feedByCount(food, id, fact)
        return applyDosing(dosing, id, fact)
      case 'planMade':
      case 'planEnded':
      case 'planHeld':
      case 'nextNightChosen':
      case 'nightSkipped':
      case 'nightUnknown':
      case 'nightsMissed':
        return applyDosing(dosing, id, fact)
      case 'foodDescribed':
      case 'placeDescribed':
      case 'placeRetired':
      case 'bottleRecorded':
      case 'portionsOnHand':
      case 'purchaseRecorded':
      case 'foodOrdered':
      case 'orderingDescribed':
      case 'daysAway':
        return
      case 'portionsFrozen':
      case 'bottleOpened':
      case 'bottleFinished':
      case 'bottlesShaken':
      case 'bottleMoved':
      case 'lotMoved':
      case 'portionsMoved':
      case 'wellsSeen':
      case 'trayCut':
      case 'portionsCounted':
      case 'liquidMeasured':
      case 'portionsGone':
      case 'portionsGivenAway':
      case 'portionsFound':
      case 'liquidGone':
      case 'freezerThawed':
      case 'fridgeTroubled':
      case 'bottleThawed':
      case 'foodSmelled':
      case 'foodSetAside':
      case 'foodTakenBack':
      case 'lotsJoined':
        return changeFood(food, id, fact)
      case 'livePoured':
      case 'smallLifeCounted':
      case 'kindSeen':
      case 'photoKept':
        return applyWatch(watch, id, fact)
      case 'equipmentDescribed':
      case 'tankTreated':
      case 'podHuntersNoted':
      case 'liveBottlesCame':
      case 'liveBottlesUncapped':
      case 'seedingPlanned':
      case 'seedingStepDone':
      case 'seedingWaterTaken':
      case 'seedingPoured':
      case 'seedingStopped':
      case 'letterWritten':
        return applySeeding(seeding, id, fact)
      case 'phoneNamed':
        return gather(phones, fact.device, fact)
      case 'clashNoted':
        clashes.push({ id, fact })
        return
      case 'noteWritten':
        return
      case 'questionSettled':
        settled.add(fact.question)
        return
      case 'entryStruckOut':
        return
      default:
        fact satisfies never
    }
  }
}
