/** Which bags have a label, what stands on it, and what is said of ticks, with the real storage underneath. */
import 'fake-indexeddb/auto'
import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { PaperRoutes } from '../../app/screens/Food/paper/rooms.tsx'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { hoursWords, laterWords, outAlreadyWords, squaresWords, ticksText, ticksWords } from '../../app/words/paper.ts'
import { day, type LotId, nightsAhead, readTicks, squaresOf, usualWishes } from '../../core/index.ts'
import { at, done, given, london } from '../support/given.ts'
import {
  blueClip,
  dose,
  kitchenFreezer,
  lab,
  longGallery,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const thawed = 'greypeg' as LotId
const seen = at('2027-07-03 12:00')
const book = given(
  lab,
  planOf({ first: '2027-05-15', amount: 1 }),
  onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
  onHand({ portions: 9, each: 0.8, frozen: '2027-02-05', lot: thawed }),
  onHand({ portions: 9, each: 1, frozen: '2027-03-05', lot: redClip }),
)
book.does(dose(at('2027-05-15 21:12')))
book.note(
  { kind: 'foodSetAside', at: seen, thing: { lot: redClip } },
  {
    kind: 'freezerThawed',
    at: seen,
    place: kitchenFreezer,
    on: day('2027-07-03'),
    lots: [{ lot: thawed, found: 'cold' }],
  },
)
const reading = { today: day('2027-07-03'), zone: london }
/** Amounts and days are kept on one line by spaces that do not break. */
const plain = (text: string | null | undefined): string => (text ?? '').replace(/\u00a0/g, ' ')

beforeAll(async () => {
  await start('paper-test')
  await takeIn(book.entries())
})
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: seen })
})
afterEach(() => {
  vi.useRealTimers()
})
const open = (path: string) => {
  const { hook } = memoryLocation({ path })
  return render(
    <Router hook={hook}>
      <PaperRoutes />
    </Router>,
  )
}
const labels = () => screen.getAllByRole('listitem').map(({ textContent }) => plain(textContent))

test('only what is in use is chosen by itself; a thawed bag is labelled by hand and says so, a past day never as good', async () => {
  const { unmount } = open('/food/labels')
  expect(labels()).toHaveLength(1)
  expect(labels()[0]).toContain('Frozen 5 January 2027Good until 5 January 2029')
  expect(screen.getByRole('button', { name: 'redclip, set aside' }).getAttribute('aria-pressed')).toBe('false')
  await userEvent.click(screen.getByRole('button', { name: 'greypeg, thawed' }))
  expect(labels()).toHaveLength(2)
  const label = labels().find((text) => text.startsWith('greypeg'))
  expect(label).toContain('Thawed 3 July 2027: by 4 July 2027')
  expect(label).not.toContain('Good until')
  await userEvent.click(screen.getByRole('button', { name: 'blue clip' }))
  expect(labels()).toHaveLength(1)
  unmount()
  // What she chose is kept as she left it; only what differs from what would be chosen anyway.
  open('/food/labels')
  await vi.waitFor(() => expect(labels().map((text) => text.slice(0, 7))).toEqual(['greypeg']))
})

test('from a bag’s own page it is that bag alone', () => {
  open(`/food/labels/${redClip}`)
  expect(labels()).toHaveLength(1)
  expect(labels()[0]).toContain('Set aside: look and sniff before it is used')
})

test('ticks are told in words before they are saved, and what cannot be is asked about', async () => {
  open(`/food/labels/${blueClip}`)
  const fold = screen.getByText('Ticks made with a pen').closest('details')
  if (!fold) throw new Error('the ticks stand in no fold')
  const field = within(fold).getByLabelText('How many squares are ticked?')
  const type = async (text: string) => {
    await userEvent.clear(field)
    await userEvent.type(field, text)
  }
  await type('0')
  within(fold).getByText('0 ticked, but the book has 1 portion given from it. Which is right?')
  expect(within(fold).queryByRole('button', { name: 'Enter the ticks' })).toBeNull()
  await type('41')
  within(fold).getByText('This bag has only 40 squares that can be ticked.')
  await userEvent.clear(field)
  await userEvent.click(within(fold).getByRole('button', { name: 'Enter the ticks' }))
  await within(fold).findByText('How many squares are ticked?', { selector: '[id$="-error"], [id$="-error"] *' })
  await type('6')
  expect(plain(within(fold).getByText(/^6 ticked/).textContent)).toBe(
    '6 ticked: the book has 1 dose from it; five more between 17 May and 2 July, nights not known. That leaves 34 portions.',
  )
  await userEvent.click(within(fold).getByRole('button', { name: 'Enter the ticks' }))
  await screen.findByText(/^Entered: five more doses; 34/)
  expect(currentWorld().lots.get(blueClip)?.left).toBe(34)
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }))
  await vi.waitFor(() => expect(currentWorld().lots.get(blueClip)?.left).toBe(39))
})

test('two portions a dose are told as portions, one night as that night, and tonight’s rests', () => {
  const other = given(
    lab,
    planOf({ first: '2027-07-01', amount: 1 }),
    onHand({ portions: 40, each: 0.5, frozen: '2027-01-05' }),
  )
  const world = other.world()
  const words = (ticked: number, now = seen) => {
    const asked = { lot: blueClip, ticked, othersTicked: true }
    const lot = world.lots.get(blueClip)
    if (!lot) throw new Error('no bag')
    return plain(ticksWords(asked, done(readTicks(world, asked, now)), squaresOf(world, lot).other, reading))
  }
  expect(words(2)).toBe(
    '2 ticked: the book has none from it; two more on Thursday night, 1 July. That leaves 38 portions.',
  )
  expect(words(4, at('2027-07-03 22:10'))).toBe(
    '4 ticked: the book has none from it; four more between 1 and 3 July, nights not known. Tonight’s is among them, so nothing more is due tonight. That leaves 36 portions.',
  )
})

test('a label goes on where the one before ended', () => {
  const drawn = { first: 111, last: 200, out: 117, later: 14 }
  expect(squaresWords(drawn)).toBe('Squares 111 to 200, ten in a row; up to 117 ticked.')
  expect(outAlreadyWords(drawn)).toBe('1 to 110 are out already.')
  expect(laterWords(drawn)).toBe('201 to 214: print this label again then.')
  expect(ticksText({ why: 'asTheBook', ticked: 9 }, reading)).toBe('9 ticked, as the book has it. Nothing to enter.')
})

test('a lamp on a dial is told twice in the month the clocks change', () => {
  const world = given(
    tankOf(longGallery, usGal(200), { lamp: 'dial' }),
    lab.slice(1),
    planOf({ first: '2027-03-21', amount: 1 }),
  ).world()
  const [tank] = nightsAhead(world, { from: day('2027-03-21'), to: day('2027-03-31') }, at('2027-03-20 18:00'))
  if (!tank) throw new Error('no tank')
  expect(hoursWords(world, tank.tank, tank.rounds[0]?.nights ?? [], usualWishes(london))).toBe(
    'Lights out 21:00, dose at 21:20. From Monday 29: lights out 22:00, dose at 22:20.',
  )
})

test('a month on paper says what is missing, and keeps which month was chosen', async () => {
  const { unmount } = open('/food/paper')
  await userEvent.click(screen.getByRole('radio', { name: 'August 2027' }))
  screen.getByRole('heading', { level: 2, name: 'August 2027' })
  unmount()
  open('/food/paper')
  await screen.findByRole('heading', { level: 2, name: 'August 2027' })
})
