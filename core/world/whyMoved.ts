/**
 * Why the first night without food moved: the ledger folded as it was when a date was last shown, and again with what has
 * arrived since, one group after the other. What each adds is what she would have seen had she looked in between, so that
 * the parts always come to the whole.
 */
import { type Day, dayFromNumber, dayNumber } from '../basis/days.ts'
import type { FoodId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { walk } from '../dosing/walk.ts'
import type { Entry } from '../ledger/entry.ts'
import { gather } from '../ledger/gather.ts'
import { type Stamp, writtenBy } from '../ledger/stamp.ts'
import type { Fact, FactKind } from './facts.ts'
import { fold } from './fold.ts'
import type { World } from './world.ts'

/** The latest entry of each phone: another phone's may arrive late, but always in its own order. */
export type SeenEntries = Readonly<Record<string, Stamp>>
export type LastsShown = { readonly bareNight: Day; readonly seen: SeenEntries }

export type MovedBecause =
  /** More or less was given than the plans say; nights that went by without a dose are less. */
  | { readonly about: 'nights' }
  /** Entries of one kind about one thing that stand, in the order they happened. */
  | { readonly about: 'entries'; readonly entries: readonly Entry<Fact>[] }
  /** What was known then and is crossed out now. */
  | { readonly about: 'crossedOut'; readonly entries: readonly Entry<Fact>[] }
  /** What no part alone accounts for. */
  | { readonly about: 'together' }
/** Days later, below zero sooner; never 0. */
export type MovedPart = { readonly because: MovedBecause; readonly days: number }
export type Moved = {
  readonly from: Day
  readonly to: Day
  readonly days: number
  readonly parts: readonly MovedPart[]
}

export const seenOf = ({ history, unread }: Pick<World, 'history' | 'unread'>): SeenEntries => {
  const seen: Record<string, Stamp> = {}
  for (const { id } of [...history.all, ...unread]) {
    const phone = writtenBy(id)
    const latest = seen[phone]
    if (latest === undefined || id > latest) seen[phone] = id
  }
  return seen
}

/** More groups than anybody reads are told as one. Our own judgement. */
const mostGroups = 24

/** Undefined where no plan feeds the food now, or the date is where it was. */
export const whyMoved = (world: World, food: FoodId, shown: LastsShown, now: Moment): Moved | undefined => {
  const to = bareOf(world, food, now)
  const from = dayNumber(shown.bareNight)
  if (to === undefined || to === from) return undefined
  const { all } = world.history
  const isNew = ({ id }: Entry<Fact>): boolean => id > (shown.seen[writtenBy(id)] ?? '')
  const groups = groupsOf(world, food, all.filter(isNew), isNew)
  const told = groups.slice(0, mostGroups)

  const included = new Set<Stamp>()
  const parts: MovedPart[] = []
  let nights = 0
  let together = 0
  // Whose effect has no date of its own: no plan fed the food just then.
  let dateless = false
  const at = (): number | undefined =>
    bareOf(fold(all.filter((entry) => !isNew(entry) || included.has(entry.id))), food, now)
  let before = from
  const step = (because: MovedBecause) => {
    const date = at()
    if (date === undefined) {
      dateless = true
      return
    }
    const days = date - before
    before = date
    if (dateless) together += days
    else if (because.about === 'nights') nights += days
    else if (days !== 0) parts.push({ because, days })
    dateless = false
  }
  // Time alone: every night since then is one without a dose, until the doses are told.
  step({ about: 'nights' })
  for (const { because, entries } of told) {
    for (const { id } of entries) included.add(id)
    step(because)
  }
  together += to - before
  if (nights !== 0) parts.unshift({ because: { about: 'nights' }, days: nights })
  if (together !== 0) parts.push({ because: { about: 'together' }, days: together })
  return { from: shown.bareNight, to: dayFromNumber(to), days: to - from, parts }
}

const bareOf = (world: World, food: FoodId, now: Moment): number | undefined => walk(world, food, now)?.bare[0]?.on

type Group = { readonly because: MovedBecause; readonly entries: readonly Entry<Fact>[] }

/** They move no food and no night. */
const never: ReadonlySet<FactKind> = new Set([
  'noteWritten',
  'phoneNamed',
  'clashNoted',
  'questionSettled',
  'bottlesShaken',
  'wellsSeen',
  'trayCut',
])
const ofNights: ReadonlySet<FactKind> = new Set([
  'doseGiven',
  'doseSetAside',
  'nightSkipped',
  'nightUnknown',
  'nightsMissed',
  'nextNightChosen',
])
/** Told before the doses: what came may have been eaten from since. */
const arrivals: ReadonlySet<FactKind> = new Set([
  'foodDescribed',
  'bottleRecorded',
  'portionsFrozen',
  'portionsOnHand',
  'portionsFound',
])

/** In the order they are told: what came, what was given, and the rest as it happened. */
const groupsOf = (
  world: World,
  food: FoodId,
  arrived: readonly Entry<Fact>[],
  isNew: (entry: Entry<Fact>) => boolean,
): readonly Group[] => {
  const byId = new Map(world.history.all.map((entry) => [entry.id, entry]))
  const poured = new Set(
    arrived.flatMap(({ fact }) =>
      fact.kind === 'doseGiven' ? fact.taken.flatMap((taken) => (taken.from === 'bottle' ? [taken.bottle] : [])) : [],
    ),
  )
  const inNights = (fact: Fact): boolean =>
    // A bottle that was opened for a dose was to be opened for it.
    ofNights.has(fact.kind) || (fact.kind === 'bottleOpened' && poured.has(fact.bottle))
  const keyed = new Map<string, Entry<Fact>[]>()
  for (const entry of arrived) {
    const target = entry.fact.kind === 'entryStruckOut' ? byId.get(entry.fact.target) : undefined
    const { fact } = target ?? entry
    if (never.has(fact.kind) || fact.kind === 'entryStruckOut' || isOfAnother(world, fact, food)) continue
    const struckOld = target !== undefined && !isNew(target)
    if (struckOld) gather(keyed, `struck/${keyOf(fact)}`, entry)
    else gather(keyed, inNights(fact) ? 'nights' : keyOf(fact), entry)
  }
  const groups = [...keyed].map(([key, entries]): Group => {
    if (key === 'nights') return { because: { about: 'nights' }, entries }
    if (key.startsWith('struck/')) {
      const targets = entries.flatMap(({ fact }) =>
        fact.kind === 'entryStruckOut' ? (byId.get(fact.target) ?? []) : [],
      )
      return { because: { about: 'crossedOut', entries: targets }, entries }
    }
    const standing = entries.filter(({ id, fact }) => fact.kind !== 'entryStruckOut' && !world.history.struck.has(id))
    return { because: { about: 'entries', entries: standing }, entries }
  })
  const rank = ({ because, entries }: Group): number => {
    if (because.about === 'nights') return 1
    const [first] = entries
    return because.about === 'entries' && first && arrivals.has(first.fact.kind) ? 0 : 2
  }
  return groups.sort((a, b) => rank(a) - rank(b))
}

/** One kind, one thing: the narrowest it names. */
const keyOf = (fact: Fact): string => {
  const named = fact as { readonly [name: string]: unknown }
  const name = ['lot', 'bottle', 'plan', 'food', 'tank', 'place'].find((each) => typeof named[each] === 'string')
  return [fact.kind, name && named[name], named.fate].join('/')
}

const isOfAnother = (world: World, fact: Fact, food: FoodId): boolean => {
  const about =
    'food' in fact
      ? fact.food
      : 'lot' in fact
        ? world.lots.get(fact.lot)?.made.food
        : 'bottle' in fact
          ? world.bottles.get(fact.bottle)?.recorded.food
          : undefined
  return about !== undefined && about !== food
}
