/** A fridge was too warm, or so cold that bottles froze: what that makes of each bottle. */
import type { Day } from '../basis/days.ts'
import { type Here, momentOn, today } from '../basis/here.ts'
import type { BottleId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { BottleThawed, FridgeTroubled } from './facts.ts'
import { troubled } from './foldTrouble.ts'
import { type Bottle, bottleLastGood, type FoodState, foodAt, isBlock } from './state.ts'
import { type OffRefusal, offRefusal, type ThawAsked } from './thaw.ts'

/** Hours a fridge that stays shut keeps cold. Common practice, no source. */
export const shutFridgeHours = 4

export type BottleFound = FridgeTroubled['bottles'][number]
export type FridgeAsked = Omit<ThawAsked, 'lots'> & { readonly bottles: readonly BottleFound[] }
export type FridgeRefusal = OffRefusal | { readonly why: 'noSuchBottle' }

/** One act for the door, with each bottle as it was found. */
export const fridgeTroubled = (
  state: FoodState,
  asked: FridgeAsked,
  here: Here,
): Result<readonly [FridgeTroubled], FridgeRefusal> => {
  const wrong = offRefusal(state, asked, asked.bottles.length, here)
  if (wrong) return refuse(wrong)
  if (asked.bottles.some(({ bottle }) => !state.bottles.has(bottle))) return refuse({ why: 'noSuchBottle' })
  const { place, on, bottles, minutesOff } = asked
  const off = minutesOff === undefined ? {} : { minutesOff }
  return ok([{ kind: 'fridgeTroubled', at: momentOn(on, here), place, on, bottles, ...off }])
}

/** The food as it would be if it were noted so: by the rule the fold goes by, without writing anything. */
export const ifTroubled = <State extends FoodState>(
  state: State,
  { on, bottles: found }: Pick<FridgeAsked, 'on' | 'bottles'>,
  now: Moment,
): State => {
  const bottles = new Map(state.bottles)
  for (const { bottle: id, found: how } of found) {
    const bottle = bottles.get(id)
    if (bottle) bottles.set(id, { ...bottle, ...troubled(bottle, how, on, { entry: '' as Stamp, at: now }) })
  }
  return { ...state, bottles }
}

export type BottleVerdict = {
  readonly bottle: Bottle
  readonly found: BottleFound['found']
  readonly before: Day | undefined
  /** Frozen whole it keeps as frozen food does, from that day. */
  readonly after: Day | undefined
}
export const fridgeVerdicts = (
  state: FoodState,
  asked: Pick<FridgeAsked, 'on' | 'bottles'>,
  now: Moment,
): readonly BottleVerdict[] => {
  const after = ifTroubled(state, asked, now)
  return asked.bottles.flatMap(({ bottle: id, found }) => {
    const [bottle, then] = [state.bottles.get(id), after.bottles.get(id)]
    const food = bottle && foodAt(state, bottle.recorded.food, now)
    if (!bottle || !then) return []
    return [{ bottle, found, before: food && bottleLastGood(bottle, food), after: food && bottleLastGood(then, food) }]
  })
}

export type LetThawRefusal = { readonly why: 'noSuchBottle' } | { readonly why: 'notFrozen' }

/** A block is let thaw, today: good that night and the next, and never frozen again. */
export const letThaw = (
  state: FoodState,
  bottle: BottleId,
  here: Here,
): Result<readonly [BottleThawed], LetThawRefusal> => {
  const known = state.bottles.get(bottle)
  if (!known) return refuse({ why: 'noSuchBottle' })
  if (!isBlock(known)) return refuse({ why: 'notFrozen' })
  return ok([{ kind: 'bottleThawed', at: here.now, bottle, on: today(here) }])
}
