/** Two phones that hold one id with two bodies end with one world once either says which is right. A law of our own. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Entry,
  type Fact,
  fold,
  type Held,
  type Moment,
  moment,
  noteClashes,
  type Stamp,
  settleClash,
  theirsOf,
  union,
} from '../../../core/index.ts'
import { anyOf } from '../../fixtures/facts.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { at, bookOf, kitchenPhone, labPhone } from '../../support/given.ts'
import { anyLedger } from '../../support/givenAnything.ts'
import { readable } from '../../support/givenReadable.ts'

const later = at('2027-01-05 19:00')
const next = (now: Moment, minutes: number) => moment(now + minutes * 60_000)

/** What a phone has after it took in the other's entries, with what they disagree about kept. */
const taking = (ours: readonly Entry<Fact>[], theirs: readonly Entry<Fact>[], phone: typeof labPhone, now: Moment) => {
  const merged = union<Held>(ours, theirs)
  const book = bookOf(
    phone,
    merged.entries.flatMap((entry) => ('fact' in entry ? [entry] : [])),
  )
  book.note(...noteClashes(book.world(), merged.clashes, now))
  return book
}
/** The disputed entry itself is another on each phone, crossed out on both. */
const told = (entries: readonly Entry<Fact>[], disputed: Stamp) => {
  const world = fold(entries)
  return [readable(world), world.history.all.filter(({ id }) => id !== disputed)]
}

test('whichever of two bodies is right, and whoever says so, both phones end with one world', () => {
  const cases = tally('ours', 'theirs', 'a dose', 'a lot', 'a plan')
  const bodies = fc.oneof(
    ...([anyOf.doseGiven, anyOf.portionsOnHand, anyOf.planMade, anyOf.tankDescribed, anyOf.portionsMoved].map((kind) =>
      fc.tuple<[Fact, Fact]>(kind, kind),
    ) as fc.Arbitrary<[Fact, Fact]>[]),
  )
  const law = fc.property(
    anyLedger,
    bodies,
    fc.constantFrom('ours' as const, 'theirs' as const),
    (ledger, two, right) => {
      const [a, b] = two
      if (JSON.stringify(a) === JSON.stringify(b)) return
      const shared = bookOf(labPhone, ledger)
      const [id] = shared.noteAt(at('2027-01-04 12:00'), a)
      if (!id) throw new Error('nothing was written')
      const mine = shared.entries()
      const theirs = mine.map((entry) => (entry.id === id ? { id, fact: b } : entry))
      const lab = taking(mine, theirs, labPhone, later)
      const clash = lab.entries().findLast(({ fact }) => fact.kind === 'clashNoted')
      if (!clash) throw new Error('the clash was not noted')
      expect(lab.world().oddities.filter(({ what }) => what === 'twoBodies').length).toBeGreaterThan(0)
      lab.does((world) => settleClash(world, { clash: clash.id, right }, next(later, 5)))

      const kitchen = taking(theirs, lab.entries(), kitchenPhone, next(later, 60))
      const home = taking(lab.entries(), kitchen.entries(), labPhone, next(later, 120))
      const back = taking(kitchen.entries(), home.entries(), kitchenPhone, next(later, 180))
      expect(told(back.entries(), id)).toEqual(told(home.entries(), id))
      const disputed = (world: ReturnType<typeof fold>) =>
        world.oddities.filter((oddity) => oddity.what === 'twoBodies' && oddity.key === `twoBodies:${id}`)
      expect([disputed(home.world()), disputed(back.world())]).toEqual([[], []])
      const settled = home
        .entries()
        .filter(({ fact }) => JSON.stringify(fact) === JSON.stringify(right === 'ours' ? a : b))
      expect(settled.some((entry) => entry.id !== id)).toBe(true)
      cases.note('ours', right === 'ours')
      cases.note('theirs', right === 'theirs')
      cases.note('a dose', a.kind === 'doseGiven')
      cases.note('a lot', a.kind === 'portionsOnHand')
      cases.note('a plan', a.kind === 'planMade')
    },
  )
  holds(law, 120)
  cases.expectAtLeast(10)
}, 60_000)

test('the same disagreement is kept once, however often the file is read', () => {
  const shared = bookOf(labPhone)
  const [id] = shared.note({ kind: 'noteWritten', at: later, text: 'pump hums' })
  const ours = shared.entries().find((entry) => entry.id === id)
  if (!ours) throw new Error('nothing was written')
  const theirs = { id: ours.id, fact: { kind: 'noteWritten', at: later, text: 'pump hums again' } as const }
  shared.note(...noteClashes(shared.world(), [{ ours, theirs }], later))
  expect(noteClashes(shared.world(), [{ ours, theirs }], next(later, 5))).toEqual([])
})

test('each phone is asked about the body that the other has, whoever noted the clash first', () => {
  const shared = bookOf(labPhone)
  const [id] = shared.note({ kind: 'noteWritten', at: later, text: 'pump hums' })
  const mine = shared.entries()
  const theirs = mine.map((entry): Entry<Fact> => {
    return { id: entry.id, fact: { kind: 'noteWritten', at: later, text: 'pump hums again' } }
  })
  const lab = taking(mine, theirs, labPhone, next(later, 5))
  const kitchen = taking(theirs, lab.entries(), kitchenPhone, next(later, 60)).world()
  const asked = kitchen.oddities.filter(({ what }) => what === 'twoBodies')
  expect(asked).toMatchObject([{ entries: [id] }])
  const clash = asked.flatMap((oddity) => (oddity.what === 'twoBodies' ? [oddity.clash] : []))[0] as Stamp
  const noted = kitchen.history.all.find((entry) => entry.id === clash)?.fact
  expect(noted?.kind === 'clashNoted' && theirsOf(noted)).toMatchObject({ text: 'pump hums' })
})

test('a note of a clash that says what this phone has itself is no question here', () => {
  const book = bookOf(labPhone)
  book.note({ kind: 'noteWritten', at: later, text: 'pump hums' })
  const [entry] = book.entries()
  if (!entry) throw new Error('nothing was written')
  book.note({ kind: 'clashNoted', at: next(later, 5), entry: entry.id, theirs: JSON.stringify(entry) })
  expect(book.world().oddities).toEqual([])
})
