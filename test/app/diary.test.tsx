/** The book of what happened: its order, its words, and crossing out with the real storage underneath. */
import 'fake-indexeddb/auto'
import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeAll, expect, test } from 'vitest'
import { Diary } from '../../app/screens/Diary/Diary.tsx'
import { countLines, diaryReader, type LookedFor, lastHappened } from '../../app/screens/Diary/pages.ts'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { crossedOut, notedWhen } from '../../app/words/diary.ts'
import { belongsTo, foundText, groupOptions, shownText } from '../../app/words/lookingUp.ts'
import { folded, inShort } from '../../app/words/notes.ts'
import {
  type DeviceId,
  day,
  type Entry,
  type Fact,
  type History,
  namePhone,
  ok,
  strikeOut,
  writeNote,
  type Zone,
} from '../../core/index.ts'
import { at, bookOf, given, kitchenPhone, labPhone, london } from '../support/given.ts'
import { lab, onHand, planOf } from '../support/givenLab.ts'

const evening = at('2026-03-05 21:42')
const reading = { today: day('2026-03-09'), zone: london }
const stocked = () =>
  given(lab, planOf({ first: '2026-03-05', amount: 1.3 }), onHand({ portions: 17, each: 1.3, frozen: '2026-02-03' }))
const entryOf = (book: ReturnType<typeof given>, kind: Fact['kind']): Entry<Fact> => {
  const entry = book.world().history.all.findLast(({ fact }) => fact.kind === kind)
  if (!entry) throw new Error(`no ${kind}`)
  return entry
}
const diaryPages = (history: History<Fact>, zone: Zone, most: number, looked: LookedFor = {}) =>
  diaryReader(history, zone, looked)(most)
/** The household's phones, seen from one of them. */
const from = (...mine: readonly DeviceId[]) => ({ mine, world: { phones: new Map() }, now: evening })
/** Days are kept on one line by spaces that do not break. */
const plain = (text: string): string => text.replace(/\u00a0/g, ' ')
const skipped = (when = evening): Fact => ({
  kind: 'nightSkipped',
  at: when,
  tank: planOf({ first: '2026-03-05', amount: 1.3 }).tank,
  food: planOf({ first: '2026-03-05', amount: 1.3 }).food,
  plan: planOf({ first: '2026-03-05', amount: 1.3 }).plan,
  night: day('2026-03-05'),
})

test('the newest stands first, by the moment meant, in days of the tank’s own calendar', () => {
  const book = stocked()
  book.noteAt(at('2026-03-08 10:00'), skipped(at('2026-03-06 00:20')))
  book.note(skipped(at('2026-03-07 21:50')))
  const { days, older } = diaryPages(book.world().history, london, 50)
  expect(days.slice(0, 2).map(({ day }) => day)).toEqual(['2026-03-07', '2026-03-06'])
  expect(days.at(-1)?.day).toBe('2026-01-02')
  expect(older).toBe(false)
})

test('only as many lines are made as are asked for, and more are promised', () => {
  const { days, older } = diaryPages(stocked().world().history, london, 3)
  expect(days.flatMap(({ lines }) => lines)).toHaveLength(3)
  expect(older).toBe(true)
})

test('a day looked up hides what came after it', () => {
  const book = stocked()
  book.note(skipped())
  const { days } = diaryPages(book.world().history, london, 50, { before: at('2026-03-05 00:00') })
  expect(days[0]?.day).toBe('2026-02-03')
})

test('a crossing-out stands with what it crosses out, and alone only if that is not here', () => {
  const book = stocked()
  const [target] = book.note(skipped())
  if (target === undefined) throw new Error('nothing noted')
  book.does((world) => strikeOut(world, { target, why: 'mistake' }, at('2026-03-05 21:43')))
  book.note({
    kind: 'entryStruckOut',
    at: at('2026-03-06 08:00'),
    target: entryOf(given(skipped(at('2026-01-09 09:00'))), 'nightSkipped').id,
  })
  const lines = diaryPages(book.world().history, london, 50).days.flatMap((page) => page.lines)
  expect(lines.slice(0, 2).map(({ entry, struck }) => [entry.fact.kind, struck?.fact.why])).toEqual([
    ['entryStruckOut', undefined],
    ['nightSkipped', 'mistake'],
  ])
})

test('the last thing that happened is neither crossed out, nor in the future, nor paperwork', () => {
  const book = stocked()
  const before = entryOf(book, 'portionsOnHand')
  const [target] = book.note(skipped())
  if (target === undefined) throw new Error('nothing noted')
  book.does((world) => strikeOut(world, { target }, at('2026-03-05 21:43')))
  book.note({ kind: 'questionSettled', at: at('2026-03-05 21:44'), question: 'any', answer: 'asItStands' })
  book.note(skipped(at('2026-03-31 21:05')))
  expect(lastHappened(book.world().history, evening)?.id).toBe(before.id)
})

test('a line says the time, which phone if it was another, and that it was added later', () => {
  const book = bookOf(kitchenPhone)
  book.noteAt(at('2026-03-07 09:12'), skipped())
  const entry = entryOf(book, 'nightSkipped')
  expect(plain(notedWhen(entry, from(labPhone), reading))).toBe('21:42, on another phone, added later (7 March, 09:12)')
  expect(plain(notedWhen(entry, from(kitchenPhone), reading))).toBe('21:42, added later (7 March, 09:12)')
})

test('a day without a time is not given one', () => {
  const book = bookOf(labPhone)
  book.noteAt(at('2026-03-06 08:03'), skipped(at('2026-03-05 12:00')))
  expect(notedWhen(entryOf(book, 'nightSkipped'), from(labPhone), reading)).toBe('That day')
})

test('a crossing-out says when, on which phone and why', () => {
  const book = stocked()
  const [target] = book.note(skipped())
  if (target === undefined) throw new Error('nothing noted')
  book.does((world) => strikeOut(world, { target, why: 'mistake' }, at('2026-03-05 21:50')))
  const strike = book.world().history.struck.get(target)
  if (!strike) throw new Error('not crossed out')
  expect(plain(crossedOut(strike, from(labPhone), reading))).toBe(
    'Crossed out on 5 March, 21:50, on this phone: a slip of the finger.',
  )
  expect(crossedOut(strike, from(kitchenPhone), reading)).toContain('on another phone')
})

test('a named phone stands by its name, and one’s own ids from before a restore by none', () => {
  const book = bookOf(kitchenPhone)
  book.note(skipped())
  book.does(() => namePhone({ device: kitchenPhone, name: 'kitchen phone' }, evening))
  const entry = entryOf(book, 'nightSkipped')
  const phones = { mine: [labPhone], world: book.world(), now: evening }
  expect(notedWhen(entry, phones, reading)).toBe('21:42, on kitchen phone')
  expect(notedWhen(entry, from(labPhone, kitchenPhone), reading)).toBe('21:42')
})

test('older lines are read on from where reading stopped, and those given before stay the same', () => {
  const { history } = stocked().world()
  const read = diaryReader(history, london)
  const [first] = read(2).days
  const more = read(5)
  expect(more.days[0]?.lines[0]).toBe(first?.lines[0])
  expect(more.shown).toBe(5)
  expect(read(500)).toMatchObject({ shown: history.all.length, older: false })
})

test('what is looked for is found and counted, crossed out under what it was too', () => {
  const book = stocked()
  const [target] = book.note(skipped())
  if (target === undefined) throw new Error('nothing noted')
  book.does((world) => strikeOut(world, { target }, at('2026-03-05 21:43')))
  const { history } = book.world()
  const kindsOf = (group: (typeof groupOptions)[number]['value']) => {
    const looked: LookedFor = { wanted: (fact, struck) => belongsTo(group, fact.kind, struck) }
    const lines = diaryPages(history, london, 50, looked).days.flatMap((page) => page.lines)
    expect(countLines(history, looked)).toBe(lines.length)
    return lines.map(({ entry }) => entry.fact.kind)
  }
  expect(kindsOf('doses')).toEqual(['nightSkipped'])
  expect(kindsOf('crossedOut')).toEqual(['nightSkipped'])
  expect(kindsOf('water')).toEqual(['planMade', 'tankDescribed'])
  expect(kindsOf('notes')).toEqual([])
  const all = groupOptions.filter(({ value }) => value !== 'crossedOut').flatMap(({ value }) => kindsOf(value))
  expect(all).toHaveLength(countLines(history))
})

test('what was looked for is said with its count, and nothing found is said too', () => {
  const looked = { group: 'notes', tank: 'Cockle', upTo: '5 March 2026' } as const
  expect(foundText(looked, 34)).toBe('Only notes, of Cockle, up to 5 March 2026: 34 entries.')
  expect(foundText({ ...looked, tank: undefined, upTo: undefined }, 0)).toBe('Nothing is written here of this: notes.')
  expect([shownText(50, 20_000), shownText(51, 51)]).toEqual(['The newest 50 of 20,000 entries.', 'All 51 entries.'])
})

test('long words are cut at a space, never within a letter, and not at all where they are short', () => {
  expect(folded('polyps out')).toBeUndefined()
  expect(folded(`${'so many polyps '.repeat(60)}`)).toMatch(/^so many polyps .* …$/)
  expect(folded('a\n'.repeat(30))?.split('\n')).toHaveLength(8)
  const faces = '🐚'.repeat(700)
  expect([...(folded(faces) ?? '')].every((letter) => ['🐚', ' ', '…'].includes(letter))).toBe(true)
  expect(inShort(`first line\nsecond`)).toBe('first line second')
})

beforeAll(async () => {
  const book = stocked()
  book.note(skipped())
  await start()
  expect(await takeIn(book.entries())).toMatchObject(ok({ added: book.entries().length }))
})

const lineWith = (text: RegExp): HTMLElement => {
  const line = screen.getByText(text, { selector: '.diary-text' }).closest('li')
  if (!line) throw new Error('no line')
  return line
}

test('an entry is crossed out after one question, stays readable, and a change of mind costs nothing', async () => {
  render(<Diary />)
  expect(screen.getByText(/^Last, 5 March, 21:42: Skipped Thursday night/)).toBeTruthy()
  await userEvent.click(within(lineWith(/^Skipped/)).getByRole('button', { name: /^Cross out/ }))
  await userEvent.click(within(lineWith(/^Skipped/)).getByRole('button', { name: 'Keep it' }))
  expect(currentWorld().history.struck.size).toBe(0)
  await userEvent.click(within(lineWith(/^Skipped/)).getByRole('button', { name: /^Cross out/ }))
  await userEvent.click(screen.getByRole('button', { name: 'something else' }))
  await userEvent.type(screen.getByLabelText('In your own words'), 'she was asleep')
  await userEvent.click(screen.getByRole('button', { name: 'it did not happen' }))
  expect(screen.queryByLabelText('In your own words')).toBeNull()
  await userEvent.click(screen.getByRole('button', { name: 'Cross it out' }))
  expect(await screen.findByText(/^Crossed out on .*, on this phone: it did not happen\.$/)).toBeTruthy()
  expect(screen.getByText(/Skipped Thursday night/, { selector: 's' })).toBeTruthy()
  expect(screen.getByText(/^Last, 3 February/)).toBeTruthy()
})

test('a note is put right in place: the old words stay readable, and why is said', async () => {
  const { request } = await import('../../app/state/store.ts')
  await request((_world, { now }) => writeNote({ text: 'polyps out\n<b>all</b>', at: now }, now))
  render(<Diary />)
  await userEvent.click(within(lineWith(/^polyps out/)).getByRole('button', { name: /^Put it right/ }))
  const words = screen.getByLabelText<HTMLTextAreaElement>('What happened, or what did you see?')
  expect(words.value).toBe('polyps out\n<b>all</b>')
  await userEvent.clear(words)
  await userEvent.click(screen.getByRole('button', { name: 'Put it right' }))
  expect(await screen.findByText('A word or two, please.')).toBeTruthy()
  await userEvent.type(words, 'half of the polyps out')
  await userEvent.click(screen.getByRole('button', { name: 'Put it right' }))
  expect(await screen.findByText('half of the polyps out', { selector: '.diary-text' })).toBeTruthy()
  expect(screen.getByText(/^Crossed out on .*: put right\.$/)).toBeTruthy()
  expect(screen.getByText(/<b>all<\/b>/, { selector: 's' })).toBeTruthy()
})

test('the book is looked through by kind, and all of it comes back with one touch', async () => {
  render(<Diary />)
  await userEvent.click(screen.getByText('Look something up'))
  await userEvent.click(screen.getByRole('button', { name: 'notes' }))
  expect(screen.getByText('Only notes: 2 entries.')).toBeTruthy()
  expect(screen.queryByText(/^There already/)).toBeNull()
  await userEvent.click(screen.getByRole('button', { name: 'Show everything' }))
  expect(screen.getByText(/^There already/)).toBeTruthy()
})
