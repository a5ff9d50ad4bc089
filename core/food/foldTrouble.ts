/** What thaws, sniffs, doubts and joined bags make of bottles and lots. */
import { earlier } from '../basis/days.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { FoodThing, TroubleFact } from './facts.ts'
import { bottleOf, countedAfter, type Folding, type Growing, lotOf } from './folding.ts'
import type { Aside, Bottle, Lot } from './state.ts'

export const troubleFood = (state: Folding, id: Stamp, fact: TroubleFact) => {
  const thing = (of: FoodThing): Growing<Bottle> | Growing<Lot> | undefined =>
    'bottle' in of ? bottleOf(state, id, of.bottle) : lotOf(state, id, of.lot)
  const aside = (because: Aside['because'], why?: string): Aside => ({
    entry: id,
    at: fact.at,
    because,
    ...(why ? { why } : {}),
  })
  switch (fact.kind) {
    case 'freezerThawed':
      for (const { lot: of, found } of fact.lots) {
        const lot = lotOf(state, id, of)
        if (!lot) continue
        if (found === 'icy') lot.softOn = fact.on
        // Melted twice it is as old as the first time.
        else if (found === 'cold') lot.meltedOn = lot.meltedOn ? earlier(lot.meltedOn, fact.on) : fact.on
        else lot.aside = aside(found)
      }
      return
    case 'fridgeTroubled':
      for (const { bottle: of, found } of fact.bottles) {
        const bottle = bottleOf(state, id, of)
        if (!bottle || found === 'fine') continue
        if (found === 'frozen') {
          bottle.frozeOn = fact.on
          bottle.thawedOn = undefined
        } else bottle.aside = aside(found)
      }
      return
    case 'bottleThawed': {
      const bottle = bottleOf(state, id, fact.bottle)
      if (bottle) bottle.thawedOn = fact.on
      return
    }
    case 'foodSmelled': {
      const it = thing(fact.thing)
      if (!it) return
      it.smelled.push(fact)
      if (fact.found === 'unsure' || fact.found === 'off') it.aside = aside('smell', fact.words)
      else if (fact.found === 'good') it.aside = undefined
      return
    }
    case 'foodSetAside': {
      const it = thing(fact.thing)
      if (it) it.aside = aside('said', fact.why)
      return
    }
    case 'foodTakenBack': {
      const it = thing(fact.thing)
      if (it) it.aside = undefined
      return
    }
    case 'lotsJoined':
      return join(state, id, fact)
    default:
      fact satisfies never
  }
}

/** What the one has left goes over; portions of two sizes stay two lots, whatever was written. */
const join = (state: Folding, id: Stamp, fact: Extract<TroubleFact, { kind: 'lotsJoined' }>) => {
  const from = lotOf(state, id, fact.from)
  const into = lotOf(state, id, fact.into)
  if (!from || !into || from === into || from.made.each !== into.made.each) return
  const { frozenOn } = from.made
  const late = from.made.kind === 'portionsFrozen' && from.made.late
  into.joined.push({ lot: from.id, count: fact.count, frozenOn, late }, ...from.joined)
  into.aside ??= from.aside
  into.softOn ??= from.softOn
  if (from.meltedOn) into.meltedOn = into.meltedOn ? earlier(into.meltedOn, from.meltedOn) : from.meltedOn
  if (!countedAfter(from, fact.at)) from.left -= fact.count
  if (!countedAfter(into, fact.at)) into.left += fact.count
  from.joinedInto = into.id
}

/** A part that was moved away has been through what the rest has been through. */
export const inherit = (part: Growing<Lot>, { aside, softOn, meltedOn, joined }: Growing<Lot>) => {
  part.aside = aside
  part.softOn = softOn
  part.meltedOn = meltedOn
  part.joined = [...joined]
}
