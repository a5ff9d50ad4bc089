/** This phone: what it holds, how safe that is, and a book that comes in from a file. */
import 'fake-indexeddb/auto'
import { fireEvent, render, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeAll, expect, test } from 'vitest'
import { Broken } from '../../app/screens/Broken.tsx'
import { ThisPhone } from '../../app/screens/ThisPhone/ThisPhone.tsx'
import { matter, thisDevice } from '../../app/state/device.ts'
import { start, wholeBook } from '../../app/state/store.ts'
import { backupDueText, previewText, takenInText, troubleText } from '../../app/words/phone.ts'
import { backupOverdue, type DeviceId, day, exportLedger, fold, type PlaceId } from '../../core/index.ts'
import { at, done, given, kitchenPhone, labPhone, london } from '../support/given.ts'
import { lab } from '../support/givenLab.ts'

const reading = { today: day('2026-03-09'), zone: london }
const plain = (text: string): string => text.replace(/\u00a0/g, ' ')
const header = { at: at('2026-03-03 10:20'), device: kitchenPhone, version: '1.2.3' }
const entries = given(lab).entries()
const backup = (text: string): File => new File([text], 'smallhours.txt', { type: 'text/plain' })

test('a preview says what a file holds, who wrote it, and what it would bring', () => {
  const preview = {
    file: { header, entries, unread: 2 },
    added: entries.slice(1),
    already: 1,
    clashes: [],
    restores: false,
  }
  const phones = (mine: DeviceId) => ({ mine: [mine], world: { phones: new Map() }, now: header.at })
  expect(plain(previewText(preview, phones(labPhone), reading))).toBe(
    `This file holds ${entries.length} entries, written on 3 March by another phone. ${entries.length - 1} are new here, 1 is here already, 2 are of a newer version, none disagree.`,
  )
  expect(previewText(preview, phones(kitchenPhone), reading)).toContain('by this phone')
})

test('what disagreed is reported as kept, and nothing new is said to be nothing new', () => {
  const [ours] = entries
  if (!ours) throw new Error('no entries')
  expect(takenInText({ added: 0, already: 7, clashes: [{ ours, theirs: ours }], wasEmpty: false })).toBe(
    'Nothing in it was new; 7 were here already. 1 said something else; kept as this phone has it, and asked about.',
  )
})

test('a backup is asked for quietly, once a calendar month has passed', () => {
  const begun = given(lab).world()
  expect(backupOverdue(begun, at('2026-02-09 12:34'), reading)).toBe(false)
  expect(backupOverdue(begun, at('2026-02-08 12:34'), reading)).toBe(true)
  expect(backupOverdue(begun, undefined, reading)).toBe(true)
  expect(backupOverdue(fold([]), undefined, reading)).toBe(false)
  expect(backupDueText(5, at('2026-02-09 12:34'), false)).toBeUndefined()
  expect(backupDueText(5, at('2026-02-08 12:34'), true)).toMatch(/more than a month ago/)
  expect(backupDueText(5, undefined, false)).toMatch(/a backup file kept elsewhere/)
  expect(backupDueText(0, undefined, true)).toBeUndefined()
})

test('trouble is told, calm is not', () => {
  expect([troubleText('ready'), troubleText('opening')]).toEqual([undefined, undefined])
  for (const status of ['blocked', 'closedForUpdate', 'storageFull', 'storageFailed'] as const)
    expect(troubleText(status)).toMatch(/reload/)
})

beforeAll(() => start())

test('a file that is no backup is refused beside the field, and nothing is written', async () => {
  render(<ThisPhone />)
  await userEvent.upload(screen.getByLabelText('A backup file to take in'), backup('hello'))
  expect(await screen.findByText('This file is not a Smallhours backup. Nothing here was changed.')).toBeTruthy()
  expect(done(await wholeBook())).toEqual([])
})

test('a book restored into an empty phone is looked through, taken in whole, and the phone takes a new name', async () => {
  await thisDevice()
  const before = matter('device')
  render(<ThisPhone />)
  await userEvent.upload(screen.getByLabelText('A backup file to take in'), backup(exportLedger(entries, header)))
  expect(await screen.findByText(/^This file holds/)).toBeTruthy()
  expect(done(await wholeBook())).toEqual([])
  await userEvent.click(screen.getByRole('button', { name: `Take in the ${entries.length} new ones` }))
  expect(await screen.findByText(`Taken in: ${entries.length} entries; 0 were here already.`)).toBeTruthy()
  expect(done(await wholeBook())).toHaveLength(entries.length)
  expect(matter('device')).not.toBe(before)
  expect(screen.getByText(/^This phone holds \d+ entries\. Last backup: 3 March/)).toBeTruthy()
  await userEvent.click(screen.getByRole('button', { name: 'Yes, this phone wrote it' }))
  await waitFor(() => expect(matter('formerly')).toEqual([kitchenPhone]))
  expect(screen.queryByText(/^Did this phone write/)).toBeNull()
})

test('the phone is named with one touch and a word of her own, and that is an entry of the book', async () => {
  render(<ThisPhone />)
  expect(screen.getByText(/^This phone has no name yet/)).toBeTruthy()
  await userEvent.click(screen.getByRole('button', { name: 'kitchen phone' }))
  await userEvent.type(screen.getByLabelText('Or in your own words'), ' downstairs')
  await userEvent.click(screen.getByRole('button', { name: 'Call it so' }))
  expect(await screen.findByText(/^This phone is called “kitchen phone downstairs”/)).toBeTruthy()
})

test('a file left alone changes nothing', async () => {
  const more = given(lab, {
    kind: 'placeDescribed',
    at: at('2026-03-08 15:16'),
    place: 'cellar1' as PlaceId,
    name: 'cellar',
    door: 'freezer',
  })
  render(<ThisPhone />)
  await userEvent.upload(
    screen.getByLabelText('A backup file to take in'),
    backup(exportLedger(more.entries(), header)),
  )
  expect(await screen.findByText(/1 is new here/)).toBeTruthy()
  await userEvent.click(screen.getByRole('button', { name: 'Leave it' }))
  expect(screen.queryByText(/1 is new here/)).toBeNull()
  expect(done(await wholeBook())).toHaveLength(entries.length + 1)
})

test('the look is chosen for this phone and kept', async () => {
  render(<ThisPhone />)
  expect(screen.getByRole<HTMLInputElement>('radio', { name: 'By itself' }).checked).toBe(true)
  await userEvent.click(screen.getByRole('radio', { name: 'Always night' }))
  expect(await screen.findByRole('radio', { name: 'Always night', checked: true })).toBeTruthy()
  expect(matter('look')).toBe('night')
})

const lamp = { fell: false }
const Room = () => {
  if (lamp.fell) throw new Error('the lamp fell in')
  return <p>Water</p>
}

test('a page that fails leaves words, a way to reload and a backup, and the next room is open', async () => {
  lamp.fell = true
  // React tells the console of every caught error.
  const told: unknown[] = []
  const { error } = console
  console.error = (...words) => told.push(words)
  render(
    <Broken>
      <Room />
    </Broken>,
  )
  console.error = error
  expect(told.length).toBeGreaterThan(0)
  expect(screen.getByText(/^This page could not be drawn/)).toBeTruthy()
  expect(screen.getByRole('button', { name: 'Reload' })).toBeTruthy()
  expect(screen.getByRole('button', { name: 'Save a backup file' })).toBeTruthy()
  expect(screen.getByText('Error: the lamp fell in')).toBeTruthy()
  lamp.fell = false
  fireEvent(window, new HashChangeEvent('hashchange'))
  expect(await screen.findByText('Water')).toBeTruthy()
})
