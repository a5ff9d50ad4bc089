/**
 * What does not add up. Nothing here was refused or dropped: each is kept and shown as a question. Settling one is a fact
 * of its own, or whatever mends its cause: a count, a strike-out.
 */
import type { Day } from '../basis/days.ts'
import type { BottleId, LotId, PlanId } from '../basis/ids.ts'
import type { DosingState, Nights } from '../dosing/state.ts'
import { fromTwoPhones } from '../dosing/state.ts'
import type { FoodState, Observation } from '../food/state.ts'
import type { Entry } from '../ledger/entry.ts'
import { clockGrace } from '../ledger/snapshot.ts'
import { type Stamp, writtenAt } from '../ledger/stamp.ts'
import type { Fact } from './facts.ts'

export type Oddity = { readonly key: string; readonly entries: readonly Stamp[] } & (
  | { readonly what: 'trayEmptierThanBook'; readonly lot: LotId; readonly short: number }
  | { readonly what: 'bottleEmptierThanBook'; readonly bottle: BottleId; readonly short: number }
  | { readonly what: 'loggedTwice'; readonly plan: PlanId; readonly night: Day }
  | { readonly what: 'unknownStock'; readonly thing: BottleId | LotId }
  | { readonly what: 'unknownPlan'; readonly plan: PlanId }
  | { readonly what: 'aheadOfItsWriting' }
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
  const twice: Oddity[] = []
  // A plain loop: thousands of nights have one mark, and a list of them all would be made for nothing.
  for (const [night, marks] of known) {
    if (marks.length < 2 || !fromTwoPhones(marks)) continue
    const entries = marks.filter(({ what }) => what === 'given').map(({ entry }) => entry)
    twice.push({ what: 'loggedTwice', key: `loggedTwice:${[...entries].sort().join('+')}`, entries, plan, night })
  }
  return twice
}

/** Dated more than the grace after it was written: a wrong day, or a clock put right since. */
export const aheadOfItsWriting = ({ id, fact }: Entry<Fact>): boolean => fact.at > writtenAt(id) + clockGrace

export const findOddities = (
  state: FoodState & DosingState,
  ahead: readonly Stamp[],
  strangers: readonly { readonly entry: Stamp; readonly thing: BottleId | LotId }[],
  settled: ReadonlySet<string>,
): readonly Oddity[] =>
  [
    ...nightOddities(state),
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
  ].filter(({ key }) => !settled.has(key))
