/** What would not be used in time, and what would change that: the same walk, taken oftener or with one tank more. */
import type { Microlitres } from '../basis/amounts.ts'
import { dayNumber } from '../basis/days.ts'
import type { FoodId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { type FoodState, foodAt } from '../food/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { nightOf, type TankState, tanksAt } from '../tank/state.ts'
import { bandOf } from './band.ts'
import type { PlanMade } from './facts.ts'
import { type Source, servingFrom, sourcesOf } from './serve.ts'
import { type DosingState, planFor } from './state.ts'
import { roundsOf, type WalkRound, walkOf } from './walk.ts'

type State = FoodState & DosingState & TankState

/** A way to use more of it in time, with what would still be left over. */
export type UseUp = { readonly left: readonly Source[] } & (
  | { readonly by: 'oftener'; readonly plans: readonly PlanMade[]; readonly everyNights: number }
  | {
      readonly by: 'sharing'
      readonly tank: TankDescribed
      readonly amount: Microlitres
      readonly everyNights: number
    }
)

/** What is good tonight, holds a dose, and passes its last good day before anybody takes it. */
const strandedBy = (rounds: readonly WalkRound[], sources: readonly Source[]): readonly Source[] => {
  const tonight = Math.min(...rounds.map(({ next }) => next))
  return walkOf(rounds, sources).sources.flatMap(({ source }) => {
    const { lastGood } = source
    const could = lastGood !== undefined && dayNumber(lastGood) >= tonight
    return could && rounds.some(({ plan }) => servingFrom(source, plan.amount)) ? [source] : []
  })
}
const amountIn = (sources: readonly Source[]): number =>
  sources.reduce((sum, source) => sum + (source.from === 'portions' ? source.left * source.each : source.left), 0)

/**
 * The gentlest change of each sort that uses everything in time, or as near to it as there is; none where nothing would be
 * left over. Oftener: no plan more often than every so many nights. Sharing: with a tank that does not get this food yet,
 * the low end of its range, as often as the food's label says.
 */
export const inTimeBy = (state: State, food: FoodId, now: Moment): readonly UseUp[] => {
  const rounds = roundsOf(state, food, now)
  if (rounds.length === 0) return []
  const sources = sourcesOf(state, food, now)
  const left = strandedBy(rounds, sources)
  if (left.length === 0) return []
  const ways = [oftener(rounds, sources), sharing(state, food, now, rounds, sources)]
  return ways
    .flatMap((way) => (way && amountIn(way.left) < amountIn(left) ? [way] : []))
    .sort((a, b) => amountIn(a.left) - amountIn(b.left))
}

const oftener = (rounds: readonly WalkRound[], sources: readonly Source[]): UseUp | undefined => {
  let way: UseUp | undefined
  for (let every = Math.max(...rounds.map(({ plan }) => plan.everyNights)) - 1; every >= 1; every -= 1) {
    const changed = rounds.map(({ plan, next }) => ({
      plan: { ...plan, everyNights: Math.min(plan.everyNights, every) },
      next,
    }))
    const plans = rounds.flatMap(({ plan }) => (plan.everyNights > every ? [plan] : []))
    way = { by: 'oftener', plans, everyNights: every, left: strandedBy(changed, sources) }
    if (way.left.length === 0) break
  }
  return way
}

const sharing = (
  state: State,
  food: FoodId,
  now: Moment,
  rounds: readonly WalkRound[],
  sources: readonly Source[],
): UseUp | undefined => {
  const described = foodAt(state, food, now)
  if (!described) return undefined
  const ways = tanksAt(state, now).flatMap((tank): UseUp[] => {
    const shown = planFor(state, tank.tank, food, now) ? undefined : bandOf(tank, described)?.shown
    if (!shown || shown === 'tooSmall') return []
    const { everyNights } = described
    const next = dayNumber(nightOf(now, tank))
    const [like] = rounds
    if (!like) return []
    const plan: PlanMade = { ...like.plan, tank: tank.tank, amount: shown.low, everyNights }
    const left = strandedBy([...rounds, { plan, next }], sources)
    return [{ by: 'sharing', tank, amount: shown.low, everyNights, left }]
  })
  return ways.sort((a, b) => amountIn(a.left) - amountIn(b.left))[0]
}
