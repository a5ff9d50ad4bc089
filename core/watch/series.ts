/** Counts of one spot taken in one way, each with its range, and what the last of them says beside the earlier ones. */
import type { TankId } from '../basis/ids.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { type CountsCompared, compareCounts } from './compare.ts'
import {
  type AnimalDensity,
  animalDensity,
  type Looks,
  litresInLook,
  type TorchCount,
  torchCount,
  torchPanes,
} from './counts.ts'
import type { Looked, SmallLifeCounted } from './facts.ts'
import type { WatchState } from './state.ts'
import { watchedOf } from './state.ts'

/** Minutes of dark in which counts by torch are alike: before and after, other animals are out. Common practice, no source. */
export const torchHours = { from: 60, to: 120 } as const
/** Square centimetres that a count on a pane is told for: 10 by 10. */
export const paneSquare = 100

export type CountHours = 'inTheHour' | 'otherHour' | 'notKnown'
export type CountPoint = {
  readonly entry: Stamp
  readonly fact: SmallLifeCounted
  readonly looks: Looks
  /** Per 10 by 10 cm of a pane, or per litre of tank water. */
  readonly density: AnimalDensity
  /** The middle of three panes or more by torch. */
  readonly torch?: TorchCount
  /** Of a count by torch alone: whether it fell in the second hour of dark. */
  readonly hours?: CountHours
}

export type CountChange =
  | { readonly is: 'compared'; readonly with: CountPoint; readonly says: CountsCompared }
  /** By torch, and not both in the second hour of dark: what differs may be the hour. */
  | { readonly is: 'otherHours'; readonly with: CountPoint }

export type CountSeries = {
  readonly key: string
  readonly how: Looked['how']
  /** As she wrote it last. */
  readonly where?: string
  /** A jar: micrometres of its sieve. */
  readonly sieve?: number
  /** A jar whose sieve lets some through, nobody knows how many: every figure is a least one. */
  readonly least: boolean
  /** By torch: seconds a pane. */
  readonly seconds?: number
  readonly per: 'square' | 'litre'
  /** In the order they were taken; never empty. */
  readonly points: readonly CountPoint[]
  readonly last: CountPoint
  /** The last beside the one before, and beside the first of all; undefined with one count, `first` with two. */
  readonly previous: CountChange | undefined
  readonly first: CountChange | undefined
}

/**
 * The counts of a tank, those of one way and one spot together: only such are compared. By torch also the seconds must be
 * the same, in a jar the sieve, and whether it is known what share it keeps: a figure of all is not beside a least one. The
 * series counted last comes first.
 */
export const countSeries = (state: WatchState, tank: TankId): readonly CountSeries[] => {
  const byKey = new Map<string, CountPoint[]>()
  for (const { entry, fact } of watchedOf(state, tank).counted) {
    const point = pointOf(entry, fact)
    if (!point) continue
    const key = keyOf(fact)
    byKey.set(key, [...(byKey.get(key) ?? []), point])
  }
  return [...byKey]
    .flatMap(([key, points]) => seriesOf(key, points) ?? [])
    .toSorted((a, b) => b.last.fact.at - a.last.fact.at)
}

const keyOf = ({ looked, where = '' }: SmallLifeCounted): string => {
  const condition =
    looked.how === 'torch'
      ? looked.seconds
      : looked.how === 'jar'
        ? `${looked.sieve ?? ''}${looked.kept === undefined ? '' : '/kept'}`
        : ''
  return `${looked.how}/${condition}/${where.trim().toLowerCase()}`
}

/** Undefined for counts that another version may have written and nothing can be reckoned of. */
const pointOf = (entry: Stamp, fact: SmallLifeCounted): CountPoint | undefined => {
  const { looked, counts } = fact
  const each = looked.how === 'jar' ? litresInLook(looked) : looked.frame / paneSquare
  const looks = { counts, each }
  const density = animalDensity(looks)
  if (!density.ok) return undefined
  if (looked.how !== 'torch') return { entry, fact, looks, density: density.value }
  const torch = counts.length >= torchPanes ? torchCount(counts) : undefined
  return {
    entry,
    fact,
    looks,
    density: density.value,
    ...(torch?.ok ? { torch: torch.value } : {}),
    hours: torchHour(looked.minutesDark),
  }
}

/** @param minutesDark since the lamp went out */
export const torchHour = (minutesDark: number | undefined): CountHours =>
  minutesDark === undefined
    ? 'notKnown'
    : minutesDark >= torchHours.from && minutesDark <= torchHours.to
      ? 'inTheHour'
      : 'otherHour'

const seriesOf = (key: string, points: readonly CountPoint[]): CountSeries | undefined => {
  const last = points.at(-1)
  const begin = points[0]
  if (!last || !begin) return undefined
  const before = points.at(-2)
  const { looked, where } = last.fact
  return {
    key,
    how: looked.how,
    ...(where ? { where } : {}),
    ...(looked.how === 'jar' && looked.sieve !== undefined ? { sieve: looked.sieve } : {}),
    least: looked.how === 'jar' && looked.kept === undefined,
    ...(looked.how === 'torch' ? { seconds: looked.seconds } : {}),
    per: looked.how === 'jar' ? 'litre' : 'square',
    points,
    last,
    previous: before && changeOf(last, before),
    first: points.length > 2 ? changeOf(last, begin) : undefined,
  }
}

/** Counts by torch are compared where both fell in the second hour of dark. */
const comparable = (...points: readonly CountPoint[]): boolean =>
  points.every(({ hours }) => hours === undefined || hours === 'inTheHour')

const changeOf = (now: CountPoint, before: CountPoint): CountChange | undefined => {
  if (!comparable(now, before)) return { is: 'otherHours', with: before }
  const says = compareCounts(now.looks, before.looks)
  return says.ok ? { is: 'compared', with: before, says: says.value } : undefined
}

/** As many counts as a trend is told from. House rule. */
export const trendCounts = 3

export type CountTrend = {
  /** `tooFew`: fewer than three comparable counts. */
  readonly is: 'tooFew' | 'falling' | 'steady' | 'rising'
  readonly points: readonly CountPoint[]
}

/**
 * The last three comparable counts: falling where each is lower than the one before and the last clearly lower than the
 * first of them, rising likewise, else steady. A fall that chance could make is none.
 */
export const countTrend = ({ points }: Pick<CountSeries, 'points'>): CountTrend => {
  const three = points.filter((point) => comparable(point)).slice(-trendCounts)
  const [a, b, c] = three
  if (!a || !b || !c) return { is: 'tooFew', points: three }
  const says = compareCounts(c.looks, a.looks)
  const [x, y, z] = [a, b, c].map(perOf) as [number, number, number]
  const clear = says.ok ? says.value.is : 'noClearChange'
  if (clear === 'fewer' && x > y && y > z) return { is: 'falling', points: three }
  if (clear === 'more' && x < y && y < z) return { is: 'rising', points: three }
  return { is: 'steady', points: three }
}
const perOf = ({ density }: CountPoint): number => (density.is === 'about' ? density.per : 0)
