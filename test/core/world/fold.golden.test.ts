/**
 * Households as each version wrote them, and the worlds made of them, read by eye once and kept since. A later version may
 * show more, but what is there may never come out otherwise: people's own ledgers are full of it.
 */
import { describe, expect, test } from 'vitest'
import {
  exportLedger,
  type FactKind,
  factKinds,
  fold,
  isUnread,
  type Oddity,
  readLedgerFile,
} from '../../../core/index.ts'
import text1 from '../../fixtures/ledger-1.jsonl?raw'
import folded1 from '../../fixtures/ledger-1.world.json'
import text2 from '../../fixtures/ledger-2.jsonl?raw'
import folded2 from '../../fixtures/ledger-2.world.json'
import text3 from '../../fixtures/ledger-3.jsonl?raw'
import folded3 from '../../fixtures/ledger-3.world.json'
import text4 from '../../fixtures/ledger-4.jsonl?raw'
import folded4 from '../../fixtures/ledger-4.world.json'
import text5 from '../../fixtures/ledger-5.jsonl?raw'
import folded5 from '../../fixtures/ledger-5.world.json'
import { done } from '../../support/given.ts'
import { readable } from '../../support/givenReadable.ts'

/** A new kind does not compile until it stands here, and does not pass until the newest golden ledger has it. */
const everyKind = {
  tankDescribed: true,
  tankRetired: true,
  lampSeen: true,
  powerCut: true,
  foodDescribed: true,
  foodRetired: true,
  placeDescribed: true,
  placeRetired: true,
  bottleRecorded: true,
  bottleOpened: true,
  bottleFinished: true,
  bottlesShaken: true,
  bottleMoved: true,
  portionsFrozen: true,
  portionsOnHand: true,
  lotMoved: true,
  portionsMoved: true,
  wellsSeen: true,
  trayCut: true,
  portionsCounted: true,
  liquidMeasured: true,
  portionsGone: true,
  portionsGivenAway: true,
  portionsFound: true,
  liquidGone: true,
  freezerThawed: true,
  fridgeTroubled: true,
  bottleThawed: true,
  foodSmelled: true,
  foodSetAside: true,
  foodTakenBack: true,
  lotsJoined: true,
  purchaseRecorded: true,
  foodOrdered: true,
  orderingDescribed: true,
  daysAway: true,
  planMade: true,
  planEnded: true,
  planHeld: true,
  nextNightChosen: true,
  doseGiven: true,
  doseGivenOffPlan: true,
  doseSetAside: true,
  nightSkipped: true,
  nightUnknown: true,
  nightsMissed: true,
  nightsCounted: true,
  equipmentDescribed: true,
  tankTreated: true,
  podHuntersNoted: true,
  liveBottlesCame: true,
  liveBottlesUncapped: true,
  seedingPlanned: true,
  seedingStepDone: true,
  seedingWaterTaken: true,
  seedingPoured: true,
  seedingStopped: true,
  letterWritten: true,
  livePoured: true,
  smallLifeCounted: true,
  kindSeen: true,
  photoKept: true,
  noteWritten: true,
  phoneNamed: true,
  clashNoted: true,
  entryStruckOut: true,
  questionSettled: true,
} satisfies Record<FactKind, true>

const everyOddity = {
  trayEmptierThanBook: true,
  bottleEmptierThanBook: true,
  loggedTwice: true,
  unknownStock: true,
  unknownPlan: true,
  twoPlans: true,
  aheadOfItsWriting: true,
  doseSetAside: true,
  twoBodies: true,
  newerEntries: true,
  countGapMoved: true,
} satisfies Record<Oddity['what'], true>

const read = (text: string) => done(readLedgerFile(text))
const golden = [
  { name: 'first', text: text1, folded: folded1 },
  { name: 'second', text: text2, folded: folded2 },
  { name: 'third', text: text3, folded: folded3 },
  { name: 'fourth', text: text4, folded: folded4 },
  { name: 'fifth', text: text5, folded: folded5 },
]

describe.each(golden)('the $name golden ledger', ({ text, folded }) => {
  const { header, entries, unread } = read(text)
  const world = Object(readable(fold(entries)))

  test('folds to the world it folded to then, whatever else is shown today', () => {
    const { oddities, ...rest } = folded
    expect(world).toMatchObject(rest)
  })

  test('asks what it asked then, in the same order', () => {
    const keys = folded.oddities.map(({ key }) => key)
    const today: typeof folded.oddities = world.oddities
    expect(today.filter(({ key }) => keys.includes(key))).toMatchObject(folded.oddities)
  })

  test('is exported again letter for letter, the entry of a newer version included', () => {
    expect(unread).toBe(1)
    expect(exportLedger(entries, header)).toBe(text)
  })
})

describe('the newest golden ledger', () => {
  const { entries } = read(text5)
  const { oddities } = fold(entries)

  test('folds to its world and to nothing else', () => {
    expect(readable(fold(entries))).toEqual(folded5)
  })

  test('holds every kind of entry', () => {
    const kinds = new Set(entries.flatMap((entry) => (isUnread(entry) ? [] : [entry.fact.kind])))
    expect([...kinds].sort()).toEqual(Object.keys(everyKind).sort())
    expect([...factKinds].sort()).toEqual(Object.keys(everyKind).sort())
  })

  test('raises every kind of question, and has settled one', () => {
    expect([...new Set(oddities.map(({ what }) => what))].sort()).toEqual(Object.keys(everyOddity).sort())
    const asked = fold(entries.filter((entry) => isUnread(entry) || entry.fact.kind !== 'questionSettled')).oddities
    expect(asked).toHaveLength(oddities.length + 1)
  })
})

test('of the first ledger only a question that version could not ask is new', () => {
  const { oddities } = fold(read(text1).entries)
  const then = folded1.oddities.map(({ key }) => key)
  expect(oddities.map(({ key }) => key).filter((key) => !then.includes(key))).toEqual(['newerEntries:1'])
})
