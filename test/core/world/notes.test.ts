/** Her own words, and writing again what was crossed out. */
import { expect, test } from 'vitest'
import { longestNote, rewriteNote, strikeOut, writeAgain, writeNote } from '../../../core/index.ts'
import { at, given, refusalOf } from '../../support/given.ts'
import { lab, planOf } from '../../support/givenLab.ts'

const evening = at('2026-06-10 21:42')
const morning = at('2026-06-11 08:05')

const noted = (text = 'polyps out') => {
  const book = given(lab)
  const [entry] = book.does(() => writeNote({ text, at: evening }, evening))
  if (!entry) throw new Error('nothing noted')
  return { book, entry }
}

test('a note put right is crossed out and written again in one append, on the day it is about', () => {
  const { book, entry } = noted()
  book.does((world) => rewriteNote(world, { entry, text: ' polyps half out ', at: evening }, morning))
  const { history } = book.world()
  expect(history.struck.get(entry)?.fact).toMatchObject({ at: morning, why: 'putRight' })
  expect(history.all.at(-2)?.fact).toEqual({ kind: 'noteWritten', at: evening, text: 'polyps half out' })
})

test('a note that is crossed out already, or is none, is not written again', () => {
  const { book, entry } = noted()
  const tank = book.entries()[0]?.id
  if (!tank) throw new Error('no tank')
  const asked = { text: 'polyps in', at: evening }
  expect(refusalOf(rewriteNote(book.world(), { ...asked, entry: tank }, morning))).toEqual({ why: 'noSuchEntry' })
  book.does((world) => strikeOut(world, { target: entry }, morning))
  expect(refusalOf(rewriteNote(book.world(), { ...asked, entry }, morning))).toEqual({ why: 'alreadyCrossedOut' })
})

test('a note has words, no more than the ledger reads back, and is not of tomorrow', () => {
  const ask = (text: string, when = evening) => refusalOf(writeNote({ text, at: when }, evening))
  expect(ask(' \n ')).toEqual({ why: 'noWords' })
  expect(ask('a'.repeat(longestNote + 1))).toEqual({ why: 'tooLong', most: longestNote })
  expect(ask('early', morning)).toEqual({ why: 'notYet', at: morning })
})

test('a plan crossed out is written again as it was, and stands; what stands is not written twice', () => {
  const book = given(lab, planOf({ first: '2026-06-10', amount: 1.3 }))
  const plan = book.entries().at(-1)
  if (!plan) throw new Error('no plan')
  expect(refusalOf(writeAgain(book.world(), plan.id))).toEqual({ why: 'noSuchEntry' })
  const [crossing] = book.does((world) => strikeOut(world, { target: plan.id }, evening))
  expect(book.world().plans.size).toBe(0)
  book.does((world) => writeAgain(world, plan.id))
  expect([...book.world().plans.values()]).toEqual([[plan.fact]])
  if (crossing) expect(refusalOf(writeAgain(book.world(), crossing))).toEqual({ why: 'noSuchEntry' })
})
