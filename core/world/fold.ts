/**
 * Ledger to world, whole, every time. It reads no clock, refuses nothing and throws nothing: what it is given has already
 * happened. Refolding all of it on each append leaves nothing incremental to go wrong, and costs less than reading the text.
 */
import { applyDosing, emptyDosing } from '../dosing/fold.ts'
import { changeFood, emptyFood, feed, introduceFood } from '../food/fold.ts'
import type { Entry, Unread } from '../ledger/entry.ts'
import { history } from '../ledger/history.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { applyTank, emptyTanks } from '../tank/fold.ts'
import type { Fact } from './facts.ts'
import { aheadOfItsWriting, findOddities } from './oddities.ts'
import type { World } from './world.ts'

export const fold = (ledger: readonly (Entry<Fact> | Unread)[]): World => {
  const readable: Entry<Fact>[] = []
  const unread: Unread[] = []
  for (const entry of ledger) {
    if ('fact' in entry) readable.push(entry)
    else unread.push(entry)
  }
  const past = history(readable)
  const standing = past.struck.size === 0 ? past.all : past.all.filter(({ id }) => !past.struck.has(id))

  const tanks = emptyTanks()
  const food = emptyFood()
  const dosing = emptyDosing()
  const settled = new Set<string>()
  const ahead: Stamp[] = []
  for (const entry of standing) {
    introduce(entry)
    if (aheadOfItsWriting(entry)) ahead.push(entry.id)
  }
  for (const entry of standing) change(entry)
  const { strangers, ...stock } = food
  return {
    ...tanks,
    ...stock,
    ...dosing,
    history: past,
    oddities: findOddities({ ...stock, ...dosing }, ahead, strangers, settled),
    unread,
  }

  function introduce(entry: Entry<Fact>) {
    switch (entry.fact.kind) {
      case 'foodDescribed':
      case 'placeDescribed':
      case 'bottleRecorded':
      case 'portionsFrozen':
      case 'portionsOnHand':
        return introduceFood(food, entry.id, entry.fact)
    }
  }
  function change(entry: Entry<Fact>) {
    const { id, fact } = entry
    switch (fact.kind) {
      case 'tankDescribed':
        return applyTank(tanks, fact)
      case 'doseGiven':
        feed(food, id, fact)
        return applyDosing(dosing, id, fact)
      case 'planMade':
      case 'nightSkipped':
      case 'nightUnknown':
        return applyDosing(dosing, id, fact)
      case 'foodDescribed':
      case 'placeDescribed':
      case 'bottleRecorded':
      case 'portionsOnHand':
        return
      case 'portionsFrozen':
      case 'bottleOpened':
      case 'bottleFinished':
      case 'bottlesShaken':
      case 'portionsCounted':
      case 'liquidMeasured':
      case 'portionsGone':
      case 'portionsFound':
      case 'liquidGone':
        return changeFood(food, id, fact)
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
