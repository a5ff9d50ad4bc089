/** Every kind of entry and every question of the newest golden ledger can be read by a person. */
import { expect, test } from 'vitest'
import { entryText } from '../../app/words/entries.ts'
import { oddityText, questionName } from '../../app/words/oddities.ts'
import { day, fold, isUnread, type Oddity, readLedgerFile } from '../../core/index.ts'
import text from '../fixtures/ledger-2.jsonl?raw'
import { at, done, london } from '../support/given.ts'

const { entries } = done(readLedgerFile(text))
const world = fold(entries)
const now = at('2027-06-28 20:20')
const reading = { today: day('2027-06-28'), zone: london }

/** For people: more than a word or two, no name of ours, no hole where a value should be. */
const isSentence = (said: string) => {
  expect(said).toMatch(/^\S+(\s\S+)+$/u)
  expect(said).not.toMatch(/undefined|NaN|null|\[object|\b(?!mL\b)[a-z]+[A-Z]\w*/u)
}

test.each(entries.flatMap((entry) => (isUnread(entry) ? [] : [[entry.fact.kind, entry.fact] as const])))(
  'an entry of the kind %s has its sentence',
  (_kind, fact) => {
    isSentence(entryText(fact, world, now, reading))
  },
)

test.each(world.oddities.map((oddity): readonly [Oddity['what'], Oddity] => [oddity.what, oddity]))(
  'the question %s has its sentence, and a name once it is settled',
  (what, oddity) => {
    isSentence(oddityText(oddity, world, now))
    expect(oddityText(oddity, world, now)).toMatch(/[?.]$/)
    expect(questionName(oddity.key)).toBeTypeOf('string')
    expect(oddity.key.startsWith(what)).toBe(true)
  },
)
