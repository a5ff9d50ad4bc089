/** The food room, from the first bottle to a count at the freezer, with the real storage underneath. */
import 'fake-indexeddb/auto'
import { render, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeAll, expect, test } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { FoodRoutes } from '../../app/screens/Food/rooms.tsx'
import { currentWorld, start } from '../../app/state/store.ts'
import { unfinishedWords } from '../../app/words/drafts.ts'
import {
  coverWords,
  gapWords,
  lastsSentence,
  leftWords,
  makesWords,
  moreTraysWords,
  onHandWords,
  printedWords,
  wastedWords,
} from '../../app/words/food.ts'
import { nextMark } from '../../app/words/freezing.ts'
import { asTyped } from '../../app/words/numbers.ts'
import { day, lasts, readMillilitres } from '../../core/index.ts'
import { at, given, london } from '../support/given.ts'
import { bottleOf, greenFood, lab, mL, onHand, planOf } from '../support/givenLab.ts'

beforeAll(() => start('food-room-test'))

const open = (path: string) => {
  const { hook, history, navigate } = memoryLocation({ path, record: true })
  render(
    <Router hook={hook}>
      <FoodRoutes />
    </Router>,
  )
  return { go: navigate, at: () => history.at(-1) ?? '' }
}
const press = (name: string) => userEvent.click(screen.getByRole('button', { name }))
/** Amounts and days are kept on one line by spaces that do not break. */
const plain = (text: string): string => text.replace(/\u00a0/g, ' ')
const replace = async (label: string, text: string) => {
  const field = await screen.findByLabelText(label)
  await userEvent.clear(field)
  await userEvent.type(field, text)
}

test('a bottle begun already is recorded, frozen and counted: one story, told with the fields a person sees', async () => {
  const room = open('/food/bottle/new')
  await press('Put it on record')
  await screen.findByText(/needs a name/)
  await replace('What do you call it?', 'green food')
  await replace('How large is the bottle?', '150')
  await userEvent.click(screen.getByRole('radio', { name: /a share of it/ }))
  await replace('About how much of it is left?', '80')
  await press('Put it on record')
  await screen.findByText(/Not too late: freeze by .* makes 116 portions/)
  expect([...currentWorld().bottles.values()].map(({ left }) => left)).toEqual([120_000])

  room.go(`${room.at()}/freeze`)
  await replace('How many portions are there?', '125')
  await press('They are in the freezer')
  const asked = await screen.findByRole('alert')
  within(asked).getByText(/needs 125 mL, and the bottle had 120 mL by the book/)
  await userEvent.click(within(asked).getByRole('button', { name: /Each really holds 0.96.mL/ }))
  await screen.findByText(/^125 portions left/)
  const [lot] = currentWorld().lots.values()
  expect(lot?.made).toMatchObject({ kind: 'portionsFrozen', portions: 125, each: 960, mark: 'tray bag 1' })
  expect([...currentWorld().bottles.values()].map(({ left }) => left)).toEqual([0])

  await userEvent.click(screen.getByText('Count again'))
  await replace('Full trays of 15', '8')
  await replace('Left in the open tray', '3')
  const panel = screen.getByText('123 portions: 2 fewer than the book said.').closest('details')
  if (!panel) throw new Error('the count stands in no fold')
  await userEvent.click(within(panel).getByRole('button', { name: 'broken' }))
  await press('Save the count')
  await screen.findByText(/^123 portions left/)
  expect(currentWorld().history.all.at(-1)?.fact).toMatchObject({ kind: 'portionsCounted', book: 125, why: 'broken' })

  // A wet thumb throws away one; all of them is a choice of its own.
  await userEvent.click(screen.getByText('Throw away'))
  await screen.findByRole('button', { name: 'Throw away 1 portion' })
  await press('All 123 portions')
  await screen.findByRole('button', { name: 'Throw away 123 portions' })

  await userEvent.click(screen.getByText('Give some away'))
  const giving = screen.getByLabelText('To whom?').closest('details')
  if (!giving) throw new Error('giving away stands in no fold')
  const many = within(giving).getByLabelText('How many?')
  await userEvent.clear(many)
  await userEvent.type(many, '12')
  await press('Give 12 portions away')
  await screen.findByText('Given away: 12 portions; 111 stay here.')
  await press('Undo')
  await screen.findByText(/^123 portions left/)
  expect([...currentWorld().lots.values()].map(({ left: there }) => there)).toEqual([123])
}, 30_000)

test('portions she has already need a month, and no bottle is invented', async () => {
  const bottles = currentWorld().bottles.size
  const room = open('/food/lot/new')
  await replace('How many portions?', '60')
  await replace('Each holds', '0,8')
  await press('Put them on record')
  await screen.findByText(/About is good enough/)
  const [, , , month] = within(screen.getByLabelText('In which month?')).getAllByRole('option')
  await userEvent.selectOptions(screen.getByLabelText('In which month?'), month ?? '')
  await press('Put them on record')
  await waitFor(() => expect(room.at()).toMatch(/^\/food\/lot\/[0-9a-v]{16}$/))
  const lot = [...currentWorld().lots.values()].at(-1)
  expect(lot?.made).toMatchObject({ kind: 'portionsOnHand', portions: 60, each: 800, about: true })
  expect(lot?.made.frozenOn.slice(8)).toBe('01')
  expect(currentWorld().bottles.size).toBe(bottles)
}, 30_000)

test('a figure of the book reads back as itself, although three decimals could be thousands', () => {
  for (const amount of [94_635, 1_000, 120_000, 4_500, 123, 999_999])
    expect(readMillilitres(asTyped(amount / 1000))).toEqual({ ok: true, value: amount })
})

test('what there is is said in one sentence, two sizes apart', () => {
  const has = {
    portions: [
      { each: mL(1), count: 53 },
      { each: mL(0.5), count: 17 },
    ],
    liquid: 96_000,
  }
  const food = given(lab).world().foods.get(greenFood)?.at(-1)
  if (!food) throw new Error('no food')
  expect(plain(onHandWords(has))).toBe('53 portions of 1 mL, 17 portions of 0.5 mL and 96 mL')
  const lasts = {
    doses: 9,
    lastNight: day('2027-11-18'),
    bareNight: day('2027-11-20'),
    wasted: [],
    ends: 'food' as const,
  }
  const one = { portions: [{ each: mL(1), count: 41 }], liquid: 96_000 }
  expect(plain(lastsSentence({ ...food, name: 'green food' }, one, lasts, day('2027-06-03')))).toBe(
    '41 portions and 96 mL of green food, enough until 18 November; first night without food 20 November.',
  )
})

test('a count is compared with the book, and a new bag takes the next number', () => {
  expect(plain(gapWords(87, 88))).toBe('87 portions: 1 fewer than the book said.')
  expect(plain(gapWords(88, 88))).toBe('88 portions, as the book said.')
  const world = given(lab, onHand({ portions: 9, each: 1, frozen: '2026-06-03' })).world()
  expect(nextMark(world)).toBe('tray bag 1')
})

test('how long portions last is said no longer than they are good, and with a small tank in mind', () => {
  const cover = coverWords({ nights: 371, toLastGood: true })
  expect(plain(leftWords(421, cover, day('2028-03-07'), day('2027-03-02')))).toBe(
    '421 portions left, enough to its last good day; good until 7 March 2028.',
  )
  const past = coverWords({ nights: 0, toLastGood: true })
  expect(plain(leftWords(9, past, day('2027-01-07'), day('2027-03-02')))).toBe('9 portions left; past since 7 January.')
  expect(coverWords({ nights: 10, toLastGood: false }, true)).toBe('10 nights of food if no portion is shared')
  expect(makesWords({ portions: 96, each: mL(1), nights: 12, couldBeShared: true })).toBe(
    '96 portions, 12 nights if no portion is shared',
  )
  expect(coverWords(undefined)).toBe('no plan uses it yet')
})

test('what will not be used in time is told, but not a remnant too little for a dose', () => {
  const now = at('2027-03-01 18:00')
  const said = (holds: number) => {
    const bottle = bottleOf({ holds, received: '2027-01-12', opened: '2027-01-20' })
    const world = given(lab, bottle, planOf({ first: '2027-03-02', amount: 1.5 })).world()
    return wastedWords(lasts(world, greenFood, now)?.wasted ?? [], world, now, day('2027-03-01'))
  }
  expect(said(120)).toMatch(/^Won’t get used in time: 107.4.mL from the 120.mL bottle/)
  expect(said(5)).toBeUndefined()
})

test('trays that are not drawn are counted, as full where they are', () => {
  const full = { tray: 0, rows: 3, columns: 5, filled: 15, holds: 15, wells: Array(15).fill(true), cuts: [] }
  expect(moreTraysWords(Array.from({ length: 8 }, () => full))).toBe('And 8 more full trays.')
  expect(moreTraysWords([{ ...full, filled: 9, holds: 9 }])).toBe('And 1 more tray.')
})

test('a date printed before the bottle came is told, and a form of today is not called unfinished', () => {
  expect(printedWords(day('2027-01-07'), day('2027-01-12'))).toBe('printed date already past when it came')
  expect(printedWords(day('2027-01-12'), day('2027-01-12'))).toBeUndefined()
  const typed = at('2027-05-06 21:30')
  expect(plain(unfinishedWords(typed, london, day('2027-05-07')) ?? '')).toBe('Unfinished since 6 May, 21:30.')
  expect(unfinishedWords(typed, london, day('2027-05-06'))).toBeUndefined()
})
