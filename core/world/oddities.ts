/**
 * What does not add up. Nothing here was refused or dropped: each is kept and shown as a question. Settling one is a fact
 * of its own, or whatever mends its cause: a count, a strike-out.
 */
import type { Day } from '../basis/days.ts'
import type { BottleId, FoodId, LotId, PlanId, TankId } from '../basis/ids.ts'
import { moment } from '../basis/zones.ts'
import type { DosingState, Nights } from '../dosing/state.ts'
import { fromTwoPhones, plansAt } from '../dosing/state.ts'
import type { FoodState, Observation } from '../food/state.ts'
import type { Entry, Unread } from '../ledger/entry.ts'
import { gather } from '../ledger/gather.ts'
import type { History } from '../ledger/history.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import { type Stamp, writtenAt } from '../ledger/stamp.ts'
import { canonical } from '../ledger/union.ts'
import type { TankState } from '../tank/state.ts'
import { parsed } from './codec/json.ts'
import type { ClashNoted, Fact } from './facts.ts'
import { encodeEntry } from './held.ts'

export type Oddity = { readonly key: string; readonly entries: readonly Stamp[] } & (
  | { readonly what: 'trayEmptierThanBook'; readonly lot: LotId; readonly short: number }
  | { readonly what: 'bottleEmptierThanBook'; readonly bottle: BottleId; readonly short: number }
  /** `more` nights than this one, noted by the same entries. */
  | { readonly what: 'loggedTwice'; readonly plan: PlanId; readonly night: Day; readonly more: number }
  | { readonly what: 'unknownStock'; readonly thing: BottleId | LotId }
  | { readonly what: 'unknownPlan'; readonly plan: PlanId }
  /** More than one plan feeds this food to this tank, each on its nights. `entries` are theirs, one a plan. */
  | { readonly what: 'twoPlans'; readonly tank: TankId; readonly food: FoodId }
  | { readonly what: 'aheadOfItsWriting' }
  /** More than the bottle holds: noted, not taken off it. */
  | { readonly what: 'doseSetAside' }
  /** The same id with another body came in a file. `clash` is the entry that keeps the other. */
  | { readonly what: 'twoBodies'; readonly clash: Stamp }
  /** Entries only a newer app reads. */
  | { readonly what: 'newerEntries'; readonly count: number }
  | { readonly what: 'countGapMoved'; readonly of: 'portions'; readonly thing: LotId; readonly seen: Observation }
  | { readonly what: 'countGapMoved'; readonly of: 'liquid'; readonly thing: BottleId; readonly seen: Observation }
)

/** Older entries arrived after a count: the book figure of that moment is another one now. */
const moved = (observations: readonly Observation[]): readonly Observation[] =>
  observations.filter((seen) => seen.bookNow !== seen.bookThen)
const gap = (seen: Observation) => ({
  key: `countGapMoved:${seen.entry}:${seen.bookNow}`,
  entries: [seen.entry],
  what: 'countGapMoved' as const,
  seen,
})

const stockOddities = ({ lots, bottles }: FoodState): Oddity[] => [
  ...[...lots.values()].flatMap((lot): Oddity[] => [
    ...(lot.left < 0
      ? ([
          {
            what: 'trayEmptierThanBook',
            key: `trayEmptierThanBook:${lot.id}:${lot.left}`,
            entries: [lot.entry],
            lot: lot.id,
            short: -lot.left,
          },
        ] as const)
      : []),
    ...moved(lot.observations).map((seen): Oddity => ({ ...gap(seen), of: 'portions', thing: lot.id })),
  ]),
  ...[...bottles.values()].flatMap((bottle): Oddity[] => [
    ...(bottle.left < 0
      ? ([
          {
            what: 'bottleEmptierThanBook',
            key: `bottleEmptierThanBook:${bottle.id}:${bottle.left}`,
            entries: [bottle.entry],
            bottle: bottle.id,
            short: -bottle.left,
          },
        ] as const)
      : []),
    ...moved(bottle.observations).map((seen): Oddity => ({ ...gap(seen), of: 'liquid', thing: bottle.id })),
  ]),
]

const nightOddities = ({ nights, plans }: DosingState): Oddity[] =>
  [...nights].flatMap(([plan, known]): Oddity[] => [
    ...(plans.has(plan)
      ? []
      : [
          {
            what: 'unknownPlan' as const,
            key: `unknownPlan:${plan}`,
            entries: [...known.values()].flat().map(({ entry }) => entry),
            plan,
          },
        ]),
    ...loggedTwice(plan, known),
  ])

const loggedTwice = (plan: PlanId, known: Nights): Oddity[] => {
  const twice = new Map<string, Extract<Oddity, { what: 'loggedTwice' }>>()
  // A plain loop: thousands of nights have one mark, and a list of them all would be made for nothing.
  for (const [night, marks] of known) {
    if (marks.length < 2 || !fromTwoPhones(marks)) continue
    const entries = marks.filter(({ what }) => what === 'given').map(({ entry }) => entry)
    const key = `loggedTwice:${[...entries].sort().join('+')}`
    // Two answers about a fortnight are one question, not seven.
    const before = twice.get(key)
    twice.set(
      key,
      before ? { ...before, more: before.more + 1 } : { what: 'loggedTwice', key, entries, plan, night, more: 0 },
    )
  }
  return [...twice.values()]
}

/** Dated more than the grace after it was written: a wrong day, or a clock put right since. */
export const aheadOfItsWriting = ({ id, fact }: Entry<Fact>): boolean => fact.at > writtenAt(id) + clockGrace

/** What the fold came upon on its way. */
export type CameUpon = {
  readonly ahead: readonly Stamp[]
  readonly setAside: readonly Stamp[]
  /** Entries that name a bottle or lot the ledger does not have. */
  readonly strangers: readonly { readonly entry: Stamp; readonly thing: BottleId | LotId }[]
  readonly clashes: readonly Entry<ClashNoted>[]
  readonly unread: readonly Unread[]
  readonly past: History<Fact>
}

export const findOddities = (
  state: TankState & FoodState & DosingState,
  { ahead, setAside, strangers, clashes, unread, past }: CameUpon,
  settled: ReadonlySet<string>,
): readonly Oddity[] =>
  [
    ...nightOddities(state),
    ...twoPlans(state, past),
    ...stockOddities(state),
    ...strangers.map(
      ({ entry, thing }): Oddity => ({
        what: 'unknownStock',
        key: `unknownStock:${entry}:${thing}`,
        entries: [entry],
        thing,
      }),
    ),
    ...ahead.map((id): Oddity => ({ what: 'aheadOfItsWriting', key: `aheadOfItsWriting:${id}`, entries: [id] })),
    ...setAside.map((id): Oddity => ({ what: 'doseSetAside', key: `doseSetAside:${id}`, entries: [id] })),
    ...twoBodies(clashes, unread, past),
    ...(unread.length > 0
      ? [
          {
            what: 'newerEntries' as const,
            // More of them ask again.
            key: `newerEntries:${unread.length}`,
            entries: unread.map(({ id }) => id),
            count: unread.length,
          },
        ]
      : []),
  ].filter(({ key }) => !settled.has(key))

/** Every snapshot has come by then: the fold asks of no particular day. */
const lastDay = moment(8_640_000_000_000_000)

const twoPlans = (state: TankState & DosingState, { all, struck }: History<Fact>): readonly Oddity[] => {
  const same = new Map<string, PlanId[]>()
  for (const { plan, tank, food } of plansAt(state, lastDay)) gather(same, `${tank} ${food}`, plan)
  return [...same.values()].flatMap((plans): Oddity[] => {
    if (plans.length < 2) return []
    const made = new Map<PlanId, { readonly id: Stamp; readonly tank: TankId; readonly food: FoodId }>()
    for (const { id, fact } of all)
      if (fact.kind === 'planMade' && plans.includes(fact.plan) && !struck.has(id)) made.set(fact.plan, { id, ...fact })
    const [first] = made.values()
    if (!first) return []
    const entries = [...made.values()].map(({ id }) => id).sort()
    const { tank, food } = first
    return [{ what: 'twoPlans', key: `twoPlans:${[...plans].sort().join('+')}`, entries, tank, food }]
  })
}

/**
 * One question an id, however many files disagreed; none once it is crossed out or not here any more. What the other phone
 * noted of the same clash came with its file, and says of the body here that it is another's: that is no question here.
 */
const twoBodies = (
  clashes: readonly Entry<ClashNoted>[],
  unread: readonly Unread[],
  { all, struck }: History<Fact>,
): readonly Oddity[] => {
  const asked = new Map<Stamp, Oddity>()
  if (clashes.length === 0) return []
  const disputed = new Set(clashes.map(({ fact }) => fact.entry))
  const here = new Map<Stamp, string>()
  for (const held of [...all, ...unread]) if (disputed.has(held.id)) here.set(held.id, canonical(encodeEntry(held)))
  for (const { id, fact } of clashes)
    if (!struck.has(fact.entry) && !asked.has(fact.entry) && canonical(parsed(fact.theirs)) !== here.get(fact.entry))
      asked.set(fact.entry, { what: 'twoBodies', key: `twoBodies:${fact.entry}`, entries: [fact.entry], clash: id })
  return [...asked.values()]
}
