/**
 * A household as the first version wrote it, and the world it made of it, read by eye once and kept since. A later version
 * may show more, but what is here may never come out otherwise: people's own ledgers are full of it.
 */
import { expect, test } from 'vitest'
import {
  exportLedger,
  type FactKind,
  factKinds,
  fold,
  isUnread,
  type Oddity,
  readLedgerFile,
} from '../../../core/index.ts'
import text from '../../fixtures/ledger-1.jsonl?raw'
import folded from '../../fixtures/ledger-1.world.json'
import { done } from '../../support/given.ts'
import { readable } from '../../support/givenReadable.ts'

/** A new kind does not compile until it stands here, and does not pass until a golden ledger has it. */
const everyKind = {
  tankDescribed: true,
  foodDescribed: true,
  placeDescribed: true,
  bottleRecorded: true,
  bottleOpened: true,
  bottleFinished: true,
  bottlesShaken: true,
  portionsFrozen: true,
  portionsOnHand: true,
  portionsCounted: true,
  liquidMeasured: true,
  portionsGone: true,
  portionsFound: true,
  liquidGone: true,
  planMade: true,
  doseGiven: true,
  nightSkipped: true,
  nightUnknown: true,
  entryStruckOut: true,
  questionSettled: true,
} satisfies Record<FactKind, true>

const everyOddity = {
  trayEmptierThanBook: true,
  bottleEmptierThanBook: true,
  loggedTwice: true,
  unknownStock: true,
  unknownPlan: true,
  aheadOfItsWriting: true,
  countGapMoved: true,
} satisfies Record<Oddity['what'], true>

const { header, entries, unread } = done(readLedgerFile(text))

test('the first golden ledger folds to the world it folded to then', () => {
  expect(readable(fold(entries))).toEqual(folded)
})

test('it holds every kind of entry', () => {
  const kinds = new Set(entries.flatMap((entry) => (isUnread(entry) ? [] : [entry.fact.kind])))
  expect([...kinds].sort()).toEqual(Object.keys(everyKind).sort())
  expect([...factKinds].sort()).toEqual(Object.keys(everyKind).sort())
})

test('it raises every kind of question, and has settled one', () => {
  const { oddities } = fold(entries)
  expect([...new Set(oddities.map(({ what }) => what))].sort()).toEqual(Object.keys(everyOddity).sort())
  const asked = fold(entries.filter((entry) => isUnread(entry) || entry.fact.kind !== 'questionSettled')).oddities
  expect(asked).toHaveLength(oddities.length + 1)
})

test('it is exported again letter for letter, the entry of a newer version included', () => {
  expect(unread).toBe(1)
  expect(exportLedger(entries, header)).toBe(text)
})
