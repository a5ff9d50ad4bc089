/** What thaws, sniffs, doubts and joined bags make of bottles and lots. */
import { type Day, earlier } from '../basis/days.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { FoodThing, FoundAs, FridgeTroubled, TroubleFact } from './facts.ts'
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
        if (lot) Object.assign(lot, thawed(lot, found, fact.on, { entry: id, at: fact.at }))
      }
      return
    case 'fridgeTroubled':
      for (const { bottle: of, found } of fact.bottles) {
        const bottle = bottleOf(state, id, of)
        if (bottle) Object.assign(bottle, troubled(bottle, found, fact.on, { entry: id, at: fact.at }))
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
      // No sniff finds a splinter of glass.
      else if (fact.found === 'good' && it.aside?.because !== 'cracked') it.aside = undefined
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

type Said = Pick<Aside, 'entry' | 'at'>

/** What a thaw makes of a lot: what is said before it is saved goes by it too. */
export const thawed = (
  { meltedOn }: Pick<Lot, 'meltedOn'>,
  found: FoundAs,
  on: Day,
  said: Said,
): Partial<Pick<Lot, 'softOn' | 'meltedOn' | 'aside'>> => {
  if (found === 'icy') return { softOn: on }
  // Melted twice it is as old as the first time.
  if (found === 'cold') return { meltedOn: meltedOn ? earlier(meltedOn, on) : on }
  return { aside: { ...said, because: found } }
}

/** What a fridge that was not right makes of a bottle. */
export const troubled = (
  { frozeOn, thawedOn }: Pick<Bottle, 'frozeOn' | 'thawedOn'>,
  found: FridgeTroubled['bottles'][number]['found'],
  on: Day,
  said: Said,
): Partial<Pick<Bottle, 'frozeOn' | 'thawedOn' | 'aside'>> => {
  if (found === 'fine') return {}
  // What has thawed once is no fresher for freezing again, and a block is as old as its first frost.
  if (found === 'frozen') return thawedOn === undefined ? { frozeOn: frozeOn ? earlier(frozeOn, on) : on } : {}
  return { aside: { ...said, because: found } }
}

/** The bag that another went into: what either has been through, all of it has. */
export const joinedWith = (
  into: Lot,
  from: Lot,
  count: number,
): Pick<Growing<Lot>, 'joined' | 'aside' | 'softOn' | 'meltedOn'> => {
  const { frozenOn } = from.made
  const late = from.made.kind === 'portionsFrozen' && from.made.late
  const melted = into.meltedOn && from.meltedOn ? earlier(into.meltedOn, from.meltedOn) : undefined
  return {
    joined: [...into.joined, { lot: from.id, count, frozenOn, late }, ...from.joined],
    aside: into.aside ?? from.aside,
    softOn: into.softOn ?? from.softOn,
    meltedOn: melted ?? into.meltedOn ?? from.meltedOn,
  }
}

/** What the one has left goes over; portions of two sizes stay two lots, whatever was written. */
const join = (state: Folding, id: Stamp, fact: Extract<TroubleFact, { kind: 'lotsJoined' }>) => {
  const from = lotOf(state, id, fact.from)
  const into = lotOf(state, id, fact.into)
  if (!from || !into || from === into || from.made.each !== into.made.each) return
  Object.assign(into, joinedWith(into, from, fact.count))
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
