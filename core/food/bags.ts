/**
 * Which freezing the portions of a bag come from, through moves, joined bags and counts. Counts are whole portions; each
 * freezing's ways out and what of it still stands somewhere sum to what was made.
 */
import type { LotId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { LotsJoined, PortionsMoved } from './facts.ts'
import { countedAfter } from './folding.ts'
import type { FoodState, Lot } from './state.ts'

/** Portions that left: to a tank, to the floor, to the bin, to somebody else, or missing when counted (below zero: found). */
export type Ways = {
  readonly given: number
  readonly lost: number
  readonly discarded: number
  readonly givenAway: number
  readonly missing: number
}
type Way = keyof Ways

/** A freezing and so many of its portions. */
type Held = readonly [origin: LotId, count: number]

export const emptyBags = ({ lots }: FoodState) => {
  const ways = new Map<LotId, Record<Way, number>>()
  /** By bag, then by freezing. A part has its portions from the start, as the fold gives them to it. */
  const holds = new Map<LotId, Map<LotId, number>>()
  const rootOf = (lot: Lot): LotId => {
    const parent = lot.partOf === undefined ? undefined : lots.get(lot.partOf)
    return parent ? rootOf(parent) : lot.id
  }
  for (const lot of lots.values()) {
    holds.set(lot.id, new Map([[rootOf(lot), lot.made.portions]]))
    if (lot.partOf === undefined) ways.set(lot.id, { given: 0, lost: 0, discarded: 0, givenAway: 0, missing: 0 })
  }

  const put = (bag: LotId, origin: LotId, count: number) => {
    const held = holds.get(bag)
    if (held && count !== 0) held.set(origin, (held.get(origin) ?? 0) + count)
  }
  const inBag = (bag: LotId): number => {
    let sum = 0
    for (const count of holds.get(bag)?.values() ?? []) sum += count
    return sum
  }
  const leave = (origin: LotId, way: Way, count: number) => {
    const of = ways.get(origin)
    if (of) of[way] += count
  }

  /** The older first; what is not there comes out of the bag's own freezing all the same, as the book has it. */
  const pull = (lot: Lot, count: number): readonly Held[] => {
    const held = holds.get(lot.id) ?? new Map<LotId, number>()
    const pulled: Held[] = []
    let more = count
    const older = [...held].sort(([a], [b]) => ((frozenOn(a) ?? '') < (frozenOn(b) ?? '') ? -1 : 1))
    for (const [origin, there] of held.size > 1 ? older : []) {
      const part = Math.min(more, Math.max(0, there))
      if (part === 0) continue
      pulled.push([origin, part])
      more -= part
    }
    if (more !== 0) pulled.push([rootOf(lot), more])
    for (const [origin, part] of pulled) put(lot.id, origin, -part)
    return pulled
  }
  const frozenOn = (origin: LotId) => lots.get(origin)?.made.frozenOn

  return {
    /** What left, by freezing. */
    take: (id: LotId, at: Moment, count: number, way: Exclude<Way, 'missing'>): readonly Held[] => {
      const lot = lots.get(id)
      if (!lot) return []
      const pulled: readonly Held[] = countedAfter(lot, at) ? [[lot.id, count]] : pull(lot, count)
      if (!countedAfter(lot, at)) for (const [origin, part] of pulled) leave(origin, way, part)
      return pulled
    },
    find: (id: LotId, at: Moment, count: number) => {
      const lot = lots.get(id)
      if (!lot || countedAfter(lot, at)) return
      put(id, rootOf(lot), count)
      leave(rootOf(lot), 'missing', -count)
    },
    recount: (id: LotId, found: number) => {
      const lot = lots.get(id)
      if (!lot) return
      const gap = inBag(id) - found
      if (gap > 0) for (const [origin, part] of pull(lot, gap)) leave(origin, 'missing', part)
      else {
        put(id, rootOf(lot), -gap)
        leave(rootOf(lot), 'missing', gap)
      }
    },
    move: (entry: Stamp, { from, lot: to, count, at }: PortionsMoved) => {
      const lot = lots.get(from)
      const part = lots.get(to)
      if (!lot || part?.entry !== entry || countedAfter(lot, at)) return
      put(to, rootOf(part), -count)
      for (const [origin, moved] of pull(lot, count)) put(to, origin, moved)
    },
    join: ({ from, into, count, at }: LotsJoined) => {
      const source = lots.get(from)
      const bag = lots.get(into)
      if (!source || !bag || source === bag || source.made.each !== bag.made.each) return
      // Out of a bag that was counted since: its own figure knows of it already.
      const pulled: readonly Held[] = countedAfter(source, at) ? [[source.id, count]] : pull(source, count)
      for (const [origin, part] of pulled) put(into, origin, part)
      // Into one that was counted since: they are among those she saw.
      if (countedAfter(bag, at)) put(into, bag.id, -count)
    },
    /** Each freezing with what left it and where the rest stands. */
    byOrigin: () => {
      const standing = new Map<LotId, { lot: Lot; count: number }[]>()
      for (const lot of lots.values())
        for (const [origin, count] of holds.get(lot.id) ?? []) {
          if (count === 0) continue
          const at = standing.get(origin)
          if (at) at.push({ lot, count })
          else standing.set(origin, [{ lot, count }])
        }
      return [...ways].map(([lot, left]) => ({ lot, ...left, standing: standing.get(lot) ?? [] }))
    },
  }
}
