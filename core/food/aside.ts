/** Smelt at, set aside, taken back: nothing is thrown away by any of it. */
import type { LotId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodSetAside, FoodSmelled, FoodTakenBack, FoodThing } from './facts.ts'
import type { Bottle, FoodState, Lot } from './state.ts'

export type ThingRefusal = { readonly why: 'noSuchBottle' | 'noSuchLot' }

export const thingOf = (state: FoodState, thing: FoodThing): Bottle | Lot | undefined =>
  'bottle' in thing ? state.bottles.get(thing.bottle) : state.lots.get(thing.lot)
const notThere = (thing: FoodThing): ThingRefusal => ({ why: 'bottle' in thing ? 'noSuchBottle' : 'noSuchLot' })

/** Her own first sniff of it; frozen, that of the bottle it came from. What later ones are judged against. */
export const firstSniff = (state: FoodState, thing: FoodThing): FoodSmelled | undefined => {
  const it = thingOf(state, thing)
  const own = it?.smelled.find(({ found }) => found === 'first')
  if (own || !it || !('made' in it) || it.made.kind !== 'portionsFrozen') return own
  return state.bottles.get(it.made.bottle)?.smelled.find(({ found }) => found === 'first')
}

export type SmellAsked = {
  readonly thing: FoodThing
  readonly found: FoodSmelled['found']
  readonly words?: string
}
export type SmellRefusal =
  | ThingRefusal
  /** A first sniff without words says nothing to judge by. */
  | { readonly why: 'howItSmelt' }

/** A sniff and a look. Unsure and off set it aside, good takes it back into use. */
export const smellFood = (
  state: FoodState,
  { thing, found, words }: SmellAsked,
  now: Moment,
): Result<readonly [FoodSmelled], SmellRefusal> => {
  if (!thingOf(state, thing)) return refuse(notThere(thing))
  if (found === 'first' && !words) return refuse({ why: 'howItSmelt' })
  return ok([{ kind: 'foodSmelled', at: now, thing, found, ...(words ? { words } : {}) }])
}

export type AsideRefusal = ThingRefusal | { readonly why: 'asideAlready' | 'notAside' }

/** Out of the order food is taken in, until she says otherwise. */
export const setAside = (
  state: FoodState,
  { thing, why }: { readonly thing: FoodThing; readonly why?: string },
  now: Moment,
): Result<readonly [FoodSetAside], AsideRefusal> => {
  const it = thingOf(state, thing)
  if (!it) return refuse(notThere(thing))
  if (it.aside) return refuse({ why: 'asideAlready' })
  return ok([{ kind: 'foodSetAside', at: now, thing, ...(why ? { why } : {}) }])
}

export const takeBack = (
  state: FoodState,
  { thing, why }: { readonly thing: FoodThing; readonly why?: string },
  now: Moment,
): Result<readonly [FoodTakenBack], AsideRefusal> => {
  const it = thingOf(state, thing)
  if (!it) return refuse(notThere(thing))
  if (!it.aside) return refuse({ why: 'notAside' })
  return ok([{ kind: 'foodTakenBack', at: now, thing, ...(why ? { why } : {}) }])
}

/** Lots with something left that were frozen from a bottle, parts moved away and bags they were put into included. */
export const frozenFrom = ({ lots }: FoodState, bottle: Bottle['id']): readonly Lot[] => {
  const from = new Set<LotId>()
  for (const { id, made } of lots.values()) if (made.kind === 'portionsFrozen' && made.bottle === bottle) from.add(id)
  return [...lots.values()].filter(
    ({ id, left, joined }) => left > 0 && (from.has(id) || joined.some(({ lot }) => from.has(lot))),
  )
}
