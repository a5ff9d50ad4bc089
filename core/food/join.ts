/** Two bags are made one. */
import type { Day } from '../basis/days.ts'
import type { LotId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { LotsJoined } from './facts.ts'
import { joinedWith } from './foldTrouble.ts'
import { type FoodState, foodAt, type Lot, lotLastGood, portionsLeft } from './state.ts'

export type JoinAsked = {
  readonly from: LotId
  readonly into: LotId
  /** She was told that one of them is set aside or has thawed, and that all of the bag is then. */
  readonly sure?: boolean
}
export type JoinRefusal =
  | { readonly why: 'noSuchLot' }
  | { readonly why: 'sameBag' | 'otherFood' | 'otherSize' | 'nothingToJoin' }
  /** Set aside or thawed, one of them and not the other. */
  | { readonly why: 'spoilsTheBag' }

const inDoubt = ({ aside, meltedOn }: Lot): boolean => aside !== undefined || meltedOn !== undefined

/** All of one bag goes into another: of the same food and the same size only. It keeps as the one that goes first. */
export const joinLots = (
  state: FoodState,
  { from: fromId, into: intoId, sure = false }: JoinAsked,
  now: Moment,
): Result<readonly [LotsJoined], JoinRefusal> => {
  const [from, into] = [state.lots.get(fromId), state.lots.get(intoId)]
  if (!from || !into) return refuse({ why: 'noSuchLot' })
  if (from === into) return refuse({ why: 'sameBag' })
  if (from.made.food !== into.made.food) return refuse({ why: 'otherFood' })
  if (from.made.each !== into.made.each) return refuse({ why: 'otherSize' })
  const count = portionsLeft(from)
  if (count === 0) return refuse({ why: 'nothingToJoin' })
  if (inDoubt(from) !== inDoubt(into) && !sure) return refuse({ why: 'spoilsTheBag' })
  return ok([{ kind: 'lotsJoined', at: now, from: fromId, into: intoId, count }])
}

/** Bags it could go into, those behind the same door first. */
export const joinable = ({ lots }: FoodState, lot: Lot): readonly Lot[] => {
  const others = [...lots.values()].filter(
    ({ id, made, left }) => id !== lot.id && left > 0 && made.food === lot.made.food && made.each === lot.made.each,
  )
  return [...others.filter(({ place }) => place === lot.place), ...others.filter(({ place }) => place !== lot.place)]
}

export type Joint = { readonly count: number; readonly lastGood: Day | undefined }
/** What the bag would hold, and until when it would be good, before it is done. */
export const ifJoined = (state: FoodState, { from, into }: Omit<JoinAsked, 'sure'>, now: Moment): Joint | undefined => {
  const [one, other] = [state.lots.get(from), state.lots.get(into)]
  const food = other && foodAt(state, other.made.food, now)
  if (!one || !food) return undefined
  const count = portionsLeft(one)
  return {
    count: portionsLeft(other) + count,
    lastGood: lotLastGood({ ...other, ...joinedWith(other, one, count) }, food),
  }
}
