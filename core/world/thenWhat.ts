/** Two questions of the weeks after a pour: pour once more, and may a fish that eats pods come? Reasons, never a promise. */
import { addDays, type Day } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import { type Moment, wallDay } from '../basis/zones.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import type { PodHuntersNoted } from '../seeding/facts.ts'
import { bottlesNeeded, reseedWeeks, usualReach } from '../seeding/needed.ts'
import { podHuntersAt, type SeedingState } from '../seeding/state.ts'
import { doseWater, type TankState, tankAt } from '../tank/state.ts'
import { type CountSeries, type CountTrend, countSeries, countTrend } from '../watch/series.ts'
import { type Pour, poursOf } from '../watch/since.ts'
import type { WatchState } from '../watch/state.ts'

type State = WatchState & SeedingState & TankState

export type ReseedReason =
  /** Three comparable counts in a row, each lower, and the last clearly so. */
  | { readonly why: 'falling'; readonly series: CountSeries; readonly trend: CountTrend }
  /** Fish that hunt pods have come since the last pour. */
  | { readonly why: 'podHunters'; readonly noted: PodHuntersNoted }
  /** Only one pour so far, and the weeks in which a second is usual. */
  | { readonly why: 'usualWeeks'; readonly from: Day; readonly to: Day }
export type Reseed = {
  readonly is: 'reasonsFor' | 'noReason' | 'nothingPoured'
  readonly reasons: readonly ReseedReason[]
  /** As many as a first pour of this tank wants. Undefined where its water is not known. */
  readonly bottles: number | undefined
}

/**
 * Whether there is reason to pour once more: counts that fall over three, fish that hunt pods come since, or the second to
 * fourth week after a first pour. Common practice, no source.
 */
export const reseedNow = (state: State, tank: TankId, now: Moment): Reseed => {
  const pours = poursOf(state, tank, now)
  const last = pours.at(-1)
  const described = tankAt(state, tank, now)
  const water = described && doseWater(described.water)
  const hunters = podHuntersAt(state, tank, now)
  const needed = water && bottlesNeeded(water, usualReach, hunters?.there ?? false)
  const bottles = needed?.ok ? needed.value.bottles : undefined
  if (!last || !described) return { is: 'nothingPoured', reasons: [], bottles }
  const reasons: ReseedReason[] = countSeries(state, tank).flatMap((series) => {
    const trend = trendSince(series, last.at)
    return trend.is === 'falling' ? [{ why: 'falling', series, trend }] : []
  })
  const came = huntersSince(state, tank, last.at, now)
  if (came) reasons.push({ why: 'podHunters', noted: came })
  const from = addDays(last.night, reseedWeeks.first * 7)
  const to = addDays(last.night, reseedWeeks.last * 7)
  const today = wallDay(now, described.zone)
  if (pours.length === 1 && today >= from && today <= to) reasons.push({ why: 'usualWeeks', from, to })
  return { is: reasons.length > 0 ? 'reasonsFor' : 'noReason', reasons, bottles }
}

/** What was counted before a pour has been answered by it, and does not speak for the time after. */
const trendSince = ({ points }: CountSeries, since: Moment): CountTrend =>
  countTrend({ points: points.filter(({ fact }) => fact.at > since) })

/** Noted as there after a pour, and not before it. */
const huntersSince = (state: State, tank: TankId, since: Moment, now: Moment): PodHuntersNoted | undefined => {
  const all = (state.podHunters.get(tank) ?? []).filter(({ at }) => at <= now + clockGrace)
  const latest = all.at(-1)
  const before = all.findLast(({ at }) => at <= since)
  return latest?.there && latest.at > since && !before?.there ? latest : undefined
}

/** Weeks a tank is left to its small life before a fish that eats it comes. Common practice, no source. */
export const fishWaitWeeks = { least: 4, most: 8 } as const

export type PodEaters = { readonly last: Pour | undefined; readonly trend: CountTrend | undefined } & (
  | { readonly is: 'nothingPoured' | 'already' }
  /** Too soon: not before `from`, and by many not before `to`. */
  | { readonly is: 'tooSoon'; readonly from: Day; readonly to: Day }
  /** Old enough, and fewer than three comparable counts: nobody can say that the numbers hold. */
  | { readonly is: 'countFirst'; readonly missing: number }
  | { readonly is: 'falling' }
  /** Old enough, and three counts that hold or rise. `to`: by many not before. */
  | { readonly is: 'mayCome'; readonly to: Day | undefined }
)

/** May the pod-eating fish come? Four to eight weeks since the last pour, and numbers that hold. Common practice, no source. */
export const podEaters = (state: State, tank: TankId, now: Moment): PodEaters => {
  const last = poursOf(state, tank, now).at(-1)
  const described = tankAt(state, tank, now)
  if (!last || !described) return { is: 'nothingPoured', last, trend: undefined }
  // Of the series counted last that can tell at all.
  const trends = countSeries(state, tank).map((series) => trendSince(series, last.at))
  const trend = trends.find(({ is }) => is === 'falling') ?? trends.find(({ is }) => is !== 'tooFew') ?? trends[0]
  if (podHuntersAt(state, tank, now)?.there) return { is: 'already', last, trend }
  const today = wallDay(now, described.zone)
  const from = addDays(last.night, fishWaitWeeks.least * 7)
  const to = addDays(last.night, fishWaitWeeks.most * 7)
  if (today < from) return { is: 'tooSoon', from, to, last, trend }
  if (!trend || trend.is === 'tooFew')
    return { is: 'countFirst', missing: 3 - (trend?.points.length ?? 0), last, trend }
  if (trend.is === 'falling') return { is: 'falling', last, trend }
  return { is: 'mayCome', to: today < to ? to : undefined, last, trend }
}
