/** Books in which there is something to look up or to settle: notes, named phones, and what does not add up. */
import {
  type BottleId,
  type DeviceId,
  type Entry,
  type Fact,
  fold,
  giveDose,
  type Held,
  namePhone,
  noteClashes,
  type Stamp,
  strikeOut,
  writeNote,
} from '../../core/index.ts'
import { at, type Book, bookOf, given, kitchenPhone, labPhone } from '../support/given.ts'
import {
  blueClip,
  bottleOf,
  cockle,
  dose,
  firstBottle,
  greenFood,
  greenPlan,
  lab,
  longGallery,
  mL,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const house: readonly Fact[] = [
  ...lab,
  ...tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
  ...tankOf(cockle, usGal(60), { name: 'Cockle' }),
]
const portions = onHand({ portions: 41, each: 1, frozen: '2026-09-04' })
const plan = planOf({ first: '2026-11-23', amount: 1 })
const merged = (...books: readonly Book[]): readonly Entry<Fact>[] => [
  ...new Map(books.flatMap((book) => book.entries()).map((entry) => [entry.id, entry])).values(),
]
const named = (book: Book, device: DeviceId, name: string, when: string): Book => {
  book.does(() => namePhone({ device, name }, at(when)))
  return book
}

const watched = `At the torch count the back wall was alive again:\n${'about forty specks in the square, most of them by the overflow, some with eggs; '.repeat(9)}`

/** Two named phones, notes short and long, one put right, a slip crossed out, one written days later. */
const written = (): readonly Entry<Fact>[] => {
  const ours = named(given(house, portions, plan), labPhone, 'lab phone', '2026-11-20 09:10')
  const theirs = named(bookOf(kitchenPhone, ours.entries()), kitchenPhone, 'kitchen phone', '2026-11-20 09:30')
  theirs.does(dose(at('2026-11-23 21:20')))
  const note = (book: Book, text: string, when: string, tank?: typeof cockle): readonly Stamp[] => {
    const moment = at(when)
    return book.does(() => writeNote({ text, at: moment, ...(tank ? { tank } : {}) }, moment))
  }
  note(theirs, 'Polyps out before the lamp was.', '2026-11-24 20:52', cockle)
  const [slip] = note(ours, 'Lamp dial one hour lat', '2026-11-24 22:15')
  if (slip) ours.does((world) => strikeOut(world, { target: slip, why: 'putRight' }, at('2026-11-24 22:16')))
  note(ours, 'Lamp dial one hour late. <b>Turn it</b> on Sunday.', '2026-11-24 22:15')
  note(ours, watched, '2026-11-24 22:40', longGallery)
  ours.noteAt(at('2026-11-25 18:05'), {
    kind: 'noteWritten',
    at: at('2026-11-14 12:00'),
    text: 'Power cut, two hours.',
  })
  return merged(ours, theirs)
}

/** 1000 mL out of a bottle of 96, with a larger one of the same food beside it. */
const setAside = (): readonly Entry<Fact>[] => {
  const book = given(
    house,
    bottleOf({ holds: 96, received: '2026-11-20', opened: '2026-11-20' }),
    bottleOf({ holds: 1_200, received: '2026-11-21', opened: '2026-11-21', bottle: 'bottle2' as BottleId }),
    planOf({ first: '2026-11-23', amount: 1 }),
  )
  const now = at('2026-11-23 21:20')
  const taken = [{ from: 'bottle', bottle: firstBottle, amount: mL(1_000) }] as const
  book.does((world) =>
    giveDose(world, { plan: greenPlan, taken, amount: mL(1_000), at: now, sure: true, why: 'rich' }, now),
  )
  return book.entries()
}

/** One dose, of which this phone and a file say two things. */
export const twoBodies = (): { readonly ours: readonly Entry<Fact>[]; readonly theirs: readonly Entry<Fact>[] } => {
  const before = given(house, portions, plan)
  const [ours, theirs] = [1, 2].map((count) => {
    const book = bookOf(labPhone, before.entries())
    const taken = [{ from: 'portions', lot: blueClip, count }] as const
    const now = at('2026-11-23 21:20')
    book.does((world) =>
      giveDose(world, { plan: greenPlan, taken, amount: mL(count), at: now, sure: true, why: 'rich' }, now),
    )
    return book.entries()
  })
  return { ours: ours ?? [], theirs: theirs ?? [] }
}
const disputed = (): readonly Entry<Fact>[] => {
  const { ours, theirs } = twoBodies()
  const [mine, other] = [ours.at(-1), theirs.at(-1)]
  if (!mine || !other) throw new Error('no dose')
  const book = bookOf(labPhone, ours)
  book.note(...noteClashes(fold(ours), [{ ours: mine, theirs: other }], at('2026-11-25 19:05')))
  return book.entries()
}

/** Doses of a plan that has been crossed out since. */
const planGone = (): readonly Entry<Fact>[] => {
  const book = given(house, portions, plan)
  const made = book.entries().at(-1)?.id
  book.does(dose(at('2026-11-23 21:20')))
  if (made) book.does((world) => strikeOut(world, { target: made, why: 'mistake' }, at('2026-11-24 08:05')))
  return book.entries()
}

const newer = (): readonly Held[] => {
  const id = `${String(at('2026-11-24 07:15')).padStart(15, '0')}-000-${kitchenPhone}` as Stamp
  const unread = { id, fact: { kind: 'cultureSplit', at: at('2026-11-24 07:15'), jars: 3, food: greenFood } }
  return [...given(house, portions, plan).entries(), { id, unread }]
}

export const householdsDiary = {
  written,
  setAside,
  disputed,
  planGone,
  newer,
} satisfies Record<string, () => readonly Held[]>
