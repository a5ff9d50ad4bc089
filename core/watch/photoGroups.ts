/** The photos of one tank, those that show the same together. */
import type { ParcelId, RunId, TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { AnyFact } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { planOfRun, type SeedingState } from '../seeding/state.ts'
import type { PhotoOf } from './facts.ts'
import { byTime, type PhotoNoted } from './photos.ts'
import { type CountSeries, countSeries } from './series.ts'
import { type WatchState, watchedOf } from './state.ts'

/** What a photo of a tank shows: the tank as a whole, a spot that is counted, a kind, or a pour. */
export type PhotoShows =
  | { readonly shows: 'tank' }
  | { readonly shows: 'spot'; readonly series: CountSeries }
  | { readonly shows: 'kind'; readonly form: string | undefined }
  | { readonly shows: 'pour' }
export type PhotoGroup = PhotoShows & {
  readonly key: string
  /** In the order they were taken; never empty. */
  readonly photos: readonly PhotoNoted[]
}

/**
 * All photos of a tank, those that show the same together, so that they can be laid side by side: a spot that is counted
 * again and again, a kind, its pours, the tank as a whole. Whatever else was told of it stands with the last: a count that
 * was crossed out takes no photo along. The group of the newest photo comes first.
 */
export const photosOfTank = (
  state: WatchState & SeedingState & { readonly history: History<AnyFact> },
  tank: TankId,
  now: Moment,
): readonly PhotoGroup[] => {
  const shows = showsByEntry(state, tank)
  for (const entry of toldOtherwise(state, shows, tank)) shows.set(entry, whole)
  const groups = new Map<string, { shows: PhotoShows; photos: PhotoNoted[] }>()
  for (const photo of state.photos.toSorted(byTime)) {
    const found = showing(state, photo.fact.of, tank, shows, now)
    if (!found) continue
    const group = groups.get(found.key) ?? { shows: found.shows, photos: [] }
    group.photos.push(photo)
    groups.set(found.key, group)
  }
  return [...groups]
    .map(([key, group]) => ({ key, ...group.shows, photos: group.photos }))
    .toSorted((a, b) => (b.photos.at(-1)?.fact.at ?? 0) - (a.photos.at(-1)?.fact.at ?? 0))
}

type Shown = { readonly key: string; readonly shows: PhotoShows }
const pour: Shown = { key: 'pour', shows: { shows: 'pour' } }
const whole: Shown = { key: 'tank', shows: { shows: 'tank' } }

/** Entries a photo is of that stand in none of the lists: crossed out since, or of something else about the tank. One walk for all. */
const toldOtherwise = (
  { photos, history }: WatchState & { readonly history: History<AnyFact> },
  shows: ReadonlyMap<Stamp, Shown>,
  tank: TankId,
): readonly Stamp[] => {
  const wanted = new Set(
    photos.flatMap(({ fact: { of } }) => ('entry' in of && !shows.has(of.entry) ? [of.entry] : [])),
  )
  if (wanted.size === 0) return []
  return history.all.flatMap(({ id, fact }) => (wanted.has(id) && 'tank' in fact && fact.tank === tank ? [id] : []))
}

const showsByEntry = (state: WatchState, tank: TankId): Map<Stamp, Shown> => {
  const all = new Map<Stamp, Shown>()
  for (const series of countSeries(state, tank))
    for (const { entry } of series.points)
      all.set(entry, { key: `spot ${series.key}`, shows: { shows: 'spot', series } })
  const { seen, poured } = watchedOf(state, tank)
  for (const { entry, fact } of seen)
    all.set(entry, { key: `kind ${fact.form ?? ''}`, shows: { shows: 'kind', form: fact.form } })
  for (const { entry } of poured) all.set(entry, pour)
  return all
}

/** Undefined where it is of another tank, or of a parcel, which is of none. */
const showing = (
  state: SeedingState,
  of: PhotoOf,
  tank: TankId,
  byEntry: ReadonlyMap<Stamp, Shown>,
  now: Moment,
): Shown | undefined => {
  if ('tank' in of) return of.tank === tank ? whole : undefined
  if ('entry' in of) return byEntry.get(of.entry)
  if ('parcel' in of) return parcelIn(state, of.parcel, tank, now) ? pour : undefined
  return runIn(state, of.run, tank, now) ? pour : undefined
}
const runIn = ({ runs }: SeedingState, run: RunId, tank: TankId, now: Moment): boolean => {
  const told = runs.get(run)
  return told !== undefined && planOfRun(told, now)?.tank === tank
}
/** A parcel is of the tanks it was planned to go into. */
const parcelIn = (state: SeedingState, parcel: ParcelId, tank: TankId, now: Moment): boolean =>
  [...state.runs.values()].some((run) => {
    const plan = planOfRun(run, now)
    return plan?.parcel === parcel && plan.tank === tank
  })
